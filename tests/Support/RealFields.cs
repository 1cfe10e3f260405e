using System.Text.Json;
using Watersown.Land;
using Watersown.Shapes;

namespace Watersown;

/// <summary>The field polygons of tests/Reference/fields, each on a plane through its own middle. Provenance and licences: SOURCE.md there.</summary>
public static class RealFields
{
    public static ImmutableArray<string> Files { get; } = ["us_ca_crop_mapping_2023", "dk_fields", "de_sh_blocks", "nl_brp_2023", "at_fields_2025"];

    /// <summary>The three that hold fields of the size that is farmed.</summary>
    public static ImmutableArray<string> Farmed { get; } = [.. Files.Take(3)];

    public static ImmutableArray<(string Name, ImmutableArray<PlanePart> Land)> Of(string file)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(ReferenceFile.PathOf("fields", file + ".geojson")));
        return [.. document.RootElement.GetProperty("features").EnumerateArray().Select(feature => (
            feature.GetProperty("properties").GetProperty("id").GetString()!,
            Land(feature.GetProperty("geometry"))))];
    }

    private static ImmutableArray<PlanePart> Land(JsonElement geometry)
    {
        var coordinates = geometry.GetProperty("coordinates");
        IEnumerable<JsonElement> polygons = geometry.GetProperty("type").GetString() == "Polygon" ? [coordinates] : coordinates.EnumerateArray();
        ImmutableArray<ImmutableArray<ImmutableArray<GeoPoint>>> rings = [.. polygons.Select(p => p.EnumerateArray().Select(Ring).ToImmutableArray())];
        var corners = rings.SelectMany(p => p[0]).ToList();
        var plane = LocalPlane.At((corners.Min(c => c.Latitude) + corners.Max(c => c.Latitude)) / 2, (corners.Min(c => c.Longitude) + corners.Max(c => c.Longitude)) / 2);
        return [.. rings.Select(p => new PlanePart(plane.ToPlane(p[0]), [.. p.Skip(1).Select(plane.ToPlane)]))];
    }

    // The last corner of a GeoJSON ring is the first again.
    private static ImmutableArray<GeoPoint> Ring(JsonElement ring) =>
        [.. ring.EnumerateArray().SkipLast(1).Select(c => new GeoPoint(c[1].GetDouble(), c[0].GetDouble()))];
}
