using Watersown.Cli;

namespace Watersown.Hosts;

public sealed class HandoutTests : IDisposable
{
    private static readonly string Farm = Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json");

    private readonly string place = Directory.CreateTempSubdirectory("watersown-verb-").FullName;

    private string Folder => Path.Combine(place, "handout");

    public void Dispose() => Directory.Delete(place, recursive: true);

    [Fact]
    public async Task Fields_are_written_in_every_open_format_with_the_cautions()
    {
        var said = await Asking.AsksAsync("handout", Farm, "--out", Folder, "--field", "N4", "--field", "N6");
        Assert.Equal((ExitCode.Done, string.Empty), (said.Code, said.Error));
        Assert.Equal([".watersown-sheets", "README.txt", "handout.geojson", "handout.gpx", "handout.kml", "shapefiles.zip", "taskdata.zip"],
            Directory.GetFiles(Folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
        Assert.Contains("The pilot decides", said.Out, StringComparison.Ordinal);
        var text = await File.ReadAllTextAsync(Path.Combine(Folder, "handout.geojson"), TestContext.Current.CancellationToken);
        Assert.Contains("\"N6\"", text, StringComparison.Ordinal);
        Assert.DoesNotContain("\"N5\"", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_field_that_is_not_there_and_a_folder_of_other_things_are_refused()
    {
        var unknown = (await Asking.AsksAsync("handout", Farm, "--out", Folder, "--field", "Z9")).Refused();
        Assert.Contains("SHEET-001", Assert.Single(unknown.Faults), StringComparison.Ordinal);
        Directory.CreateDirectory(Folder);
        await File.WriteAllTextAsync(Path.Combine(Folder, "mine.txt"), "mine", TestContext.Current.CancellationToken);
        var other = (await Asking.AsksAsync("handout", Farm, "--out", Folder)).Refused();
        Assert.Contains("SHEET-006", Assert.Single(other.Faults), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_field_with_no_edge_is_left_out_and_told_and_a_farm_with_none_is_refused()
    {
        var bare = Path.Combine(place, "farm.json");
        await File.WriteAllTextAsync(bare, (await File.ReadAllTextAsync(Farm, TestContext.Current.CancellationToken)).Replace("\"boundaries\": \"boundaries.geojson\",", string.Empty, StringComparison.Ordinal), TestContext.Current.CancellationToken);
        var none = (await Asking.AsksAsync("handout", bare, "--out", Folder, "--field", "N4")).Refused();
        Assert.Contains(none.Faults, f => f.Contains("SHEET-009", StringComparison.Ordinal));
        Assert.Contains(none.Faults, f => f.Contains("SHEET-008", StringComparison.Ordinal));
        Assert.False(Directory.Exists(Folder));
    }
}
