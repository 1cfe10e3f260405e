using System.CommandLine;
using System.Globalization;
using Watersown.Records.Files.Sheets;
using Watersown.Records.Land;
using Watersown.Records.Schedule;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Cli.Verbs;

/// <summary>Each person's sheet, printed from a fresh plan or from a saved one.</summary>
internal static class SheetsVerb
{
    public static Command Create(Edge edge)
    {
        var farm = new Argument<string>("FARM") { Description = "The farm document (JSON)." };
        var folder = new Option<string>("--out") { Description = "Folder to print into: new, empty, or printed into before. It is replaced as a whole.", Required = true };
        var day = new Option<DateOnly?>("--day") { Description = "The day to print for, such as 2026-05-09. Without it the plan's own day, and every flight still to come.", CustomParser = Day };
        var field = new Option<string?>("--field") { Description = "Only the flight sheets of one field, by code." };
        var person = new Option<string?>("--person") { Description = "Only what one person needs, by name." };
        var language = new Option<string?>("--lang") { Description = "en or es, whatever people speak." };
        OneOf(language, "en", "es");
        var only = new Option<string?>("--only") { Description = "Only one form: html, pdf, texts or calendar." };
        OneOf(only, "html", "pdf", "texts", "calendar");
        var saved = new Option<string?>("--plan") { Description = "Print from this saved plan (what 'plan FARM --json' printed) instead of searching for one." };
        var search = new SearchOptions("How long to search for the plan.", 5);
        var command = new Command("sheets", "Print the flight, seed, water and day sheets of a plan, the texts to send and the calendar.")
        {
            farm, folder, day, field, person, language, only, saved,
        };
        search.AddTo(command);
        command.SetAction((parsed, stop) => RunAsync(edge, parsed.GetValue(farm)!, new Asked(
            parsed.GetValue(folder)!,
            new SheetChoice { Day = parsed.GetValue(day), Field = parsed.GetValue(field), Person = parsed.GetValue(person), Language = LanguageOf(parsed.GetValue(language)) },
            FormsOf(parsed.GetValue(only)),
            search.Of(parsed),
            parsed.GetValue(saved)), stop));
        return command;
    }

    private sealed record Asked(string Folder, SheetChoice Choice, SheetForms Forms, PlanOptions Options, string? Saved);

    private static async Task<int> RunAsync(Edge edge, string path, Asked asked, CancellationToken stop)
    {
        var farm = OpenFarm.Run(path, edge.Time);
        await LanguageOption.TellAsync(edge, farm.Problems, Language.English);
        if (farm.IsRefused || farm.Refusals.Any()) return ExitCode.ProblemsInInput;
        var faults = PrintSheets.Faults(farm.Value, asked.Folder, asked.Choice);
        await LanguageOption.TellAsync(edge, faults, Language.English);
        if (!faults.IsEmpty) return ExitCode.ProblemsInInput;
        var plan = asked.Saved is { } saved
            ? OpenPlan.Run(saved, farm.Value)
            : Outcome<SeasonPlan>.Of(PlanSeason.Run(farm.Value, asked.Options, progress: null, stop));
        await LanguageOption.TellAsync(edge, plan.Problems, Language.English);
        if (plan.IsRefused) return ExitCode.ProblemsInInput;
        var printed = PrintSheets.Run(plan.Value, asked.Folder, asked.Choice, asked.Forms);
        await LanguageOption.TellAsync(edge, printed.Problems, Language.English);
        if (printed.IsRefused) return ExitCode.ProblemsInInput;
        foreach (var name in printed.Value.Files) await edge.Out.WriteLineAsync(Path.Combine(printed.Value.Folder, name));
        await edge.Out.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"plan no. {plan.Value.Number}: {printed.Value.Sheets} sheets, {printed.Value.Texts} texts. Open {Path.Combine(printed.Value.Folder, "index.html")}."));
        return ExitCode.Done;
    }

    private static DateOnly? Day(System.CommandLine.Parsing.ArgumentResult given)
    {
        var text = given.Tokens is [var token] ? token.Value : string.Empty;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)) return day;
        given.AddError($"--day '{text}' is not a day. Give one such as 2026-05-09.");
        return null;
    }

    // One line for a wrong word, as for every other fault.
    private static void OneOf(Option<string?> option, params ImmutableArray<string> words) => option.Validators.Add(r =>
    {
        if (r.GetValueOrDefault<string?>() is { } given && !words.Contains(given, StringComparer.Ordinal)) r.AddError($"{option.Name} '{given}' is not one of {string.Join(", ", words)}. Give one of them.");
    });

    private static Language? LanguageOf(string? tag) => tag switch
    {
        "en" => Language.English,
        "es" => Language.Spanish,
        _ => null,
    };

    private static SheetForms FormsOf(string? only) => only switch
    {
        "html" => SheetForms.Html,
        "pdf" => SheetForms.Pdf,
        "texts" => SheetForms.Texts,
        "calendar" => SheetForms.Calendar,
        _ => SheetForms.All,
    };
}
