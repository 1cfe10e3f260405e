using Watersown.Cli;
using Watersown.Records.Database;
using static Watersown.Hosts.Asking;

namespace Watersown.Hosts;

/// <summary>The verbs that carry a whole farm from book to book.</summary>
public sealed class WholeFarmTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("watersown-whole-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string At(string name) => Path.Combine(folder, name);

    [Fact]
    public async Task A_book_goes_out_and_comes_in()
    {
        await FillAsync();
        var said = await AsksAsync("export", At("farm.zip"), "--book", At("one.book"));
        Assert.Equal((ExitCode.Done, string.Empty), (said.Code, said.Error));
        Assert.Equal($"part                  count\nversions of the farm      1\nmarks                     0\nplans                     0\nphotos                    0\npeople                    1\nWritten to {At("farm.zip")} and read again.\n", said.Out);
        var taken = await AsksAsync("import", "farm", At("farm.zip"), "--book", At("two.book"));
        Assert.Equal((ExitCode.Done, string.Empty), (taken.Code, taken.Error));
        Assert.Contains("people                    1\nWhat the book had already was left as it is.\nPeople come without their passwords", taken.Out, StringComparison.Ordinal);
        await using var book = (await Book.OpenAsync(At("two.book"))).Value;
        Assert.Equal(1, (await book.LatestFarmAsync())!.Version);
        Assert.Contains("FILE-004", (await AsksAsync("export", At("farm.zip"), "--book", At("one.book"))).Refused().Error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, (await AsksAsync("export", At("farm.zip"), "--book", At("one.book"), "--replace")).Code);
    }

    [Fact]
    public async Task A_book_that_is_not_there_is_not_made()
    {
        Assert.Contains("FILE-001", (await AsksAsync("export", At("farm.zip"), "--book", At("none.book"))).Refused().Error, StringComparison.Ordinal);
        Assert.Contains("FILE-001", (await AsksAsync("import", "farm", At("none.zip"), "--book", At("none.book"))).Refused().Error, StringComparison.Ordinal);
        Assert.Contains("no existe ese archivo", (await AsksAsync("import", "farm", At("none.zip"), "--book", At("none.book"), "--lang", "es")).Refused().Error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(folder));
    }

    [Fact]
    public async Task A_folder_that_is_not_there_is_the_worlds_failure()
    {
        await FillAsync();
        var said = await AsksAsync("export", At("no/such/farm.zip"), "--book", At("one.book"));
        Assert.Equal(ExitCode.WorldFailed, said.Code);
        Assert.Contains("FILE-005", said.Error, StringComparison.Ordinal);
    }

    private async Task FillAsync()
    {
        await using var book = (await Book.OpenAsync(At("one.book"))).Value;
        await book.SaveFarmAsync(await File.ReadAllBytesAsync(Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json")), 0, "Odalie Marrowfen", "first");
        await book.AddAccountAsync("Odalie Marrowfen", Role.Owner, "a secret");
    }
}
