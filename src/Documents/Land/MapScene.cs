using System.Globalization;
using System.Text;
using Watersown.Documents.Json;
using Watersown.Flight;
using Watersown.Land;
using Watersown.Season.Ground;
using Watersown.Wording;

namespace Watersown.Documents.Land;

/// <summary>One field for the map: where it lies, how it is drawn, and the word for that.</summary>
/// <param name="Row">The field and how it stands.</param>
/// <param name="Look">Name of its pattern.</param>
/// <param name="Word">The word for its state, in the reader's language.</param>
public sealed record SceneField(LandRow Row, string Look, string Word);

/// <summary>Everything that the moving map draws, as GeoJSON (RFC 7946): nothing else is ever told to it.</summary>
public static class MapScene
{
    /// <summary>The scene; fields without a place are left out, as they are in every map.</summary>
    /// <param name="farm">Boxes, hazards and strips with a place.</param>
    /// <param name="fields">The fields.</param>
    /// <param name="words">Words for hazards without a name.</param>
    public static string Write(Farm farm, ImmutableArray<SceneField> fields, MapWords words)
    {
        using var pen = new JsonPen(indented: false);
        pen.Thing(null, () =>
        {
            pen.Text("type", "FeatureCollection");
            pen.List("features", Features(farm, fields, words), feature => pen.Thing(null, () => feature(pen)));
        });
        return Encoding.UTF8.GetString(pen.Line().Span);
    }

    /// <summary>Words, units and the farm's own tile source.</summary>
    public static string Options(Words words, bool metric, string? tiles)
    {
        using var pen = new JsonPen(indented: false);
        pen.Thing(null, () =>
        {
            pen.Thing("words", () =>
            {
                pen.Text("title", words.MovingMap.Title);
                pen.Text("twoFingers", words.MovingMap.TwoFingers);
                pen.Text("north", words.Map.North);
                pen.Text("feet", words.Common.Feet);
                pen.Text("meters", "m");
                pen.Text("miles", words.Common.Miles);
                pen.Text("kilometers", "km");
            });
            pen.Yes("metric", metric);
            if (tiles is not null) pen.Thing("tiles", () => pen.Text("url", tiles));
        });
        return Encoding.UTF8.GetString(pen.Line().Span);
    }

    /// <summary>Corners for the map, in order.</summary>
    public static string Corners(ImmutableArray<GeoPoint> corners)
    {
        using var pen = new JsonPen(indented: false);
        pen.List(null, corners, corner => pen.Thing(null, () =>
        {
            pen.Number("lat", corner.Latitude);
            pen.Number("lon", corner.Longitude);
        }));
        return Encoding.UTF8.GetString(pen.Line().Span);
    }

    /// <summary>A place that the map told of: two numbers, latitude first.</summary>
    public static GeoPoint? Place(string told)
    {
        var parts = told.Split(' ');
        return parts.Length == 2 && double.TryParse(parts[0], NumberStyles.Float, CultureInfo.InvariantCulture, out var latitude) && double.TryParse(parts[1], NumberStyles.Float, CultureInfo.InvariantCulture, out var longitude)
            ? new GeoPoint(latitude, longitude)
            : null;
    }

    private static IEnumerable<Action<JsonPen>> Features(Farm farm, ImmutableArray<SceneField> fields, MapWords words)
    {
        foreach (var field in fields)
        {
            if (GroundOutline.Of(field.Row.Field) is not { } outline) continue;
            yield return pen => Write(pen, p => GeometryWriting.Write(p, "geometry", outline.Edge), p =>
            {
                p.Text("kind", "field");
                p.Text("code", field.Row.Field.Code);
                p.Text("name", field.Row.Field.Name);
                p.Text("look", field.Look);
                p.Text("word", field.Word);
                p.Yes("drawn", outline.Drawn);
            });
            foreach (var basin in field.Row.Field.Basins.Where(b => b.Boundary is not null)) yield return pen => Write(pen, p => GeometryWriting.Write(p, "geometry", basin.Boundary), p => p.Text("kind", "check"));
            foreach (var box in field.Row.Field.Boxes.Where(b => b.At is not null))
            {
                yield return pen => Write(pen, p => Spot(p, [box.At!.Value]), p =>
                {
                    p.Text("kind", "box");
                    p.Yes("leaks", box.Leaks);
                });
            }
        }

        foreach (var hazard in farm.Hazards.Where(h => h is { Points.IsEmpty: false, Listing.Within: not null })) yield return pen => Write(pen, p => GeometryWriting.Write(p, "geometry", Around(hazard)), p => p.Text("kind", "around"));
        foreach (var hazard in farm.Hazards.Where(h => !h.Points.IsEmpty)) yield return pen => Named(pen, hazard.Points, "hazard", hazard.Name.Length > 0 ? hazard.Name : words.Other);
        foreach (var strip in farm.Strips.Where(s => s.At is not null)) yield return pen => Named(pen, [strip.At!.Value], "strip", strip.Name);
    }

    /// <summary>The ground on which a listed hazard may stand.</summary>
    private static Boundary Around(Hazard hazard)
    {
        var plane = FarmPlane.At(hazard.Points[0]);
        return new Boundary([new BoundaryPart([.. MapGeometry.Disc(plane.ToPlane(hazard.Points[0]), hazard.Listing!.Within!.Value).Outer.Reverse().Select(plane.ToPlace)], [])]);
    }

    private static void Named(JsonPen pen, ImmutableArray<GeoPoint> points, string kind, string name) => Write(pen, p => Spot(p, points), p =>
    {
        p.Text("kind", kind);
        p.Text("name", name);
    });

    private static void Write(JsonPen pen, Action<JsonPen> geometry, Action<JsonPen> facts)
    {
        pen.Text("type", "Feature");
        geometry(pen);
        pen.Thing("properties", () => facts(pen));
    }

    private static void Spot(JsonPen pen, ImmutableArray<GeoPoint> points) => pen.Thing("geometry", () =>
    {
        pen.Text("type", points.Length == 1 ? "Point" : "LineString");
        if (points.Length == 1) Position("coordinates", points[0]);
        else pen.List("coordinates", points, p => Position(null, p));

        void Position(string? key, GeoPoint point) => pen.List(key, [point.Longitude, point.Latitude], pen.Bare);
    });
}
