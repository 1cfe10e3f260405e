using Watersown.Reckon;
using Watersown.Wording;

namespace Watersown.Land;

/// <summary>The calculations about land that can be asked for by name.</summary>
public static class LandReckonings
{
    public static ImmutableArray<Reckoning> All { get; } = [AreaInside];

    private static Reckoning AreaInside => new(
        "area",
        "How many acres does this boundary enclose?",
        [
            new("boundary", KeyKind.Boundary, "GeoJSON, degrees", "Polygon or MultiPolygon in WGS 84, longitude first; holes are taken off"),
        ],
        [
            new("area_ac", KeyKind.Number, "ac", "land inside, international acres"),
            new("area_m2", KeyKind.Number, "m²", "land inside"),
            new("perimeter_m", KeyKind.Number, "m", "length of every edge, holes included"),
        ],
        Sources.Karney2013.At("section 6"),
        """boundary={"type":"Polygon","coordinates":[[[-122,39.4],[-121.9906,39.4],[-121.9906,39.4072],[-122,39.4072],[-122,39.4]]]}""",
        Measure)
    {
        Limits = "On the WGS 84 ellipsoid at height zero, edges are shortest ways between corners; right to one part in a thousand million. Corners are the weak part: 3 ft along one side of a quarter section is 0.2 ac.",
    };

    private static Outcome<Reckoned> Measure(ReckoningInput given) => BoundaryReading.Read(given.Table("boundary"), "boundary").Then(Reckon);

    private static Outcome<Reckoned> Reckon(Boundary boundary)
    {
        var area = GeodesicArea.Of(boundary);
        var perimeter = GeodesicArea.Perimeter(boundary);
        var outer = boundary.Parts.Aggregate(Area.Zero, (sum, part) => sum + GeodesicArea.OfRing(part.Outer));
        var source = Sources.Karney2013.At("section 6");
        var working = Working.Empty
            .Given("n", "corners", boundary.Parts.Sum(p => p.Outer.Length + p.Holes.Sum(h => h.Length)), string.Empty, "boundary")
            .Given("h", "holes", boundary.Parts.Sum(p => p.Holes.Length), string.Empty, "boundary")
            .Constant("a", "equatorial radius of the earth", 6378137, "m", Sources.Wgs84)
            .Constant("1/f", "one over its flattening", 298.257223563, string.Empty, Sources.Wgs84)
            .Step("Ao", "land inside the outer rings", outer.SquareMeters, "m²", "geodesic polygon on the ellipsoid", source)
            .Step("Ah", "land in the holes", (outer - area).SquareMeters, "m²", "geodesic polygons on the ellipsoid", source)
            .Step("A", "land inside", area.SquareMeters, "m²", "Ao - Ah", source)
            .Step("Aac", "land inside", area.Acres, "ac", "A / 4046.8564224", Sources.Definition)
            .Step("P", "length of every edge", perimeter.Meters, "m", "sum of geodesic distances", Sources.Karney2013.At("section 4"));
        return Outcome<Reckoned>.Of(new Reckoned([("area_ac", area.Acres), ("area_m2", area.SquareMeters), ("perimeter_m", perimeter.Meters)], working)
        {
            Cautions = area > BoundaryLimits.MostUsual || area < BoundaryLimits.LeastUsual
                ? [Say.Figure(area.Acres) + " ac is hardly one field: check that the boundary is the one meant."]
                : [],
        });
    }
}
