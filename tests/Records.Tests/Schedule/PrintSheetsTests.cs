using System.Text.Json;
using Watersown.Records.Files.Sheets;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Records.Schedule;

public sealed class PrintSheetsTests : IDisposable
{
    private readonly string place = Directory.CreateTempSubdirectory("watersown-sheets-").FullName;

    private string Folder => Path.Combine(place, "out");

    public void Dispose() => Directory.Delete(place, recursive: true);

    [Fact]
    public void Everything_is_printed_and_listed()
    {
        var printed = Print(new SheetChoice()).Value;
        var files = Directory.GetFiles(Folder).Select(f => Path.GetFileName(f)).ToList();
        Assert.Equal(printed.Files.Append(".watersown-sheets").Order(StringComparer.Ordinal), files.Order(StringComparer.Ordinal));
        Assert.Equal(31, printed.Sheets);
        var index = File.ReadAllText(Path.Combine(Folder, "index.html"));
        foreach (var file in printed.Files.Where(f => f != "index.html")) Assert.Contains($"href=\"{file}\"", index, StringComparison.Ordinal);
        Assert.Equal([Folder], Directory.GetFileSystemEntries(place)); // nothing left beside it
    }

    [Fact]
    public void Texts_are_told_twice_once_for_people_and_once_for_programs()
    {
        Print(new SheetChoice());
        using var json = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Folder, "texts.json")));
        var text = File.ReadAllText(Path.Combine(Folder, "texts.txt"));
        Assert.Equal(14, json.RootElement.GetProperty("plan").GetInt32());
        foreach (var one in json.RootElement.GetProperty("texts").EnumerateArray())
        {
            Assert.InRange(one.GetProperty("length").GetInt32(), 1, 160);
            Assert.Contains(one.GetProperty("text").GetString()!, text, StringComparison.Ordinal);
            Assert.Contains(one.GetProperty("to").GetString()!, text, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("555", text + json.RootElement.GetRawText(), StringComparison.Ordinal); // no telephone numbers in a file that is passed on
    }

    [Theory]
    [InlineData(SheetForms.Html, ".html")]
    [InlineData(SheetForms.Pdf, ".pdf")]
    public void One_form_can_be_printed_alone(SheetForms forms, string ending)
    {
        var printed = PrintSheets.Run(PlannedMorning.Plan(), Folder, new SheetChoice { Field = "S2" }, forms).Value;
        Assert.Equal(["flight-2026-05-09-s2-en" + ending, "index.html"], printed.Files);
    }

    [Fact]
    public void The_calendar_can_be_printed_alone() =>
        Assert.Equal(["season.ics", "index.html"], PrintSheets.Run(PlannedMorning.Plan(), Folder, new SheetChoice(), SheetForms.Calendar).Value.Files);

    [Fact]
    public void A_new_printing_takes_the_place_of_the_old_one_and_no_old_sheet_stays()
    {
        Print(new SheetChoice());
        Print(new SheetChoice { Field = "S2" });
        Assert.DoesNotContain(Directory.GetFiles(Folder), f => f.Contains("r4", StringComparison.Ordinal));
        Assert.Contains(Directory.GetFiles(Folder), f => f.EndsWith("flight-2026-05-09-s2-en.pdf", StringComparison.Ordinal));
    }

    [Fact]
    public void A_folder_with_files_of_somebody_else_is_left_alone()
    {
        Directory.CreateDirectory(Folder);
        File.WriteAllText(Path.Combine(Folder, "letter.txt"), "mine");
        var refused = Print(new SheetChoice());
        Assert.Equal(SheetsProblems.FolderHasOtherFiles, Assert.Single(refused.Problems).Kind);
        Assert.Contains("letter.txt", Say.Problem(refused.Problems[0], Language.Spanish), StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(Path.Combine(Folder, "letter.txt")));
        Assert.Single(Directory.GetFiles(Folder));
    }

    [Fact]
    public void A_file_that_somebody_put_among_the_sheets_keeps_them_from_being_replaced()
    {
        Print(new SheetChoice { Field = "S2" });
        File.WriteAllText(Path.Combine(Folder, "notes.txt"), "gate 14");
        Assert.Equal(SheetsProblems.FolderHasOtherFiles, Assert.Single(Print(new SheetChoice()).Problems).Kind);
        Assert.True(File.Exists(Path.Combine(Folder, "notes.txt")));
    }

    [Fact]
    public void A_file_in_the_way_is_told()
    {
        File.WriteAllText(Folder, "a file");
        Assert.Equal(SheetsProblems.FolderIsAFile, Assert.Single(Print(new SheetChoice()).Problems).Kind);
        Assert.Equal("a file", File.ReadAllText(Folder));
    }

    [Fact]
    public void A_wrong_choice_writes_nothing_and_is_told_together_with_a_wrong_folder()
    {
        File.WriteAllText(Folder, "a file");
        Assert.Equal([SheetsProblems.UnknownField, SheetsProblems.FolderIsAFile], Print(new SheetChoice { Field = "ZZ" }).Problems.Select(p => p.Kind));
        Assert.Equal([SheetsProblems.UnknownField, SheetsProblems.FolderIsAFile], PrintSheets.Faults(PlannedMorning.State(), Folder, new SheetChoice { Field = "ZZ" }).Select(p => p.Kind));
    }

    [Fact]
    public void A_disk_that_fails_half_way_leaves_the_old_sheets_whole()
    {
        Print(new SheetChoice { Field = "S2" });
        var before = Directory.GetFiles(Folder).Order(StringComparer.Ordinal).ToList();
        Assert.ThrowsAny<IOException>(() => SheetFolder.Replace(Folder, [("one.txt", new byte[1]), ("no/such/place.txt", new byte[1])]));
        Assert.Equal(before, Directory.GetFiles(Folder).Order(StringComparer.Ordinal));
        Assert.Single(Directory.GetFileSystemEntries(place));
    }

    private Outcome<Printed> Print(SheetChoice choice) => PrintSheets.Run(PlannedMorning.Plan(), Folder, choice);
}
