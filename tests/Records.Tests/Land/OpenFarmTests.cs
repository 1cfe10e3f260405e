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
