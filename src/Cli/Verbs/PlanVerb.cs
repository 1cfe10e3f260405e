using System.CommandLine;
using Watersown.Documents.Plan;
using Watersown.Records.Land;
using Watersown.Records.Schedule;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Cli.Verbs;

/// <summary>The season plan of a farm.</summary>
internal static class PlanVerb
{
    public static Command Create(Edge edge)
    {
        var farm = new Argument<string>("FARM") { Description = "The farm document (JSON)." };
        var search = new SearchOptions("How long to search.", 20);
        var delay = new Option<string?>("--delay") { Description = "What a day's delay costs: trials (0.2 cwt an acre a day), saying (a sack an acre a day after 12 May), own (the farm's price)." };
        delay.AcceptOnlyFromAmong("trials", "saying", "own");
        var json = new Option<bool>("--json") { Description = "The plan as JSON (docs/plan.schema.json)." };
        var field = new Option<string?>("--field") { Description = "Only one field, with the working of every figure." };
        var all = new Option<bool>("--all") { Description = "All decisions, not only those of the next 48 hours." };
        var quiet = new Option<bool>("--quiet") { Description = "No progress lines." };
        var command = new Command("plan", "Plan the season: ground, water, seed and aeroplane meet on every field, with what must be decided by when.")
        {
            farm, delay, json, field, all, quiet,
        };
        search.AddTo(command);
        command.SetAction((parsed, stop) => RunAsync(edge, parsed.GetValue(farm)!, new Asked(
            search.Of(parsed),
            parsed.GetValue(delay), parsed.GetValue(json), parsed.GetValue(field), parsed.GetValue(all), parsed.GetValue(quiet)), stop));
        return command;
    }

    private sealed record Asked(PlanOptions Options, string? Delay, bool Json, string? Field, bool All, bool Quiet);

    private static async Task<int> RunAsync(Edge edge, string path, Asked asked, CancellationToken stop)
    {
        var farm = OpenFarm.Run(path, edge.Time);
        await LanguageOption.TellAsync(edge, farm.Problems, Language.English);
        if (farm.IsRefused || farm.Refusals.Any()) return ExitCode.ProblemsInInput;
        var state = WithDelay(farm.Value, asked.Delay);
        if (asked.Field is { } code && state.Farm.Fields.All(f => f.Code != code))
        {
            await edge.Error.WriteLineAsync($"--field {code}: the farm has no field of that code. Its fields are {string.Join(", ", state.Farm.Fields.Select(f => f.Code))}.");
            return ExitCode.ProblemsInInput;
        }

        var plan = PlanSeason.Run(state, asked.Options, asked.Quiet ? null : Telling(edge), stop);
        await edge.Out.WriteAsync(asked switch
        {
            { Json: true } => PlanDocument.Write(plan) + "\n",
            { Field: { } one } => PlanText.Field(plan, one),
            { All: true } => PlanText.Whole(plan) + PlanText.AllDecisions(plan),
            _ => PlanText.Whole(plan),
        });
        return ExitCode.Done;
    }

    /// <summary>Progress on the error stream, at most twice a second, the first plan always.</summary>
    private static Action<PlanProgress> Telling(Edge edge)
    {
        var last = TimeSpan.FromSeconds(-1);
        return progress =>
        {
            if (progress.Elapsed - last < TimeSpan.FromMilliseconds(500)) return;
            last = progress.Elapsed;
            edge.Error.WriteLine(PlanText.Progress(progress));
        };
    }

    private static SeasonState WithDelay(SeasonState state, string? rule) => rule switch
    {
        "trials" => state with { Prices = state.Prices with { Delay = DelayRule.Trials } },
        "saying" => state with { Prices = state.Prices with { Delay = DelayRule.Saying } },
        "own" => state with { Prices = state.Prices with { Delay = DelayRule.Own } },
        _ => state,
    };
}
