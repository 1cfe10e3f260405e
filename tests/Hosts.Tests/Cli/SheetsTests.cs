using Watersown.Cli;

namespace Watersown.Hosts;

public sealed class SheetsTests : IDisposable
{
    private static readonly string Farm = Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json");

    private readonly string place = Directory.CreateTempSubdirectory("watersown-verb-").FullName;

    private string Folder => Path.Combine(place, "sheets");

    public void Dispose() => Directory.Delete(place, recursive: true);

    [Fact]
    public async Task The_whole_farm_is_printed_from_one_command()
    {
        var said = await Asking.AsksAsync("sheets", Farm, "--out", Folder, "--seconds", "1");
        Assert.Equal((ExitCode.Done, string.Empty), (said.Code, said.Error));
        Assert.Contains("plan no. 14: ", said.Out, StringComparison.Ordinal);
        foreach (var file in new[] { "index.html", "season.ics", "texts.txt", "texts.json", "day-2026-05-08-en.pdf", "water-2026-05-08-lucero-quintabar-es.html" })
        {
            Assert.True(File.Exists(Path.Combine(Folder, file)), file);
            Assert.Contains(file, said.Out, StringComparison.Ordinal);
        }

        Assert.True(Directory.GetFiles(Folder, "flight-*.pdf").Length >= 20);
    }

    [Fact]
    public async Task One_person_gets_his_own_sheet_alone()
    {
        var said = await Asking.AsksAsync("sheets", Farm, "--out", Folder, "--person", "Lucero Quintabar", "--only", "html", "--seconds", "0.5");
        Assert.Equal(ExitCode.Done, said.Code);
        Assert.Equal(["index.html", "water-2026-05-08-lucero-quintabar-es.html"], Directory.GetFiles(Folder, "*.html").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task A_saved_plan_is_printed_without_a_new_search()
    {
        var saved = Path.Combine(place, "plan.json");
        var plan = await Asking.AsksAsync("plan", Farm, "--json", "--quiet", "--seconds", "0.5");
        await File.WriteAllTextAsync(saved, plan.Out, TestContext.Current.CancellationToken);
        var said = await Asking.AsksAsync("sheets", Farm, "--out", Folder, "--plan", saved, "--only", "texts");
        Assert.Equal((ExitCode.Done, string.Empty), (said.Code, said.Error));
        Assert.Contains("plan no. 14: ", said.Out, StringComparison.Ordinal);
        var refused = (await Asking.AsksAsync("sheets", Farm, "--out", Folder, "--plan", Farm)).Refused();
        Assert.Contains("DOC-016", Assert.Single(refused.Faults), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("SHEET-001", "--field", "ZZ")]
    [InlineData("SHEET-003", "--day", "2027-01-01")]
    [InlineData("SHEET-004", "--person", "Nobody")]
    [InlineData("--day 'tomorrow' is not a day", "--day", "tomorrow")]
    [InlineData("--seconds must lie between", "--seconds", "0")]
    [InlineData("--only", "--only", "fax")]
    public async Task What_cannot_be_printed_is_told_on_one_line_before_any_plan_is_searched_for(string told, params string[] asked)
    {
        var said = (await Asking.AsksAsync(["sheets", Farm, "--out", Folder, .. asked])).Refused();
        Assert.Contains(told, Assert.Single(said.Faults), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Folder));
    }

    [Fact]
    public async Task A_farm_that_cannot_be_read_prints_nothing()
    {
        (await Asking.AsksAsync("sheets", Path.Combine(place, "none.json"), "--out", Folder)).Refused();
        Assert.False(Directory.Exists(Folder));
    }

    [Fact]
    public async Task A_folder_of_other_files_is_left_alone()
    {
        File.WriteAllText(Path.Combine(place, "letter.txt"), "mine");
        var said = (await Asking.AsksAsync("sheets", Farm, "--out", place)).Refused();
        Assert.Contains("SHEET-006", said.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(Path.Combine(place, "letter.txt")));
    }
}
