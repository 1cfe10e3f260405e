using System.Diagnostics;
using Watersown.Planner;
using Watersown.Records.Land;
using Watersown.Schedule;
using Watersown.Schedule.Replan;

namespace Watersown.Bench;

/// <summary>The morning that nobody can fly: weighing it, and ranking it anew for other prices, against one valid plan of the whole season.</summary>
internal static class Replanned
{
    public static void Measure(string farm)
    {
        var state = ReplanCase.WithoutToday(OpenFarm.Run(farm).Value);
        var season = Stopwatch.StartNew();
        TimeSpan? first = null;
        var plan = SeasonPlanner.Plan(state, new PlanOptions { Budget = TimeSpan.FromSeconds(0.15), LocalShare = Fraction.One }, _ => first ??= season.Elapsed);
        Console.WriteLine($"replan baseline, a first valid plan of the season: {first!.Value.TotalMilliseconds:0.0} ms");
        var cold = Stopwatch.StartNew();
        var replan = MorningReplan.Of(state, plan);
        Console.WriteLine($"replan {replan.Case.Fields.Length} fields, {replan.Case.Mornings.Length} mornings, cold: {cold.Elapsed.TotalMilliseconds:0.0} ms, {replan.Plans.Length} plans");
        Console.WriteLine($"replan the same, warm: {Best(() => MorningReplan.Of(state, plan)).TotalMicroseconds:0} µs");
        var prices = ReplanPrices.Of(state.Prices);
        Console.WriteLine($"replan other prices, ranked and flipped: {Best(() => Flips.Of(replan, prices)).TotalMicroseconds:0} µs");
        var many = Crowded(state);
        Console.WriteLine($"replan {ReplanCase.Of(many, null).Fields.Length} fields of one variety in water: {Best(() => MorningReplan.Of(many, null), 5).TotalMilliseconds:0.0} ms, {MorningReplan.Of(many, null).Plans.Length} plans");
    }

    /// <summary>Eight fields full and of one variety, with trailers for all: as many ways as a farm can have.</summary>
    private static SeasonState Crowded(SeasonState state)
    {
        var codes = state.Fields.Where(f => f.Stage != FieldStage.Sown).Take(8).Select(f => f.Code).ToList();
        return state with
        {
            SoakPlace = state.SoakPlace! with { Trailers = null },
            Lots = [],
            Fields =
            [
                .. state.Fields.Select(f => codes.Contains(f.Code)
                    ? f with { Stage = FieldStage.Full, Variety = "E-1", FirstWater = state.Now.AddDays(-4 - codes.IndexOf(f.Code)), FullSince = state.Now.AddDays(-1) }
                    : f.Stage == FieldStage.Sown ? f : f with { Stage = FieldStage.Rolled }),
            ],
        };
    }

    private static TimeSpan Best(Action action, int rounds = 30)
    {
        var best = TimeSpan.MaxValue;
        for (var round = 0; round < rounds; round++)
        {
            var watch = Stopwatch.StartNew();
            action();
            if (watch.Elapsed < best) best = watch.Elapsed;
        }

        return best;
    }
}
