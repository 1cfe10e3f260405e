using Watersown.Farms;
using Watersown.Records.Land;

namespace Watersown.Records;

public sealed class OpenFarmTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("watersown-farm-");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void A_farm_is_opened_with_the_boundaries_beside_it()
    {
        Write("edges.geojson", """
            { "type": "FeatureCollection", "features": [
              { "type": "Feature", "properties": { "code": "TG" }, "geometry": { "type": "Polygon", "coordinates": [ [ [0, 0], [0.01, 0], [0.01, 0.01], [0, 0] ] ] } },
              { "type": "Feature", "properties": { "code": "SO" }, "geometry": { "type": "Polygon", "coordinates": [ [ [0, 0], [0.01, 0], [0.01, 0.01], [0, 0] ] ] } } ] }
            """);
        var read = OpenFarm.Run(Farm("edges.geojson"));
        Assert.Empty(read.Problems);
        Assert.All(read.Value.Farm.Fields, f => Assert.NotNull(f.Boundary));
    }

    [Fact]
    public void A_boundary_of_no_field_and_a_field_without_boundary_are_told()
    {
        Write("edges.geojson", Collection(Feature("""{ "code": "TG" }"""), Feature("""{ "name": "Split Oaks" }""")));
        var read = OpenFarm.Run(Farm("edges.geojson"));
        Assert.Equal("FARM-006 edges.geojson, feature 2 'Split Oaks'\nFARM-007 edges.geojson", SmallFarm.Said(read));
        Assert.Contains(read.Problems, p => Wording.Say.Problem(p, Wording.Language.English).Contains("Split Oak?", StringComparison.Ordinal));
    }

    [Fact]
    public void One_crooked_boundary_does_not_stop_the_farm_or_the_other_boundaries()
    {
        Write("edges.geojson", Collection(Feature("""{ "code": "TG" }"""), """{ "type": "Feature", "properties": { "code": "SO" }, "geometry": { "type": "Polygon", "coordinates": [ [ [0, 0], [0.01, 0.01], [0.01, 0], [0, 0.01], [0, 0] ] ] } }"""));
        var read = OpenFarm.Run(Farm("edges.geojson"));
        Assert.Empty(read.Refusals);
        Assert.NotNull(read.Value.Farm.Fields[0].Boundary);
        Assert.Null(read.Value.Farm.Fields[1].Boundary);
        Assert.Contains("LAND-108", SmallFarm.Said(read), StringComparison.Ordinal);
    }

    [Fact]
    public void An_edge_off_the_gross_acres_is_told_once()
    {
        Write("edges.geojson", Collection(Feature("""{ "code": "TG" }"""), Feature("""{ "code": "SO" }""")));
        var farm = SmallFarm.Json;
        farm["boundaries"] = "edges.geojson";
        farm["fields"]![0]!["gross_ac"] = 124.5;
        Assert.Equal("LAND-016 fields[0].boundary (Two Gates)", SmallFarm.Said(OpenFarm.Run(Write("farm.json", farm.ToJsonString()))));
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("""{ "type": "FeatureCollection", "features": [""")]
    public void A_file_that_holds_no_boundaries_leaves_the_farm_usable(string text)
    {
        Write("edges.geojson", text);
        var read = OpenFarm.Run(Farm("edges.geojson"));
        Assert.Empty(read.Refusals);
        Assert.NotEmpty(read.Warnings);
    }

    [Theory]
    [InlineData("edges.geojson")]
    [InlineData("/etc/hostname")]
    [InlineData("../edges.geojson")]
    [InlineData("..\\edges.geojson")]
    public void A_boundary_file_that_is_not_there_or_not_beside_it_is_left_out(string name)
    {
        var read = OpenFarm.Run(Farm(name));
        Assert.True(read.HasValue);
        Assert.Equal("FARM-005 boundaries", SmallFarm.Said(read));
    }

    [Fact]
    public void A_file_that_is_not_there_is_told()
    {
        var path = Path.Combine(folder.FullName, "nowhere", "farm.json");
        Assert.Equal("FILE-001 " + path, SmallFarm.Said(OpenFarm.Run(path)));
    }

    [Fact]
    public void A_folder_is_no_file() => Assert.Equal("FILE-002 " + folder.FullName, SmallFarm.Said(OpenFarm.Run(folder.FullName)));

    [Fact]
    public void A_boundary_file_that_cannot_be_read_leaves_the_farm_usable()
    {
        folder.CreateSubdirectory("edges.geojson");
        var read = OpenFarm.Run(Farm("edges.geojson"));
        Assert.True(read.HasValue);
        Assert.StartsWith("FILE-002", SmallFarm.Said(read), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_too_large_to_be_a_farm_is_refused()
    {
        var path = Path.Combine(folder.FullName, "farm.json");
        using (var file = File.Create(path)) file.SetLength(40_000_000);
        Assert.Equal("FILE-003 " + path, SmallFarm.Said(OpenFarm.Run(path)));
    }

    private static string Collection(params string[] features) => $$"""{ "type": "FeatureCollection", "features": [ {{string.Join(',', features)}} ] }""";

    private static string Feature(string properties) =>
        $$"""{ "type": "Feature", "properties": {{properties}}, "geometry": { "type": "Polygon", "coordinates": [ [ [0, 0], [0.01, 0], [0.01, 0.01], [0, 0] ] ] } }""";

    private string Farm(string boundaries)
    {
        var farm = SmallFarm.Json;
        farm["boundaries"] = boundaries;
        return Write("farm.json", farm.ToJsonString());
    }

    private string Write(string name, string text)
    {
        var path = Path.Combine(folder.FullName, name);
        File.WriteAllText(path, text);
        return path;
    }
}
