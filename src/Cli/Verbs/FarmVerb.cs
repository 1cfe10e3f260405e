using System.CommandLine;
using System.Text;
using Watersown.Documents.Farms;
using Watersown.Records.Land;
using Watersown.Schedule;

namespace Watersown.Cli.Verbs;

/// <summary>A farm document: what is wrong with it, and what stands in it.</summary>
internal static class FarmVerb
{
    public static Command Create(Edge edge) => new("farm", "Look at a farm document.") { Check(edge), Show(edge) };

    private static Command Check(Edge edge)
    {
        var (farm, language) = (File(), LanguageOption.Create());
        var command = new Command("check", "Say everything that is wrong or unlikely in it, and its totals.") { farm, language };
        command.SetAction((parsed, _) => OpenAsync(edge, parsed.GetValue(farm)!, parsed, language, state => FarmText.Totals(state)));
        return command;
    }

    private static Command Show(Edge edge)
    {
        var (farm, language) = (File(), LanguageOption.Create());
        var json = new Option<bool>("--json") { Description = "The whole document, boundaries inside, as Watersown writes it (docs/schema/farm.schema.json)." };
        var command = new Command("show", "Show its fields.") { farm, json, language };
        command.SetAction((parsed, _) => OpenAsync(edge, parsed.GetValue(farm)!, parsed, language,
            state => parsed.GetValue(json) ? Encoding.UTF8.GetString(FarmWriting.Write(state).Span) : FarmText.Table(state) + "\n" + FarmText.Totals(state)));
        return command;
    }

    private static Argument<string> File() => new("FILE") { Description = "The farm document (JSON)." };

    private static async Task<int> OpenAsync(Edge edge, string path, ParseResult parsed, Option<string> language, Func<SeasonState, string> answer)
    {
        var farm = OpenFarm.Run(path, edge.Time);
        await LanguageOption.TellAsync(edge, farm.Problems, LanguageOption.Of(parsed, language));
        if (farm.IsRefused) return ExitCode.ProblemsInInput;
        await edge.Out.WriteAsync(answer(farm.Value));
        return ExitCode.Done;
    }
}
