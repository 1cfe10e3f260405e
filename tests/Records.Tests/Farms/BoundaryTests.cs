using System.Text;
using System.Text.Json.Nodes;
using Watersown.Documents.Farms;
using Watersown.Land;

namespace Watersown.Farms;

public sealed class BoundaryTests
{
    private const string Square = """{ "type": "Polygon", "coordinates": [ [ [-122.01, 39.01], [-122.0, 39.01], [-122.0, 39.02], [-122.01, 39.02], [-122.01, 39.01] ] ] }""";

    [Fact]
    public void A_boundary_can_stand_inside_the_field()
    {
        var edge = SmallFarm.WithField("boundary", Square).Value.Farm.Fields[0].Boundary!;
        Assert.Single(edge.Parts);
        Assert.Equal(4, edge.Parts[0].Outer.Length);
        Assert.Equal(new GeoPoint(39.01, -122.01), edge.Parts[0].Outer[0]);
    }

    [Fact]
    public void A_field_cut_by_a_road_and_with_an_island_keeps_its_parts_and_holes()
    {
        const string Two = """
            { "type": "MultiPolygon", "coordinates": [
              [ [ [0, 0], [0.004, 0], [0.004, 0.004], [0, 0.004], [0, 0] ], [ [0.001, 0.001], [0.002, 0.001], [0.002, 0.002], [0.001, 0.001] ] ],
              [ [ [0.006, 0], [0.008, 0], [0.008, 0.004], [0.006, 0] ] ] ] }
            """;
        var edge = SmallFarm.WithField("boundary", Two).Value.Farm.Fields[0].Boundary!;
        Assert.Equal("4+1 3+0", string.Join(' ', edge.Parts.Select(p => $"{p.Outer.Length}+{p.Holes.Length}")));
    }

    [Theory]
    [InlineData("""{ "type": "Point", "coordinates": [0, 0] }""", "LAND-100 fields[0].boundary (Two Gates)")]
    [InlineData("""{ "type": "Polygon" }""", "LAND-102 fields[0].boundary (Two Gates)")]
    [InlineData("""{ "type": "Polygon", "coordinates": [ [ [39.0, -122.0], [39.1, -122.0], [39.1, -122.1], [39.0, -122.0] ] ] }""", "LAND-105 fields[0].boundary (Two Gates), corner 1")]
    [InlineData("""{ "type": "Polygon", "coordinates": [ [ [0, 0], [0.01, 0.01], [0.01, 0], [0, 0.01], [0, 0] ] ] }""", "LAND-108 fields[0].boundary (Two Gates)")]
    public void A_broken_boundary_is_told(string geometry, string said)
    {
        var read = SmallFarm.WithField("boundary", geometry);
        Assert.True(read.IsRefused);
        Assert.Contains(said, SmallFarm.Said(read), StringComparison.Ordinal);
    }

    [Fact]
    public void A_boundary_that_does_not_enclose_the_gross_acres_is_told()
    {
        // A hundredth of a degree each way at 39 N: 0.6898 mi by 0.5383 mi, 237.6 acres.
        Outcome<Schedule.SeasonState> WithGross(double acres) => SmallFarm.With(f =>
        {
            f["fields"]![0]!["net_ac"] = acres * 0.95;
            f["fields"]![0]!["gross_ac"] = acres;
            f["fields"]![0]!["boundary"] = JsonNode.Parse(Square);
        });
        Assert.Equal(string.Empty, SmallFarm.Said(WithGross(237.6)));
        Assert.Equal(string.Empty, SmallFarm.Said(WithGross(232)));
        Assert.Equal("LAND-016 fields[0].boundary (Two Gates)", SmallFarm.Said(WithGross(229)));
    }

    [Fact]
    public void Boundaries_handed_in_go_to_their_fields_but_one_inside_the_document_stays()
    {
        var farm = SmallFarm.Json;
        farm["boundaries"] = "edges.geojson";
        farm["fields"]![0]!["boundary"] = JsonNode.Parse(Square);
        var other = new Boundary([new BoundaryPart([new(39, -122), new(39, -121.99), new(39.01, -121.99)], [])]);
        var edges = new Dictionary<string, Boundary>(StringComparer.Ordinal) { ["TG"] = other, ["SO"] = other }.ToImmutableDictionary(StringComparer.Ordinal);
        var read = FarmReading.Read(Encoding.UTF8.GetBytes(farm.ToJsonString()), SmallFarm.Context with { Boundaries = (_, _) => Outcome<ImmutableDictionary<string, Boundary>>.Of(edges) });
        Assert.Equal("4 3", string.Join(' ', read.Value.Farm.Fields.Select(f => f.Boundary!.Parts[0].Outer.Length)));
    }

    [Fact]
    public void Without_the_file_the_farm_is_read_and_says_so()
    {
        var read = SmallFarm.WithKey("boundaries", "\"edges.geojson\"");
        Assert.True(read.HasValue);
        Assert.Equal("FARM-005 boundaries", SmallFarm.Said(read));
    }
}
