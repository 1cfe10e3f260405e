using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.Text;
using Watersown.Documents.Reckon;
using Watersown.Reckon;
using Watersown.Wording;

namespace Watersown.Cli.Verbs;

/// <summary>Any calculation of the desk, by hand.</summary>
internal static class ReckonVerb
{
    public static Command Create(Edge edge)
    {
        var name = new Argument<string?>("name") { Description = "The calculation; --list shows all.", Arity = ArgumentArity.ZeroOrOne };
        var words = new Argument<string[]>("key=value") { Description = "Its values; without any they are read as one JSON object from standard input.", Arity = ArgumentArity.ZeroOrMore };
        var json = new Option<bool>("--json") { Description = "Answer in JSON." };
        var list = new Option<bool>("--list") { Description = "Show every calculation." };
        var language = new Option<string>("--lang") { Description = "Language of problems.", DefaultValueFactory = _ => "en" };
        language.AcceptOnlyFromAmong("en", "es");
        var command = new Command("reckon", "Work out one calculation alone, and show its working.") { name, words, json, list, language };
        command.SetAction((parsed, cancel) => RunAsync(edge, new Asked(
            parsed.GetValue(name),
            parsed.GetValue(words) ?? [],
            parsed.GetValue(json),
            parsed.GetValue(list),
            parsed.GetValue(language) == "es" ? Language.Spanish : Language.English), cancel));
        command.Options.Add(new HelpOption { Action = new Help(edge, name, language) });
        return command;
    }

    private static async Task<int> RunAsync(Edge edge, Asked asked, CancellationToken cancel)
    {
        if (asked.List || asked.Name is null)
        {
            await edge.Out.WriteLineAsync(asked.Json ? ReckonAnswer.ListToJson(Reckonings.All) : ReckonText.List(Reckonings.All));
            return ExitCode.Done;
        }

        if (Reckonings.Find(asked.Name) is not { } reckoning) return await RefuseAsync(edge, [NoSuchName(asked.Name)], asked.Language);
        // Whoever types expects text; whoever pipes JSON in expects JSON out.
        var typed = asked.Words.Length > 0 || edge.InIsTerminal;
        var given = typed ? ReckonRequest.FromWords(asked.Words, reckoning) : await ReadAsync(edge, reckoning, cancel);
        var outcome = given.Then(reckoning.Run);
        if (outcome.IsRefused || outcome.Refusals.Any()) return await RefuseAsync(edge, OnceEach(given.Problems, outcome.Problems), asked.Language);
        await edge.Out.WriteLineAsync(typed && !asked.Json ? ReckonText.Answer(reckoning, outcome.Value) : ReckonAnswer.ToJson(reckoning, outcome.Value));
        return ExitCode.Done;
    }

    private static async Task<Outcome<Datum.Table>> ReadAsync(Edge edge, Reckoning reckoning, CancellationToken cancel)
    {
        var text = new StringBuilder();
        var piece = new char[8192];
        try
        {
            while (text.Length <= ReckonRequest.LengthMost && await edge.In.ReadAsync(piece, cancel) is var count and > 0)
                text.Append(piece, 0, count);
        }
        catch (DecoderFallbackException)
        {
            return Outcome<Datum.Table>.Refuse(RequestProblems.NotUtf8.At(string.Empty));
        }

        return ReckonRequest.FromJson(text.ToString(), reckoning);
    }

    /// <summary>A value that could not be read is told as that, and not once more as a value of the wrong sort.</summary>
    private static ImmutableArray<Problem> OnceEach(ImmutableArray<Problem> reading, ImmutableArray<Problem> all) =>
        [.. all.Where(p => p.Where.Length == 0 || reading.Contains(p) || !reading.Any(r => r.Where == p.Where))];

    private static Problem NoSuchName(string name) => ReckonProblems.UnknownName.At(name,
        ("nearest", Nearest.Of(name, Reckonings.All.Select(r => r.Name)) ?? string.Join(", ", Reckonings.All.Select(r => r.Name))));

    private static async Task<int> RefuseAsync(Edge edge, ImmutableArray<Problem> problems, Language language)
    {
        foreach (var line in problems.Select(p => ProblemLine.Of(p, language)).Distinct(StringComparer.Ordinal))
            await edge.Error.WriteLineAsync(line);
        return ExitCode.ProblemsInInput;
    }

    private sealed record Asked(string? Name, string[] Words, bool Json, bool List, Language Language);

    /// <summary>With a name, the calculation documents itself; without one, the verb does.</summary>
    private sealed class Help(Edge edge, Argument<string?> name, Option<string> language) : AsynchronousCommandLineAction
    {
        public override async Task<int> InvokeAsync(ParseResult parseResult, CancellationToken cancellationToken = default)
        {
            if (parseResult.GetValue(name) is not { } wanted) return new HelpAction().Invoke(parseResult);
            if (Reckonings.Find(wanted) is not { } reckoning)
                return await RefuseAsync(edge, [NoSuchName(wanted)], parseResult.GetValue(language) == "es" ? Language.Spanish : Language.English);
            await edge.Out.WriteLineAsync(ReckonText.Help(reckoning));
            return ExitCode.Done;
        }
    }
}
