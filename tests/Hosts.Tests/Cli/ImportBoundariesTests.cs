using Watersown.Cli;
using static Watersown.Hosts.Asking;

namespace Watersown.Hosts;

public sealed class ImportBoundariesTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("watersown");

    private static string Example(string file) => Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", file);

    private string Here(string file) => Path.Combine(folder.FullName, file);

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public async Task Marrowfen_gets_its_edges_and_the_document_opens_again()
    {
        var said = await AsksAsync("import", "boundaries", Example("farm.json"), Example("boundaries.geojson"), "--out", Here("farm.json"));
        Assert.Equal(ExitCode.Done, said.Code);
        Assert.Empty(said.Error);
        Assert.Contains("N4    Two Gates", said.Out, StringComparison.Ordinal);
        Assert.EndsWith("Written to " + Here("farm.json") + ".\n", said.Out, StringComparison.Ordinal);
        var again = await AsksAsync("farm", "check", Here("farm.json"));
        Assert.Equal(ExitCode.Done, again.Code);
        Assert.Empty(again.Error);
    }

    [Fact]
    public async Task A_document_that_is_there_is_not_replaced_unasked()
    {
        await File.WriteAllTextAsync(Here("farm.json"), "mine");
        (await AsksAsync("import", "fields", Example("boundaries.geojson"), "--out", Here("farm.json"))).Refused();
        Assert.Equal("mine", await File.ReadAllTextAsync(Here("farm.json")));
        Assert.Equal(ExitCode.Done, (await AsksAsync("import", "fields", Example("boundaries.geojson"), "--out", Here("farm.json"), "--replace")).Code);
    }

    [Fact]
    public async Task A_broken_boundary_stops_the_writing_until_the_good_ones_are_asked_for()
    {
        const string Good = """{"type":"Feature","properties":{"code":"N4"},"geometry":{"type":"Polygon","coordinates":[[[-122,39],[-121.99,39],[-121.99,39.01],[-122,39.01],[-122,39]]]}}""";
        var bow = Good.Replace("[-121.99,39],[-121.99,39.01]", "[-121.99,39.01],[-121.99,39]", StringComparison.Ordinal).Replace("N4", "N5", StringComparison.Ordinal);
        await File.WriteAllTextAsync(Here("map.geojson"), """{"type":"FeatureCollection","features":[""" + Good + "," + bow + "]}");
        var said = (await AsksAsync("import", "fields", Here("map.geojson"), "--out", Here("farm.json"))).Refused();
        Assert.Contains("LAND-108", said.Error, StringComparison.Ordinal);
        Assert.EndsWith("Nothing was written. 1 boundaries are good: --take-good takes those.\n", said.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Here("farm.json")));

        var taken = await AsksAsync("import", "fields", Here("map.geojson"), "--out", Here("farm.json"), "--take-good", "--checks", "7", "--rate", "160");
        Assert.Equal(ExitCode.Done, taken.Code);
        // 237.62 ac × (1 − 0.028 − 0.004 × 7)
        Assert.Contains("1 fields, gross 237.6 ac, net 224.3 ac.", taken.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_folder_that_is_not_there_is_a_failure_of_the_world() =>
        Assert.Equal(ExitCode.WorldFailed, (await AsksAsync("import", "fields", Example("boundaries.geojson"), "--out", Path.Combine(Here("no-such"), "farm.json"))).Code);

    [Theory]
    [InlineData("--checks", "0")]
    [InlineData("--rate", "-5")]
    public async Task What_cannot_be_asked_is_refused(string option, string value) =>
        (await AsksAsync("import", "fields", Example("boundaries.geojson"), "--out", Here("farm.json"), option, value)).Refused();
}
