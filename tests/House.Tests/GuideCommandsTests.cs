using Watersown.Cli;
using Watersown.Reckon;

namespace Watersown.HouseRules;

public sealed class GuideCommandsTests
{
    private static readonly ImmutableArray<TextFile> Guide = [.. SourceTree.Files.Where(f => f.Path == "README.md" || f.Path.StartsWith("docs/guide/", StringComparison.Ordinal))];

    [Fact]
    public async Task Every_command_of_the_guide_is_one_that_the_desk_knows() => Breach.None(await UnknownAsync(Guide));

    [Fact]
    public async Task Planted_commands_that_nobody_knows_are_reported()
    {
        var found = await UnknownAsync([new TextFile("docs/guide/planted.md", "    script/watersown fly-now\n    script/watersown reckon box-flw a=1\n    script/watersown reckon aqua n_lb_ac=140\n    script/watersown reckon --list\n    script/watersown desk --opne\ntext: script/watersown nothing\n")]);
        Breach.Found("docs/guide/planted.md:1: there is no verb fly-now", found);
        Breach.Found("docs/guide/planted.md:2: there is no reckoning box-flw", found);
        Breach.Found("docs/guide/planted.md:3: ended with code 2", found);
        Breach.Found("docs/guide/planted.md:5: HOST-001", found);
        Assert.Equal(4, found.Count);
    }

    [Fact]
    public void A_guide_page_has_a_command_that_runs() =>
        Assert.True(Guide.Where(f => f.Path.StartsWith("docs/guide/", StringComparison.Ordinal)).Sum(f => GuideCommands.In(f).Count()) >= 8);

    [Fact]
    public void A_command_line_is_taken_apart_as_a_shell_does() =>
        Assert.Equal("reckon/blend/a={\"n\":1, \"b\":2}/c=d e/f", string.Join('/', GuideCommands.Words("reckon blend  a='{\"n\":1, \"b\":2}' c=\"d e\" f | head -3")));

    /// <summary>Verbs and reckonings that do not exist; reckonings are run, for they need no files.</summary>
    private static async Task<List<string>> UnknownAsync(IEnumerable<TextFile> documents)
    {
        var found = new List<string>();
        var verbs = await VerbsAsync();
        foreach (var (where, words) in documents.SelectMany(GuideCommands.In).Where(c => c.Words.Length > 0 && !c.Words[0].StartsWith('-')))
        {
            if (words[0] == "desk")
            {
                // The desk is a program of its own, started by the same command.
                found.AddRange(Web.OptionReading.Read([.. words.Skip(1)]).Problems.Select(p => where + ": " + Wording.Say.Problem(p, Wording.Language.English)));
                continue;
            }

            if (!verbs.Contains(words[0]))
            {
                found.Add(where + ": there is no verb " + words[0]);
                continue;
            }

            if (words[0] != "reckon" || words.Length < 2 || words[1].StartsWith('-')) continue;
            if (Reckonings.Find(words[1]) is null) found.Add(where + ": there is no reckoning " + words[1]);
            else if (words.Skip(2).Any(w => w.Contains('=', StringComparison.Ordinal)) && await CodeOfAsync([.. words]) is var code && code != ExitCode.Done) found.Add(where + ": ended with code " + code);
        }

        return found;
    }

    /// <summary>The verbs that the desk names when asked for help.</summary>
    private static async Task<HashSet<string>> VerbsAsync()
    {
        using var output = new StringWriter();
        using var input = new StringReader(string.Empty);
        await Desk.RunAsync(["--help"], new Edge(output, output, input, TimeProvider.System));
        return [.. output.ToString().Split('\n').SkipWhile(l => !l.StartsWith("Commands:", StringComparison.Ordinal)).Skip(1)
            .Select(l => l.Trim().Split(' ')[0]).Where(w => w.Length > 0)];
    }

    private static async Task<int> CodeOfAsync(params string[] words)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        using var input = new StringReader(string.Empty);
        return await Desk.RunAsync(words, new Edge(output, error, input, TimeProvider.System));
    }
}
