using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Schedule;

/// <summary>What must be decided or said, in the order of its last safe moment, and what it costs to wait.</summary>
public static class Decisions
{
    /// <summary>The decisions of a plan, first to fall due first.</summary>
    [Source(nameof(Sources.CommonPractice), "order water by the notice, call soak by the cut-off, drain last, list the flight the afternoon before")]
    public static ImmutableArray<Decision> Of(SeasonPlan plan) =>
        [.. Lost(plan).Concat(Water(plan)).Concat(Soaks(plan)).Concat(Drains(plan)).Concat(Flights(plan)).OrderBy(d => d.By).ThenBy(d => d.Kind, StringComparer.Ordinal)];

    private static IEnumerable<Decision> Lost(SeasonPlan plan)
    {
        foreach (var code in plan.LostBatches)
        {
            var batch = plan.State.Batches.First(b => b.Code == code);
            var money = plan.State.Prices.SoakedSeed * batch.Dry.Pounds;
            yield return new Decision(plan.MadeAt, $"Let go of batch {code}: {Say.Number(batch.Dry.Pounds)} lb dry of {batch.Variety}. No field can be sown with it inside its window.", plan.State.SoakPlace?.Name ?? "warehouse", batch.MeantFor)
            {
                Kind = "dump-seed",
                Cost = money,
                CostOfWaiting = $"its trailers stay tied up; the seed is lost either way: ${Say.Number((double)money.Amount)}",
                Working = Working.Empty
                    .Given("D", "dry seed in the batch", batch.Dry.Pounds, "lb dry", "batch " + code, batch.InSoak)
                    .Given("p", "seed, soak and haul", (double)plan.State.Prices.SoakedSeed.Amount, "$/lb dry", "farm prices")
                    .Step("C", "thrown away", (double)money.Amount, "$", "D × p", Sources.Arithmetic),
            };
        }
    }

    private static IEnumerable<Decision> Water(SeasonPlan plan)
    {
        foreach (var orders in plan.Orders.GroupBy(o => o.Source, StringComparer.Ordinal))
        {
            var source = plan.State.Farm.Source(orders.Key)!;
            foreach (var (before, after) in orders.Zip(orders.Skip(1)))
            {
                var up = after.Flow > before.Flow;
                var fields = plan.Tasks.Where(t => t.Kind == PlanTaskKind.Fill && t.From.Any(f => f.Source == source.Code) && t.Start >= after.From - TimeSpan.FromHours(2) && t.Start < after.Until).Select(t => t.Field).Distinct(StringComparer.Ordinal);
                yield return new Decision(after.From - source.Notice, $"{(up ? "Order" : "Cut")} {source.Code} from {Cfs(before.Flow)} to {Cfs(after.Flow)} cfs for {When.Moment(after.From)}.", source.Kind == WaterSourceKind.DistrictTurnout ? "water district" : source.Code, [.. fields])
                {
                    Kind = up ? "order-water" : "cut-water",
                    CostOfWaiting = up ? WaitForWater(plan, source, before, after) : Spill(plan, before, after),
                    Cost = up ? null : plan.State.Prices.IdleWater * ((before.Flow - after.Flow) * TimeSpan.FromDays(1)).AcreFeet,
                };
            }
        }
    }

    private static string WaitForWater(SeasonPlan plan, WaterSource source, OrderedFlow before, OrderedFlow after)
    {
        var short1 = ((after.Flow - before.Flow) * TimeSpan.FromDays(1)).AcreFeet;
        var rule = DelayCost.PerAcreDay(plan.State.Prices);
        return $"each change missed waits for the next one: {Say.Number(short1, 1)} ac-ft a day less from {source.Code}, and ${Say.Number((double)rule.Amount, 2)} an acre for every day a field is later";
    }

    private static string Spill(SeasonPlan plan, OrderedFlow before, OrderedFlow after)
    {
        var over = ((before.Flow - after.Flow) * TimeSpan.FromDays(1)).AcreFeet;
        return $"{Say.Number(over, 1)} ac-ft a day is over and must spill (${Say.Number((double)(plan.State.Prices.IdleWater * over).Amount)}), and none may spill out of a held field";
    }

    private static IEnumerable<Decision> Soaks(SeasonPlan plan)
    {
        foreach (var day in plan.Tasks.Where(t => t.Kind == PlanTaskKind.CallSeed).GroupBy(t => t.End))
        {
            var lines = day.Select(t => $"{t.Field} {Say.Number(t.Dry!.Value.Pounds)} lb dry{Variety(plan, t.Field)}");
            var acres = day.Sum(t => plan.State.Farm.Field(t.Field).Net.Acres);
            var cost = DelayCost.PerAcreDay(plan.State.Prices) * acres;
            var soak = plan.Tasks.First(t => t.Kind == PlanTaskKind.Soak && t.Field == day.First().Field);
            yield return new Decision(day.Key, $"Call soak for {When.Day(FarmTime.Day(plan.State, soak.Start))}: {string.Join(" + ", lines)}.", plan.State.SoakPlace?.Name ?? "warehouse", [.. day.Select(t => t.Field)])
            {
                Kind = "call-soak",
                Cost = cost,
                CostOfWaiting = $"no seed for a ready field: a day later at least, ${Say.Number((double)cost.Amount)} for {Say.Number(acres)} ac",
            };
            yield return new Decision(soak.Start > plan.MadeAt ? soak.Start : plan.MadeAt, $"Put in soak: {string.Join(" + ", lines)}.", plan.State.SoakPlace?.Name ?? "warehouse", [.. day.Select(t => t.Field)])
            {
                Kind = "put-in-soak",
                Cost = cost,
                CostOfWaiting = "each hour later is an hour later at the strip; soaking can be stretched, not undone",
            };
        }
    }

    private static IEnumerable<Decision> Drains(SeasonPlan plan)
    {
        foreach (var task in plan.Tasks.Where(t => t.Kind == PlanTaskKind.Drain && t.Start >= plan.MadeAt))
        {
            var money = plan.State.Prices.SoakedSeed * task.Dry!.Value.Pounds;
            var sow = plan.Task(task.Field, PlanTaskKind.Sow)!;
            var soak = plan.Tasks.First(t => t.Kind == PlanTaskKind.Soak && t.Field == task.Field);
            var under = task.Start - soak.Start;
            var most = plan.State.SoakRules.SoakMost;
            var warn = under > most ? FormattableString.Invariant($" It will have been {under.TotalHours:0.#} h under water, over the usual {most.TotalHours:0}.") : string.Empty;
            yield return new Decision(task.Start, $"Drain or hold {task.Batch} ({task.Field}, {Say.Number(task.Dry.Value.Pounds)} lb dry) for {When.Moment(sow.Start)}: look at the wind first.{warn}", plan.State.SoakPlace?.Name ?? "warehouse", [task.Field])
            {
                Kind = "drain",
                Cost = money,
                CostOfWaiting = $"the last cheap decision: once drained it must be flown in about a day, or ${Say.Number((double)money.Amount)} of seed is lost",
            };
        }
    }

    private static IEnumerable<Decision> Flights(SeasonPlan plan)
    {
        foreach (var day in plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow).GroupBy(t => FarmTime.Day(plan.State, t.Start)))
        {
            var by = FarmTime.At(plan.State, day.Key.AddDays(-1), new TimeOnly(16, 0));
            var hours = day.Sum(t => (t.End - t.Start).TotalHours);
            var acres = day.Sum(t => plan.State.Farm.Field(t.Field).Net.Acres);
            yield return new Decision(by > plan.MadeAt ? by : plan.MadeAt, $"List the flight for {When.Day(day.Key)} from {When.Hour(day.Min(t => t.Start))}: {string.Join(", ", day.OrderBy(t => t.Start).Select(t => t.Field))}, {Say.Number(acres)} ac, about {Say.Number(hours, 1)} h.", "flying service", [.. day.OrderBy(t => t.Start).Select(t => t.Field)])
            {
                Kind = "list-flight",
                CostOfWaiting = "another customer goes first; the seed clock does not wait",
            };
        }
    }

    private static string Variety(SeasonPlan plan, string field) => plan.State.Season(field).Variety is { } v ? " " + v : string.Empty;

    private static string Cfs(FlowRate flow) => Say.Number(flow.CubicFeetPerSecond, 1).Replace(".0", string.Empty, StringComparison.Ordinal);
}
