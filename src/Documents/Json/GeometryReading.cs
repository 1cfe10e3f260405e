using System.Globalization;
using System.Text.Json;
using Watersown.Land;

namespace Watersown.Documents.Json;

/// <summary>What can be wrong with the form of a GeoJSON geometry.</summary>
public static class GeometryProblems
{
    public static ProblemKind WrongType { get; } = new("GEO-001", ProblemWeight.Refuse,
        "'{value}' is neither Polygon nor MultiPolygon. Give the edge of the land as one of the two.",
        "'{value}' no es Polygon ni MultiPolygon. Entregue el borde del terreno como uno de los dos.");

    public static ProblemKind NotAPosition { get; } = new("GEO-002", ProblemWeight.Refuse,
        "{value} is not a position of longitude −180 to 180 and latitude −90 to 90. Give [longitude, latitude] in degrees (WGS 84).",
        "{value} no es una posición de longitud −180 a 180 y latitud −90 a 90. Escriba [longitud, latitud] en grados (WGS 84).");

    public static ProblemKind TooFewPoints { get; } = new("GEO-003", ProblemWeight.Refuse,
        "the ring has {value} different points; at least 3 make an edge. Add the missing corners.",
        "el anillo tiene {value} puntos distintos; un borde necesita al menos 3. Agregue las esquinas que faltan.");

    public static ProblemKind NotClosed { get; } = new("GEO-004", ProblemWeight.Warn,
        "the ring does not end where it starts; it was closed with a straight line. Repeat the first point at its end.",
        "el anillo no termina donde empieza; se cerró con una línea recta. Repita el primer punto al final.");

    public static ProblemKind TooManyPoints { get; } = new("GEO-005", ProblemWeight.Refuse,
        "{value} points are above {limit}, the most of one boundary. Thin it out.",
        "{value} puntos superan {limit}, lo máximo de un lindero. Redúzcalos.");

    public static ProblemKind NotFeatures { get; } = new("GEO-006", ProblemWeight.Refuse,
        "it is neither a GeoJSON Feature nor a FeatureCollection. Give a file of features, each with the field's code or name.",
        "no es un Feature ni un FeatureCollection de GeoJSON. Entregue un archivo de elementos, cada uno con la clave o el nombre del lote.");
}

/// <summary>
/// A GeoJSON Polygon or MultiPolygon (RFC 7946) as a boundary, and what is wrong with its form. Whether it crosses
/// itself is for the geometry to say, not for its form.
/// </summary>
public static class GeometryReading
{
    public const int MaxPoints = 100_000;

    /// <summary>The boundary; none where the form is broken.</summary>
    public static Boundary? Read(JsonElement geometry) =>
        Check(geometry, string.Empty, string.Empty).Any(p => p.Kind.Weight == ProblemWeight.Refuse)
            ? null
            : new Boundary([.. Polygons(geometry).Select(rings => new BoundaryPart(Ring(rings[0]), [.. rings.Skip(1).Select(Ring)]))]);

    /// <summary>All that is wrong with its form.</summary>
    public static ImmutableArray<Problem> Check(JsonElement geometry, string path, string name)
    {
        if (!geometry.TryGetProperty("type", out var type) || type.ValueKind != JsonValueKind.String || type.GetString() is not ("Polygon" or "MultiPolygon"))
        {
            var value = type.ValueKind == JsonValueKind.String ? type.GetString()! : "nothing";
            return [GeometryProblems.WrongType.At(Place.Named(path + ".type", name), ("value", value.Length > 40 ? value[..40] : value))];
        }

        var problems = ImmutableArray.CreateBuilder<Problem>();
        var polygons = Polygons(geometry);
        if (polygons.Count == 0 || polygons.Any(p => p.Count == 0))
            problems.Add(GeometryProblems.TooFewPoints.At(Place.Named(path + ".coordinates", name), ("value", "0")));
        var points = polygons.Sum(p => p.Sum(r => r.ValueKind == JsonValueKind.Array ? (long)r.GetArrayLength() : 0));
        if (points > MaxPoints)
            return [GeometryProblems.TooManyPoints.At(Place.Named(path, name), ("value", points.ToString(CultureInfo.InvariantCulture)), ("limit", MaxPoints.ToString(CultureInfo.InvariantCulture)))];
        for (var i = 0; i < polygons.Count; i++)
        {
            for (var j = 0; j < polygons[i].Count; j++)
                CheckRing(polygons[i][j], Place.Named(string.Create(CultureInfo.InvariantCulture, $"{path}.coordinates part {i + 1} ring {j + 1}"), name), problems);
        }

        return problems.ToImmutable();
    }

    private static void CheckRing(JsonElement ring, string where, ImmutableArray<Problem>.Builder problems)
    {
        if (ring.ValueKind == JsonValueKind.Array)
        {
            foreach (var position in ring.EnumerateArray())
            {
                if (Position(position) is not null) continue;
                var raw = position.GetRawText();
                problems.Add(GeometryProblems.NotAPosition.At(where, ("value", raw.Length > 40 ? raw[..40] + "…" : raw)));
                return;
            }
        }

        var points = Ring(ring);
        var different = points.Distinct().Count();
        if (different < 3)
            problems.Add(GeometryProblems.TooFewPoints.At(where, ("value", different.ToString(CultureInfo.InvariantCulture))));
        else if (!Closed(ring))
            problems.Add(GeometryProblems.NotClosed.At(where));
    }

    private static List<List<JsonElement>> Polygons(JsonElement geometry)
    {
        if (!geometry.TryGetProperty("coordinates", out var coordinates) || coordinates.ValueKind != JsonValueKind.Array) return [];
        return geometry.GetProperty("type").GetString() == "Polygon"
            ? [[.. coordinates.EnumerateArray()]]
            : [.. coordinates.EnumerateArray().Select(p => p.ValueKind == JsonValueKind.Array ? p.EnumerateArray().ToList() : [])];
    }

    /// <summary>Points of a ring, the closing one left off.</summary>
    private static ImmutableArray<GeoPoint> Ring(JsonElement ring)
    {
        if (ring.ValueKind != JsonValueKind.Array) return [];
        List<GeoPoint> points = [.. ring.EnumerateArray().Select(Position).OfType<GeoPoint>()];
        if (points.Count > 1 && points[^1] == points[0]) points.RemoveAt(points.Count - 1);
        return [.. points];
    }

    private static bool Closed(JsonElement ring) => Position(ring[0]) == Position(ring[ring.GetArrayLength() - 1]);

    private static GeoPoint? Position(JsonElement position)
    {
        if (position.ValueKind != JsonValueKind.Array || position.GetArrayLength() < 2) return null;
        return JsonFacts.NumberOf(position[0]) is { } longitude and >= -180 and <= 180 && JsonFacts.NumberOf(position[1]) is { } latitude and >= -90 and <= 90
            ? new GeoPoint(latitude, longitude)
            : null;
    }
}
