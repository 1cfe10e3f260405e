using System.Text.Json;
using Watersown.Cli;
using Watersown.Documents.Reckon;
using Watersown.Reckon;
using static Watersown.Hosts.Asking;

namespace Watersown.Hosts;

public sealed class ReckonTests
{
    private const string Seed = """{"dry_lb":15450,"moisture_before_pct":13,"moisture_after_pct":30}""";

    private static readonly string[] TypedSeed = ["reckon", "wet-weight", "dry_lb=15450", "moisture_before_pct=13", "moisture_after_pct=30"];

    [Fact]
    public async Task Typed_by_hand_it_answers_in_text_with_the_working()
    {
        var said = await AsksAsync(TypedSeed);
        Assert.Equal((ExitCode.Done, string.Empty), (said.Code, said.Error));
        Golden.Matches("Reckon/wet-weight.golden.txt", said.Out);
    }

    [Fact]
    public async Task Json_in_gives_json_out()
    {
        var said = await AsksAsync(Seed, ["reckon", "wet-weight"]);
        Assert.Equal((ExitCode.Done, string.Empty), (said.Code, said.Error));
        Golden.Matches("Reckon/wet-weight.golden.json", said.Out);
    }

    [Fact]
    public async Task The_same_values_give_the_same_json_either_way()
    {
        var piped = await AsksAsync(Seed, ["reckon", "wet-weight"]);
        var typed = await AsksAsync([.. TypedSeed, "--json"]);
        Assert.Equal(piped, typed);
    }

    [Fact]
    public async Task Numbers_in_json_keep_every_digit()
    {
        var said = await AsksAsync(Seed, ["reckon", "wet-weight"]);
        using var answer = JsonDocument.Parse(said.Out);
        // 15,450 × 87 ÷ 70, worked out by hand: 19,202 1/7.
        Assert.Equal(15450 * 87 / 70.0, answer.RootElement.GetProperty("result").GetProperty("wet_lb").GetDouble(), 1e-9);
    }

    [Fact]
    public async Task Every_reckoning_works_out_its_own_example_and_gives_the_results_it_promises()
    {
        Assert.NotEmpty(Reckonings.All);
        foreach (var reckoning in Reckonings.All)
        {
            var said = await AsksAsync(ReckonRequest.Example(reckoning), ["reckon", reckoning.Name]);
            Assert.True(said.Code == ExitCode.Done, reckoning.Name + ": " + said.Error);
            using var answer = JsonDocument.Parse(said.Out);
            Assert.Equal(reckoning.Name, answer.RootElement.GetProperty("name").GetString());
            Assert.Equal(reckoning.Results.Select(r => r.Key), answer.RootElement.GetProperty("result").EnumerateObject().Select(p => p.Name), StringComparer.Ordinal);
            Assert.NotEmpty(answer.RootElement.GetProperty("working").EnumerateArray());
            Assert.Equal(JsonValueKind.Array, answer.RootElement.GetProperty("cautions").ValueKind);
        }
    }

    [Fact]
    public async Task Every_reckoning_documents_itself()
    {
        foreach (var reckoning in Reckonings.All)
        {
            var said = await AsksAsync("reckon", reckoning.Name, "--help");
            Assert.Equal((ExitCode.Done, string.Empty), (said.Code, said.Error));
            Assert.All(reckoning.Inputs.Concat(reckoning.Results), k => Assert.Contains(k.Key, said.Out, StringComparison.Ordinal));
            Assert.Contains("Source: " + reckoning.Source, said.Out, StringComparison.Ordinal);
            Assert.Contains("watersown reckon " + reckoning.Name, said.Out, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task The_list_names_every_reckoning()
    {
        var said = await AsksAsync("reckon", "--list");
        Assert.Equal(ExitCode.Done, said.Code);
        Assert.All(Reckonings.All, r => Assert.Contains(r.Name, said.Out, StringComparison.Ordinal));
        var json = await AsksAsync("reckon", "--list", "--json");
        using var list = JsonDocument.Parse(json.Out);
        Assert.Equal(Reckonings.All.Select(r => r.Name), list.RootElement.EnumerateArray().Select(r => r.GetProperty("name").GetString()), StringComparer.Ordinal);
    }

    [Fact]
    public async Task A_name_spelled_wrong_brings_the_nearest_one()
    {
        var said = (await AsksAsync("reckon", "wet-wieght", "dry_lb=1")).Refused();
        Assert.Equal("RECKON-010 · wet-wieght: there is no reckoning of that name. Nearest: wet-weight. 'watersown reckon --list' shows all.", Assert.Single(said.Faults));
        Assert.Equal(said.Error, (await AsksAsync("reckon", "wet-wieght", "--help")).Refused().Error);
    }

    [Fact]
    public async Task Every_fault_is_told_at_once_on_a_line_of_its_own()
    {
        var said = (await AsksAsync("reckon", "wet-weight", "dry_lb=-3", "moisture_before_pct=wet", "swath_ft=50", "heavy")).Refused();
        Assert.Equal(
            [
                "JSON-009 · 'heavy' is not a key and a value. Write key=value, such as dry_lb=15450.",
                "RECKON-004 · dry_lb: -3 lb dry is below 0 lb dry, the least that can be. Give 0 lb dry or more.",
                "RECKON-003 · moisture_before_pct: 'wet' is not a number. Give a number.",
                "RECKON-001 · swath_ft: '50' was given for a key that wet-weight does not have. Its keys are dry_lb, moisture_before_pct, moisture_after_pct.",
                "RECKON-002 · moisture_after_pct: nothing was given for moisture after draining, wet basis (%). Give it a value.",
            ],
            said.Faults);
    }

    [Fact]
    public async Task Problems_are_told_in_spanish_to_who_reads_spanish()
    {
        var said = (await AsksAsync("reckon", "wet-weight", "dry_lb=-3", "moisture_before_pct=x", "--lang", "es")).Refused();
        Assert.Equal(
            [
                "RECKON-004 · dry_lb: -3 lb dry está por debajo de 0 lb dry, lo mínimo posible. Escriba 0 lb dry o más.",
                "RECKON-003 · moisture_before_pct: 'x' no es un número. Escriba un número.",
                "RECKON-002 · moisture_after_pct: no se dio nada para esta clave (%). Dele un valor.",
            ],
            said.Faults);
    }

    [Theory]
    [InlineData(".5", 0.5)]
    [InlineData("+5", 5.0)]
    [InlineData("-.5e0", null)]
    [InlineData("5.", 5.0)]
    [InlineData("1e3", 1000.0)]
    [InlineData("1,000", null)]
    [InlineData("NaN", null)]
    [InlineData("Infinity", null)]
    [InlineData("0x10", null)]
    [InlineData("", null)]
    public async Task A_typed_number_is_read_as_people_write_it(string typed, double? read)
    {
        var said = await AsksAsync("reckon", "wet-weight", "dry_lb=" + typed, "moisture_before_pct=0", "moisture_after_pct=50", "--json");
        if (read is null)
        {
            Assert.Contains("'" + typed + "' is not a number", Assert.Single(said.Refused().Faults), StringComparison.Ordinal);
            return;
        }

        using var answer = JsonDocument.Parse(said.Out);
        Assert.Equal(read.Value * 2, answer.RootElement.GetProperty("result").GetProperty("wet_lb").GetDouble(), 1e-9);
    }
}
