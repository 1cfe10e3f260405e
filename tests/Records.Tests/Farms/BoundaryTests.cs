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
    public void Boundaries_of_a_file_go_to_their_fields_by_code_or_name()
    {
        var read = ReadWith(Collection(Feature("""{ "code": "tg" }"""), Feature("""{ "Name": "SPLIT OAK" }""")));
        Assert.Empty(read.Problems);
        Assert.All(read.Value.Farm.Fields, f => Assert.NotNull(f.Boundary));
    }

    [Fact]
    public void A_boundary_of_no_field_and_a_field_without_boundary_are_told()
    {
        var read = ReadWith(Collection(Feature("""{ "name": "Split Oaks" }""")));
        Assert.Equal("FARM-006 edges.geojson\nFARM-007 edges.geojson", SmallFarm.Said(read));
        Assert.Contains("Split Oak?", Wording.Say.Problem(read.Problems[0], Wording.Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void One_crooked_boundary_does_not_stop_the_farm_or_the_other_boundaries()
    {
        var read = ReadWith(Collection(Feature("""{ "code": "TG" }"""), """{ "type": "Feature", "properties": { "code": "SO", "name": "Split Oak" }, "geometry": null }"""));
        Assert.Empty(read.Refusals);
        Assert.NotNull(read.Value.Farm.Fields[0].Boundary);
        Assert.Equal("FARM-007 edges.geojson\nLAND-100 edges.geojson features[1] (Split Oak)", SmallFarm.Said(read));
    }

    [Fact]
    public void A_boundary_inside_the_farm_document_is_kept_over_the_file()
    {
        var bytes = Encoding.UTF8.GetBytes(Collection(Feature("""{ "code": "TG" }"""), Feature("""{ "code": "SO" }""")));
        var farm = SmallFarm.Json;
        farm["boundaries"] = "edges.geojson";
        farm["fields"]![0]!["boundary"] = JsonNode.Parse("""{ "type": "Polygon", "coordinates": [ [ [0, 0], [0.01, 0], [0.01, 0.01], [0, 0] ] ] }""");
        var read = FarmReading.Read(Encoding.UTF8.GetBytes(farm.ToJsonString()), SmallFarm.Context with { Boundaries = name => BoundaryFile.Read(bytes, name) });
        Assert.Equal(3, read.Value.Farm.Fields[0].Boundary!.Parts[0].Outer.Length);
    }

    [Theory]
    [InlineData("[]", "FARM-008 edges.geojson")]
    [InlineData("""{ "type": "FeatureCollection" }""", "FARM-008 edges.geojson")]
    [InlineData("""{ "type": "FeatureCollection", "features": [""", "DOC-004 edges.geojson line 1, column 45")]
    public void A_file_that_holds_no_boundaries_leaves_the_farm_usable(string text, string said)
    {
        var read = ReadWith(text);
        Assert.True(read.HasValue);
        Assert.Equal(said, SmallFarm.Said(read));
    }

    [Fact]
    public void Without_the_file_the_farm_is_read_and_says_so()
    {
        var read = SmallFarm.WithKey("boundaries", "\"edges.geojson\"");
        Assert.True(read.HasValue);
        Assert.Equal("FARM-005 boundaries", SmallFarm.Said(read));
    }

    private static Outcome<Schedule.SeasonState> ReadWith(string boundaries)
    {
        var farm = SmallFarm.Json;
        farm["boundaries"] = "edges.geojson";
        return FarmReading.Read(
            Encoding.UTF8.GetBytes(farm.ToJsonString()),
            SmallFarm.Context with { Boundaries = name => BoundaryFile.Read(Encoding.UTF8.GetBytes(boundaries), name) });
    }

    private static string Collection(params string[] features) => $$"""{ "type": "FeatureCollection", "features": [ {{string.Join(',', features)}} ] }""";

    private static string Feature(string properties) => $$"""{ "type": "Feature", "properties": {{properties}}, "geometry": {{Square}} }""";
}
