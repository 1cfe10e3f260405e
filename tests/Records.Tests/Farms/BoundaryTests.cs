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
              [ [ [0, 0], [4, 0], [4, 4], [0, 4], [0, 0] ], [ [1, 1], [2, 1], [2, 2], [1, 1] ] ],
              [ [ [6, 0], [8, 0], [8, 4], [6, 0] ] ] ] }
            """;
        var edge = SmallFarm.WithField("boundary", Two).Value.Farm.Fields[0].Boundary!;
        Assert.Equal("4+1 3+0", string.Join(' ', edge.Parts.Select(p => $"{p.Outer.Length}+{p.Holes.Length}")));
    }

    [Theory]
    [InlineData("""{ "type": "Point", "coordinates": [0, 0] }""", "GEO-001 fields[0].boundary.type (Two Gates)")]
    [InlineData("""{ "coordinates": [] }""", "GEO-001 fields[0].boundary.type (Two Gates)")]
    [InlineData("""{ "type": "Polygon", "coordinates": [ [ [39.0, -122.0], [39.1, -122.0], [39.1, -122.1], [39.0, -122.0] ] ] }""", "GEO-002 fields[0].boundary.coordinates part 1 ring 1 (Two Gates)")]
    [InlineData("""{ "type": "Polygon", "coordinates": [ [ [0, 0], [1, "1"], [1, 0], [0, 0] ] ] }""", "GEO-002 fields[0].boundary.coordinates part 1 ring 1 (Two Gates)")]
    [InlineData("""{ "type": "Polygon", "coordinates": [ [ [0, 0], [1, 1], [0, 0], [0, 0] ] ] }""", "GEO-003 fields[0].boundary.coordinates part 1 ring 1 (Two Gates)")]
    [InlineData("""{ "type": "Polygon", "coordinates": [] }""", "GEO-003 fields[0].boundary.coordinates (Two Gates)")]
    [InlineData("""{ "type": "Polygon" }""", "GEO-003 fields[0].boundary.coordinates (Two Gates)")]
    [InlineData("""{ "type": "MultiPolygon", "coordinates": [ 7 ] }""", "GEO-003 fields[0].boundary.coordinates (Two Gates)")]
    [InlineData("""{ "type": "Polygon", "coordinates": [ 7 ] }""", "GEO-003 fields[0].boundary.coordinates part 1 ring 1 (Two Gates)")]
    [InlineData("""{ "type": "Polygon", "coordinates": [ [ [0, 0], [1, 1], [1, 0] ] ] }""", "GEO-004 fields[0].boundary.coordinates part 1 ring 1 (Two Gates)")]
    public void A_broken_boundary_is_told_by_part_and_ring(string geometry, string said) =>
        Assert.Equal(said, SmallFarm.Said(SmallFarm.WithField("boundary", geometry)));

    [Fact]
    public void A_boundary_of_too_many_points_is_refused()
    {
        var ring = string.Join(',', Enumerable.Range(0, 100_001).Select(i => FormattableString.Invariant($"[{i % 100},{i / 1200}]")));
        Assert.Equal("GEO-005 fields[0].boundary (Two Gates)", SmallFarm.Said(SmallFarm.WithField("boundary", $"{{\"type\":\"Polygon\",\"coordinates\":[[{ring}]]}}")));
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
        Assert.True(read.HasValue);
        Assert.NotNull(read.Value.Farm.Fields[0].Boundary);
        Assert.Equal("FARM-007 edges.geojson\nGEO-001 edges.geojson features[1].geometry (Split Oak)", SmallFarm.Said(read));
    }

    [Fact]
    public void A_boundary_inside_the_farm_document_is_kept_over_the_file()
    {
        var bytes = Encoding.UTF8.GetBytes(Collection(Feature("""{ "code": "TG" }"""), Feature("""{ "code": "SO" }""")));
        var farm = SmallFarm.Json;
        farm["boundaries"] = "edges.geojson";
        farm["fields"]![0]!["boundary"] = JsonNode.Parse("""{ "type": "Polygon", "coordinates": [ [ [0, 0], [1, 0], [1, 1], [0, 0] ] ] }""");
        var read = FarmReading.Read(Encoding.UTF8.GetBytes(farm.ToJsonString()), SmallFarm.Context with { Boundaries = name => BoundaryFile.Read(bytes, name) });
        Assert.Equal(3, read.Value.Farm.Fields[0].Boundary!.Parts[0].Outer.Length);
    }

    [Theory]
    [InlineData("[]", "GEO-006 edges.geojson")]
    [InlineData("""{ "type": "FeatureCollection" }""", "GEO-006 edges.geojson")]
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
