using System.Globalization;
using System.Text.Json;
using NetTopologySuite.Geometries;
using Watersown.Land;
using Watersown.Records.Files.Boundaries;
using Watersown.Schedule;
using Watersown.Shapes;

namespace Watersown.Records.Land;

/// <summary>The drawn edges of the example farm keep what its document says of them.</summary>
public sealed class MarrowfenDrawingTests
{
    private const double FeetAMeter = 1 / 0.3048;

    private static readonly GeometryFactory Factory = new();
    private static readonly SeasonState State = OpenFarm.Run(PathOf("farm.json")).Value;
    private static readonly LocalPlane Plane = FarmPlane.At(new GeoPoint(39, -122));
    private static readonly Dictionary<string, Polygon> Drawn =
        MapFile.Open(PathOf("boundaries.geojson")).Value.ToDictionary(b => b["code"], b => ToPolygon(b.Edge.Parts.Single()));

    private static string PathOf(string file) => Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", file);

    private static Polygon ToPolygon(BoundaryPart part)
    {
        var plane = Plane.ToPlane(part);
        return Factory.CreatePolygon(Ring(plane.Outer), [.. plane.Holes.Select(Ring)]);

        static LinearRing Ring(ImmutableArray<PlanePoint> ring) => Factory.CreateLinearRing([.. ring.Append(ring[0]).Select(p => new Coordinate(p.East, p.North))]);
    }

    private static Geometry At(JsonElement geometry)
    {
        var points = Points(geometry.GetProperty("coordinates")).Select(p => Plane.ToPlane(p[1], p[0])).Select(p => new Coordinate(p.East, p.North)).ToArray();
        return points.Length == 1 ? Factory.CreatePoint(points[0]) : Factory.CreateLineString(points);

        static IEnumerable<double[]> Points(JsonElement value) =>
            value[0].ValueKind == JsonValueKind.Number ? [[value[0].GetDouble(), value[1].GetDouble()]] : value.EnumerateArray().SelectMany(Points);
    }

    private static List<(JsonElement Properties, JsonElement Geometry)> Features(string file) =>
        [.. JsonDocument.Parse(File.ReadAllBytes(PathOf(file))).RootElement.GetProperty("features").EnumerateArray().Select(f => (f.GetProperty("properties"), f.GetProperty("geometry")))];

    [Fact]
    public void Every_field_is_drawn_to_its_gross_acres()
    {
        var edges = MapFile.Open(PathOf("boundaries.geojson"));
        Assert.Empty(edges.Problems);
        Assert.Equal(State.Farm.Fields.Select(f => (f.Code, f.Name)), edges.Value.Select(b => (b["code"], b["name"])));
        foreach (var (field, edge) in State.Farm.Fields.Zip(edges.Value))
            Assert.Equal(1, GeodesicArea.Of(edge.Edge) / field.Gross!.Value, 1e-4);
    }

    // The invented farm: every field 2,640 ft from south to north, its middle where the farm's table puts it.
    [Fact]
    public void Every_field_is_half_a_mile_long_and_stands_in_its_place()
    {
        foreach (var field in State.Farm.Fields)
        {
            var polygon = Drawn[field.Code];
            Assert.Equal(2640, polygon.EnvelopeInternal.Height * FeetAMeter, 3.0);
            var middle = Plane.ToPlane(field.Center!.Value);
            var apart = polygon.Centroid.Distance(Factory.CreatePoint(new Coordinate(middle.East, middle.North)));
            Assert.True(apart * FeetAMeter < 0.05 * 5280, field.Code + " " + apart.ToString(CultureInfo.InvariantCulture));
        }
    }

    [Fact]
    public void Between_neighbors_there_is_room_for_a_levee()
    {
        var codes = Drawn.Keys.ToList();
        for (var i = 0; i < codes.Count; i++)
        {
            for (var j = 0; j < i; j++) Assert.True(Drawn[codes[i]].Distance(Drawn[codes[j]]) * FeetAMeter > 12, codes[i] + " " + codes[j]);
        }
    }

    [Fact]
    public void The_odd_fields_are_odd()
    {
        Assert.Equal(6, Drawn["N7"].ExteriorRing.NumPoints - 1);
        Assert.True(Drawn["N7"].Area < 0.85 * Drawn["N7"].EnvelopeInternal.Area);
        Assert.True(Drawn["H5"].ExteriorRing.NumPoints > 100);
        Assert.Equal(5, Drawn["S5"].ExteriorRing.NumPoints - 1);
        Assert.Equal(1, Drawn["N6"].NumInteriorRings);
        Assert.True(Drawn["R2"].Area < 0.95 * Drawn["R2"].ConvexHull().Area);
    }

    [Fact]
    public void The_checks_of_a_field_are_as_many_as_its_document_says_and_fill_it_without_overlapping()
    {
        var checks = MapFile.Open(PathOf("checks.geojson"));
        Assert.Empty(checks.Problems);
        foreach (var field in State.Farm.Fields)
        {
            var own = checks.Value.Where(c => c["code"] == field.Code).ToList();
            Assert.Equal(field.Basins.Length, own.Count);
            Assert.Equal(Enumerable.Range(1, own.Count).Select(n => n.ToString(CultureInfo.InvariantCulture)), own.Select(c => c["check"]));
            var polygons = own.Select(c => ToPolygon(c.Edge.Parts.Single())).ToList();
            Assert.Equal(1, polygons.Sum(p => p.Area) / Drawn[field.Code].Area, 1e-5);
            for (var i = 1; i < polygons.Count; i++) Assert.True(polygons[i].Intersection(polygons[i - 1]).Area < 5, field.Code);
        }
    }

    [Fact]
    public void Levees_run_from_edge_to_edge_between_the_checks()
    {
        var levees = Features("levees.geojson");
        foreach (var field in State.Farm.Fields)
        {
            var own = levees.Where(l => l.Properties.GetProperty("code").GetString() == field.Code).ToList();
            Assert.Equal(field.Basins.Length - 1, own.Count);
            foreach (var levee in own.Select(l => At(l.Geometry)).Cast<LineString>())
            {
                Assert.True(Drawn[field.Code].Boundary.Distance(levee.StartPoint) < 1, field.Code);
                Assert.True(Drawn[field.Code].Boundary.Distance(levee.EndPoint) < 1, field.Code);
            }
        }
    }

    // The invented farm: orchard 0.6 mi east of R4, vegetables 0.3 mi south of S5, mast 0.2 mi north of N6, pond by R1.
    [Theory]
    [InlineData("prune orchard", "R4", 0.6, 0.01)]
    [InlineData("organic vegetables", "S5", 0.3, 0.01)]
    [InlineData("new mast, unlit, on no chart", "N6", 0.2, 0.01)]
    [InlineData("hatchery pond", "R1", 0.07, 0.03)]
    public void Hazards_stand_as_far_from_their_field_as_told(string name, string field, double miles, double tolerance)
    {
        var hazard = Features("hazards.geojson").Single(h => h.Properties.GetProperty("name").GetString() == name);
        Assert.Equal(miles, Drawn[field].Distance(At(hazard.Geometry)) / 1609.344, tolerance);
    }

    [Fact]
    public void Every_hazard_of_the_document_is_drawn_with_its_words()
    {
        var drawn = Features("hazards.geojson").Select(h => h.Properties.GetProperty("name").GetString());
        Assert.Equal(State.Farm.Hazards.Select(h => h.Name), drawn);
        Assert.Contains(Features("hazards.geojson"), h => h.Geometry.GetProperty("type").GetString() == "LineString");
    }
}
