using System.Text.Json;
using Watersown.Documents.Json;
using Watersown.Land;

namespace Watersown.Records.Files.Boundaries;

/// <summary>GeoJSON: features, one feature, or a bare geometry, in degrees, or on the grid that the old member <c>crs</c> names.</summary>
internal static class GeoJsonFile
{
    private static readonly string[] areas = ["Polygon", "MultiPolygon"];

    public static Outcome<DrawnLayer> Read(string file, ReadOnlyMemory<byte> bytes)
    {
        var text = JsonText.Read(bytes);
        if (!text.HasValue) return Outcome<DrawnLayer>.Refuse(text.Problems.Select(p => p with { Where = p.Where.Length == 0 ? file : file + ", " + p.Where }));
        using var document = text.Value;
        return Read(file, document.RootElement);
    }

    private static Outcome<DrawnLayer> Read(string file, JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object) return Outcome<DrawnLayer>.Refuse(MapFileProblems.NothingDrawn.At(file, ("wanted", "Polygon")));
        var grid = GridOf(root, file);
        if (!grid.HasValue) return Outcome<DrawnLayer>.Refuse(grid.Problems);
        var drawing = new Drawing(file);
        if (TypeOf(root) == "FeatureCollection" && root.TryGetProperty("features", out var features) && features.ValueKind == JsonValueKind.Array)
        {
            var number = 0;
            foreach (var feature in features.EnumerateArray())
            {
                if (drawing.IsFull) break;
                AddFeature(drawing, feature, ++number);
            }
        }
        else
        {
            AddFeature(drawing, root, 1);
        }

        return drawing.Finish(grid.Value, "Polygon or MultiPolygon");
    }

    private static void AddFeature(Drawing drawing, JsonElement feature, int number)
    {
        var isFeature = TypeOf(feature) == "Feature";
        var columns = isFeature && feature.TryGetProperty("properties", out var properties) ? Columns(properties) : [];
        var name = MapBoundary.NameOf(columns);
        var where = MapText.Where(drawing.File, "feature", number, name);
        JsonElement geometry = default;
        if (!isFeature) geometry = feature;
        else if (feature.TryGetProperty("geometry", out var inside)) geometry = inside;

        if (geometry.ValueKind == JsonValueKind.Null || (TypeOf(geometry) is { } type && !areas.Contains(type, StringComparer.Ordinal) && type.Length > 0 && type != "GeometryCollection"))
        {
            drawing.Skip();
            return;
        }

        if (!drawing.CountPoints(0)) return;
        var drawn = BoundaryReading.Drawn(geometry.ValueKind == JsonValueKind.Undefined ? Datum.None : ToDatum(geometry), where);
        drawing.Add(drawn.Problems);
        if (drawn.HasValue) drawing.Add(new DrawnFeature(where, name, columns, drawn.Value));
    }

    private static string? TypeOf(JsonElement value)
    {
        if (value.ValueKind != JsonValueKind.Object) return null;
        return value.TryGetProperty("type", out var type) && type.ValueKind == JsonValueKind.String ? type.GetString() : null;
    }

    // The member that files of before RFC 7946 carry; an empty one means that nobody said.
    private static Outcome<Grid> GridOf(JsonElement root, string file)
    {
        if (!root.TryGetProperty("crs", out var crs) || crs.ValueKind == JsonValueKind.Null) return Outcome<Grid>.Of(Grid.Degrees);
        if (crs.ValueKind == JsonValueKind.Object && TypeOf(crs) == "name" && crs.TryGetProperty("properties", out var properties)
            && properties.ValueKind == JsonValueKind.Object && properties.TryGetProperty("name", out var name) && name.ValueKind == JsonValueKind.String)
            return KnownGrids.Find(name.GetString()!, file);
        return Outcome<Grid>.Refuse(MapFileProblems.UnreadableGrid.At(file));
    }

    private static ImmutableArray<(string Column, string Text)> Columns(JsonElement properties)
    {
        if (properties.ValueKind != JsonValueKind.Object) return [];
        return [.. properties.EnumerateObject()
            .Where(p => p.Value.ValueKind is JsonValueKind.String or JsonValueKind.Number)
            .Take(MapFileLimits.MaxColumns)
            .Select(p => (MapText.Short(p.Name), MapText.Short(p.Value.ToString())))];
    }

    private static Datum ToDatum(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Number => value.TryGetDouble(out var number) ? number : double.NaN,
        JsonValueKind.String => value.ToString(),
        JsonValueKind.Array => Datum.ListOf(value.EnumerateArray().Select(ToDatum)),
        JsonValueKind.Object => new Datum.Table([.. value.EnumerateObject().Select(p => (p.Name, ToDatum(p.Value)))]),
        JsonValueKind.True or JsonValueKind.False => value.GetBoolean(),
        _ => Datum.None,
    };
}
