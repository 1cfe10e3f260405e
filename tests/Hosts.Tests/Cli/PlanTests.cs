using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Watersown.Cli;
using static Watersown.Hosts.Asking;

namespace Watersown.Hosts;

public sealed partial class PlanTests
{
    private static string Marrowfen => Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json");

    [Fact]
    public async Task A_plan_is_a_table_a_grower_can_read()
    {
        var said = await AsksAsync("plan", Marrowfen, "--repeatable", "--seconds", "0.3", "--quiet");
        Assert.Equal(ExitCode.Done, said.Code);
        Golden.Matches("Plan/marrowfen.txt", Times().Replace(said.Out, "Found in some time."));
    }

    [Fact]
    public async Task Progress_stands_on_the_error_stream_with_plan_bound_and_gap()
    {
        var said = await AsksAsync("plan", Marrowfen, "--seconds", "1", "--json");
        Assert.Matches(@"s  plan \$[\d,]+  no plan below \$[\d,]+  gap [\d.]+ %", said.Error);
        var plan = JsonNode.Parse(said.Out)!;
        Assert.Equal(22, plan["tasks"]!.AsArray().Count(t => t!["task"]!.GetValue<string>() == "sow"));
    }

    [Fact]
    public async Task One_field_shows_the_working_of_every_figure()
    {
        var said = await AsksAsync("plan", Marrowfen, "--seconds", "0.3", "--quiet", "--field", "N6");
        Assert.Contains("(V / m) ln((S - m A0) / (S - m A1))", said.Out, StringComparison.Ordinal);
        Assert.Contains("lb dry", said.Out, StringComparison.Ordinal);
        Assert.Contains("lb soaked", said.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_field_that_is_not_there_is_refused_with_those_that_are()
    {
        var said = (await AsksAsync("plan", Marrowfen, "--field", "Z9")).Refused();
        Assert.Contains("N1, N2", said.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--seconds", "0")]
    [InlineData("--seconds", "NaN")]
    [InlineData("--delay", "never")]
    [InlineData("--seed", "x")]
    public async Task An_option_that_makes_no_sense_is_refused(string option, string value) =>
        (await AsksAsync("plan", Marrowfen, option, value)).Refused();

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("[1,2]")]
    [InlineData("{\"watersown_farm\": 99}")]
    [InlineData("{\"watersown_farm\": 1, \"name\": \"x\", \"fields\": [{\"name\": \"a\", \"net_ac\": -3, \"rate_dry_lb_ac\": 150}]}")]
    public async Task A_farm_that_is_no_farm_is_refused(string text)
    {
        var file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".json");
        await File.WriteAllTextAsync(file, text);
        try
        {
            (await AsksAsync("plan", file)).Refused();
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public async Task A_file_that_is_not_there_is_refused() => (await AsksAsync("plan", "/no/such/farm.json")).Refused();

    [GeneratedRegex(@"Found in [\d.]+ s\.", RegexOptions.NonBacktracking)]
    private static partial Regex Times();
}
