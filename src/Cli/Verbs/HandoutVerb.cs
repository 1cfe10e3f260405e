using System.CommandLine;
using Watersown.Records.Land;
using Watersown.Records.Schedule;

namespace Watersown.Cli.Verbs;

/// <summary>Fields, passes and known hazards in open formats, for a flying service or anyone else.</summary>
internal static class HandoutVerb
{
    public static Command Create(Edge edge)
    {
        var farm = new Argument<string>("FARM") { Description = "The farm document (JSON)." };
        var folder = new Option<string>("--out") { Description = "Folder to write into: new, empty, or written into before. It is replaced as a whole.", Required = true };
        var fields = new Option<string[]>("--field") { Description = "Only these fields, by code; give it once for each.", DefaultValueFactory = _ => [] };
        var language = LanguageOption.Create();
        var command = new Command("handout", "Write fields, passes wished and known hazards as GeoJSON, KML, GPX, shapefiles and ISO 11783-10 task data.") { farm, folder, fields, language };
        command.SetAction((parsed, _) => RunAsync(edge, parsed.GetValue(farm)!, [.. parsed.GetValue(fields)!], parsed.GetValue(folder)!, LanguageOption.Of(parsed, language)));
        return command;
    }

    private static async Task<int> RunAsync(Edge edge, string path, ImmutableArray<string> codes, string folder, Wording.Language language)
    {
        var farm = OpenFarm.Run(path, edge.Time);
        await LanguageOption.TellAsync(edge, farm.Problems, language);
        if (farm.IsRefused || farm.Refusals.Any()) return ExitCode.ProblemsInInput;
        var written = WriteHandout.Run(farm.Value, codes, folder, language);
        await LanguageOption.TellAsync(edge, written.Problems, language);
        if (written.IsRefused) return ExitCode.ProblemsInInput;
        foreach (var name in written.Value) await edge.Out.WriteLineAsync(Path.Combine(folder, name));
        foreach (var caution in Wording.Words.In(language).Handout.Cautions) await edge.Out.WriteLineAsync(caution);
        return ExitCode.Done;
    }
}
