using System.Globalization;
using Watersown.Wording;

namespace Watersown.Land;

/// <summary>
/// A boundary out of a GeoJSON value: a Polygon or MultiPolygon in WGS 84 with longitude first, a Feature that has one, or a
/// FeatureCollection of exactly one such Feature.
/// </summary>
public static class BoundaryReading
{
    /// <summary>Reads the value; every problem at once.</summary>
    /// <param name="value">The GeoJSON object.</param>
    /// <param name="where">What is being read, for its problems: a key, a file, a field.</param>
    [Source(nameof(Sources.Rfc7946), "sections 3.1.6 and 3.1.7")]
    public static Outcome<Boundary> Read(Datum value, string where) => Drawn(value, where).Then(parts => BoundaryDrawing.Create(parts, where));

    /// <summary>
    /// The rings as they stand in the value, looked at only as far as that they are rings of numbers; the first number of a corner is
    /// given as longitude whatever grid it is on.
    /// </summary>
    [Source(nameof(Sources.Rfc7946), "sections 3.1.6 and 3.1.7")]
    public static Outcome<ImmutableArray<BoundaryPart>> Drawn(Datum value, string where) =>
        GeometryOf(value, where).Then(geometry => Rings(geometry, where));

    private static Outcome<Datum.Table> GeometryOf(Datum value, string where)
    {
        // A Feature in a FeatureCollection in a Feature would be no GeoJSON: two steps down are enough.
        for (var depth = 0; depth < 3 && value is Datum.Table table; depth++)
        {
            switch ((table["type"] as Datum.Text)?.Value)
            {
                case "Polygon" or "MultiPolygon":
                    return Outcome<Datum.Table>.Of(table);
                case "Feature" when table["geometry"] is { } geometry:
                    value = geometry;
                    break;
                case "FeatureCollection" when table["features"] is Datum.Sequence { Items: [var only] }:
                    value = only;
                    break;
                case "FeatureCollection" when table["features"] is Datum.Sequence { Items: var items }:
                    return Outcome<Datum.Table>.Refuse(BoundaryProblems.OneFeature.At(where, ("value", Say.Number(items.Length))));
                default:
                    return Outcome<Datum.Table>.Refuse(BoundaryProblems.NotGeometry.At(where, ("value", Named(table))));
            }
        }

        return Outcome<Datum.Table>.Refuse(BoundaryProblems.NotGeometry.At(where, ("value", Named(value))));
    }

    private static string Named(Datum value)
    {
        var said = value is Datum.Table table ? table["type"] is { } type ? Say.Datum(type) : "an object with no type" : Say.Datum(value);
        return Say.Short(said, 60);
    }

    private static Outcome<ImmutableArray<BoundaryPart>> Rings(Datum.Table geometry, string where)
    {
        var problems = ImmutableArray.CreateBuilder<Problem>();
        var many = geometry["type"] is Datum.Text { Value: "MultiPolygon" };
        if (geometry["coordinates"] is not Datum.Sequence { Items: var items })
            return Refuse("a list", where);
        ImmutableArray<Datum> polygons = many ? items : [new Datum.Sequence(items)];
        var parts = ImmutableArray.CreateBuilder<BoundaryPart>(polygons.Length);
        for (var i = 0; i < polygons.Length; i++)
        {
            if (polygons[i] is not Datum.Sequence { Items: { Length: > 0 } rings })
                return Refuse("a list of rings for each polygon", where);
            var read = rings.Select((ring, r) => Ring(ring, Place(where, polygons.Length > 1 ? i : null, r), problems)).ToImmutableArray();
            parts.Add(new BoundaryPart(read[0], read[1..]));
        }

        return problems.Count > 0 ? Outcome<ImmutableArray<BoundaryPart>>.Refuse(problems) : Outcome<ImmutableArray<BoundaryPart>>.Of(parts.ToImmutable());
    }

    private static Outcome<ImmutableArray<BoundaryPart>> Refuse(string wanted, string where) =>
        Outcome<ImmutableArray<BoundaryPart>>.Refuse(BoundaryProblems.BadCoordinates.At(where, ("wanted", wanted)));

    private static ImmutableArray<GeoPoint> Ring(Datum value, string where, ImmutableArray<Problem>.Builder problems)
    {
        if (value is not Datum.Sequence { Items: var positions })
        {
            problems.Add(BoundaryProblems.BadCoordinates.At(where, ("wanted", "a list of corners")));
            return [];
        }

        var ring = ImmutableArray.CreateBuilder<GeoPoint>(positions.Length);
        for (var i = 0; i < positions.Length; i++)
        {
            // A height as third number is allowed, and of no use here.
            if (positions[i] is not Datum.Sequence { Items: { Length: >= 2 } position })
            {
                problems.Add(BoundaryProblems.BadCoordinates.At(Corner(where, i), ("wanted", "a longitude and a latitude")));
                return [];
            }

            if (position[0] is not Datum.Number longitude || position[1] is not Datum.Number latitude)
            {
                var wrong = position[0] is Datum.Number ? position[1] : position[0];
                problems.Add(BoundaryProblems.NotANumber.At(Corner(where, i), ("value", Named(wrong))));
                return [];
            }

            ring.Add(new GeoPoint(latitude.Value, longitude.Value));
        }

        return ring.ToImmutable();
    }

    private static string Corner(string where, int index) => string.Create(CultureInfo.InvariantCulture, $"{where}, corner {index + 1}");

    private static string Place(string where, int? part, int ring)
    {
        var name = part is { } p ? string.Create(CultureInfo.InvariantCulture, $"{where}, piece {p + 1}") : where;
        return ring == 0 ? name : string.Create(CultureInfo.InvariantCulture, $"{name}, hole {ring}");
    }
}
