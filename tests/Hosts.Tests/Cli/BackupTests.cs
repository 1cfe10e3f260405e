using System.Text.RegularExpressions;
using Watersown.Cli;
using Watersown.Records.Database;
using static Watersown.Hosts.Asking;

namespace Watersown.Hosts;

/// <summary>The verbs that keep a book and bring it back.</summary>
public sealed partial class BackupTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("watersown-backup-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string BookFile => Path.Combine(folder, "farm.book");

    [Fact]
    public async Task A_copy_is_made_and_brought_back_and_the_book_before_is_kept()
    {
        await MarkAsync("first");
        var made = await AsksAsync("backup", "--book", BookFile);
        Assert.Equal((ExitCode.Done, string.Empty), (made.Code, made.Error));
        Assert.Contains("1 marks, 0 versions of the farm, 0 plans, 0 photos, 0 people. Checked.\n", made.Out, StringComparison.Ordinal);
        var copy = made.Out.Split('\n')[0];
        Assert.Equal(Path.Combine(folder, "backups"), Path.GetDirectoryName(copy));
        await MarkAsync("second");
        Assert.Contains("COPY-003", (await AsksAsync("restore", copy, "--book", BookFile)).Refused().Error, StringComparison.Ordinal);
        await using (var open = (await Book.OpenThereAsync(BookFile)).Value)
            Assert.Contains("COPY-004", (await AsksAsync("restore", copy, "--book", BookFile, "--replace")).Refused().Error, StringComparison.Ordinal);
        var restored = await AsksAsync("restore", copy, "--book", BookFile, "--replace");
        Assert.Equal((ExitCode.Done, string.Empty), (restored.Code, restored.Error));
        Assert.Matches(Kept(), restored.Out);
        var info = await AsksAsync("book", "info", "--book", BookFile);
        Assert.Equal((ExitCode.Done, string.Empty), (info.Code, info.Error));
        foreach (var said in new[] { "SQLite", "1 marks", "1 in " + Path.Combine(folder, "backups"), "All of it is as it was kept." }) Assert.Contains(said, info.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_copy_stands_where_it_was_wished()
    {
        await MarkAsync("first");
        var to = Path.Combine(folder, "stick", "farm");
        Assert.StartsWith(to, (await AsksAsync("backup", "--book", BookFile, "--to", to)).Out, StringComparison.Ordinal);
        Assert.Contains("FILE-001", (await AsksAsync("backup", "--book", Path.Combine(folder, "none.book"))).Refused().Error, StringComparison.Ordinal);
        Assert.Contains("FILE-001", (await AsksAsync("book", "info", "--book", Path.Combine(folder, "none.book"))).Refused().Error, StringComparison.Ordinal);
        Assert.Contains("FILE-001", (await AsksAsync("restore", Path.Combine(folder, "none"), "--book", BookFile)).Refused().Error, StringComparison.Ordinal);
    }

    private async Task MarkAsync(string text)
    {
        await using var book = (await Book.OpenAsync(BookFile)).Value;
        await book.AppendMarksAsync([StoredMark.Read(System.Text.Encoding.UTF8.GetBytes(Web.RunningDesk.Mark(Web.RunningDesk.NewId(), fact: $$"""{"text":"{{text}}"}"""))).Value]);
    }

    [GeneratedRegex(@"The book before is kept as .*farm\.book\.before-\d{8}-\d{6}\.", RegexOptions.NonBacktracking)]
    private static partial Regex Kept();
}
