using System.CommandLine;
using Watersown.Wording;

namespace Watersown.Cli;

/// <summary>The language that problems are told in.</summary>
internal static class LanguageOption
{
    public static Option<string> Create()
    {
        var language = new Option<string>("--lang") { Description = "Language of problems.", DefaultValueFactory = _ => "en" };
        language.AcceptOnlyFromAmong("en", "es");
        return language;
    }

    public static Language Of(ParseResult parsed, Option<string> option) => parsed.GetValue(option) == "es" ? Language.Spanish : Language.English;

    /// <summary>Every problem on a line of the error stream.</summary>
    public static async Task TellAsync(Edge edge, IEnumerable<Problem> problems, Language language)
    {
        foreach (var line in problems.Select(p => ProblemLine.Of(p, language)).Distinct(StringComparer.Ordinal)) await edge.Error.WriteLineAsync(line);
    }
}
