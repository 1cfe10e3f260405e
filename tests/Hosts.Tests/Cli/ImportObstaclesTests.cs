using Watersown.Cli;
using static Watersown.Hosts.Asking;

namespace Watersown.Hosts;

public sealed class ImportObstaclesTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("watersown");

    private static string Example(string file) => Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", file);

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public async Task Obstacles_near_the_farm_are_listed_with_the_day_of_the_file_and_the_caution()
    {
        var to = Path.Combine(folder.FullName, "farm.json");
        var said = await AsksAsync("import", "obstacles", Example("farm.json"), Example("obstacles.dat"), "--out", to);
        Assert.Equal(ExitCode.Done, said.Code);
        Assert.Contains("06-900001", said.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("06-900005", said.Out, StringComparison.Ordinal);
        Assert.Contains("5 lines read; 4 near the fields", said.Out, StringComparison.Ordinal);
        Assert.Contains("2026-04-16 does not list everything", said.Out, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, (await AsksAsync("farm", "check", to)).Code);
    }

    [Fact]
    public async Task A_distance_that_cannot_be_is_refused_and_nothing_is_written()
    {
        var to = Path.Combine(folder.FullName, "farm.json");
        Assert.NotEqual(ExitCode.Done, (await AsksAsync("import", "obstacles", Example("farm.json"), Example("obstacles.dat"), "--within-mi", "0", "--out", to)).Code);
        Assert.False(File.Exists(to));
    }
}
