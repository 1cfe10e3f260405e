using System.Globalization;
using System.Text;
using System.Text.Json;
using Watersown.Cli;
using static Watersown.Hosts.Asking;

namespace Watersown.Hosts;

public sealed class FarmTests : IDisposable
{
    private static readonly string marrowfen = Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json");

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("watersown-cli-");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public async Task A_farm_is_shown_as_a_table_with_its_totals()
    {
        var said = await AsksAsync("farm", "show", marrowfen);
        Assert.Equal(ExitCode.Done, said.Code);
        Golden.Matches("Land/farm-show.txt", said.Out);
    }

    [Fact]
    public async Task A_farm_is_shown_as_a_document_that_opens_again()
    {
        var path = Path.Combine(folder.FullName, "again.json");
        var shown = await AsksAsync("farm", "show", marrowfen, "--json");
        await File.WriteAllTextAsync(path, shown.Out);
        var again = await AsksAsync("farm", "show", path, "--json");
        Assert.Equal((ExitCode.Done, shown.Out), (again.Code, again.Out));
    }

    [Fact]
    public async Task Checking_a_farm_says_everything_wrong_and_nothing_else()
    {
        var path = Path.Combine(folder.FullName, "farm.json");
        await File.WriteAllTextAsync(path, """{ "watersown_farm": 1, "name": "Small", "time_zone": "America/Los_Angeles", "fields": [ { "name": "Two Gates", "net_ac": -1 }, { "name": "Two Gates", "net_ac": 5, "rate_dry_lb_ac": 150, "soil": "HC" } ] }""");
        var said = (await AsksAsync("farm", "check", path)).Refused();
        Assert.Equal(5, said.Faults.Length);
        Assert.Contains("LIMIT-001 · fields[0].net_ac (Two Gates): -1 ac must be above 0 ac. Give a value above 0 ac.", said.Faults);
        var spanish = (await AsksAsync("farm", "check", path, "--lang", "es")).Refused();
        Assert.Contains("LIMIT-001 · fields[0].net_ac (Two Gates): -1 ac debe ser mayor que 0 ac. Escriba un valor mayor que 0 ac.", spanish.Faults);
    }

    [Fact]
    public async Task A_farm_that_is_well_gets_its_totals()
    {
        var said = await AsksAsync("farm", "check", marrowfen);
        Assert.Equal(ExitCode.Done, said.Code);
        Assert.Contains("28 fields · 2,900 ac net sown · 3,053.1 ac gross\n442,930 lb dry seed · 553,662.5 lb soaked at 1.25\n", said.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_pasted_list_becomes_a_farm_document_that_can_be_used_at_once()
    {
        var path = Path.Combine(folder.FullName, "farm.json");
        var said = await AsksAsync(MarrowfenList(), ["import", "list", "-", "--out", path, "--farm", "Marrowfen Farm"]);
        Assert.Equal((ExitCode.Done, string.Empty), (said.Code, said.Error));
        Golden.Matches("Land/import-list.txt", said.Out.Replace(path, "farm.json", StringComparison.Ordinal));
        var checkedAgain = await AsksAsync("farm", "check", path);
        Assert.Equal(ExitCode.Done, checkedAgain.Code);
        Assert.Contains("28 fields · 2,900 ac net sown", checkedAgain.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("north-block.csv", "8 fields · 863 ac net\n131,115 lb dry seed")]
    [InlineData("casa.txt", "6 fields · 548 ac net\n86,545 lb dry seed")]
    public async Task The_lists_of_the_guide_are_read_without_a_word(string list, string totals)
    {
        var said = await AsksAsync("import", "list", Path.Combine(ReferenceFile.RepositoryRoot, "examples", "lists", list));
        Assert.Equal((ExitCode.Done, string.Empty), (said.Code, said.Error));
        Assert.Contains(totals, said.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_is_written_when_the_list_is_refused()
    {
        var path = Path.Combine(folder.FullName, "farm.json");
        var said = (await AsksAsync("Field,Acres\nTin Barn,x\n", ["import", "list", "-", "--out", path])).Refused();
        Assert.Equal("LIST-010 · line 2, Tin Barn: 'x' is not a number of net acres. Write a plain number such as 142.", Assert.Single(said.Faults));
        Assert.Empty(folder.GetFiles());
    }

    [Fact]
    public async Task A_farm_document_that_is_there_is_kept_unless_it_may_be_replaced()
    {
        var path = Path.Combine(folder.FullName, "farm.json");
        await File.WriteAllTextAsync(path, "mine");
        const string list = "Field,Acres,Rate\nTin Barn,96,155\n";
        var said = (await AsksAsync(list, ["import", "list", "-", "--out", path])).Refused();
        Assert.StartsWith("FILE-004", said.Error, StringComparison.Ordinal);
        Assert.Equal("mine", await File.ReadAllTextAsync(path));
        Assert.Equal(ExitCode.Done, (await AsksAsync(list, ["import", "list", "-", "--out", path, "--replace"])).Code);
        Assert.Equal("Tin Barn", JsonDocument.Parse(await File.ReadAllTextAsync(path)).RootElement.GetProperty("fields")[0].GetProperty("name").GetString());
        Assert.Single(folder.GetFiles());
    }

    [Fact]
    public async Task A_folder_that_is_not_there_is_a_failure_of_the_world()
    {
        var said = await AsksAsync("Field,Acres,Rate\nTin Barn,96,155\n", ["import", "list", "-", "--out", Path.Combine(folder.FullName, "nowhere", "farm.json")]);
        Assert.Equal((ExitCode.WorldFailed, string.Empty), (said.Code, said.Out));
        Assert.StartsWith("FILE-005", said.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--rate", "0")]
    [InlineData("--rate", "NaN")]
    [InlineData("--now", "soon")]
    [InlineData("--zone", "Ossel")]
    public async Task A_wrong_option_is_refused(string option, string value) =>
        (await AsksAsync("Field,Acres,Rate\nTin Barn,96,155\n", ["import", "list", "-", option, value])).Refused();

    [Fact]
    public async Task A_list_in_a_file_of_another_encoding_is_read_and_one_that_is_missing_is_told()
    {
        var path = Path.Combine(folder.FullName, "list.csv");
        await File.WriteAllTextAsync(path, "Lote;Acres;Dosis\r\nÑandú;40;150\r\n", Encoding.Unicode);
        var said = await AsksAsync("import", "list", path);
        Assert.Contains("Ñandú", said.Out, StringComparison.Ordinal);
        Assert.StartsWith("FILE-001", (await AsksAsync("import", "list", path + "x")).Refused().Error, StringComparison.Ordinal);
    }

    private static string MarrowfenList()
    {
        var text = new StringBuilder("Feild\tAcers\tChekcs\tRate\n");
        foreach (var field in JsonDocument.Parse(File.ReadAllText(marrowfen)).RootElement.GetProperty("fields").EnumerateArray())
            text.Append(CultureInfo.InvariantCulture, $"{field.GetProperty("name").GetString()}\t{field.GetProperty("net_ac")}\t{field.GetProperty("checks")}\t{field.GetProperty("rate_dry_lb_ac")}\n");
        return text.Append("Total\t2,900\n").ToString();
    }
}
