using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Schedule;

public static partial class Conflicts
{
    // Less than this is within what a gate wanders.
    private static readonly FlowRate worthSaying = FlowRate.FromCubicFeetPerSecond(1);

    /// <summary>Water that runs already and that no field takes up before it can be changed.</summary>
    private static IEnumerable<Conflict> Surplus(SeasonPlan plan)
    {
        foreach (var running in plan.Orders.GroupBy(o => o.Source, StringComparer.Ordinal).Select(g => g.First()).Where(o => o.From <= plan.MadeAt))
        {
            var source = plan.State.Farm.Source(running.Source)!;
            var until = WaterOrders.Changes(plan.State, source).FirstOrDefault(running.Until);
            if (until > running.Until) until = running.Until;
            DateTimeOffset[] moments = [plan.MadeAt, .. plan.Tasks.Where(t => t.Kind == PlanTaskKind.Fill).SelectMany(t => new[] { t.Start, t.End }).Where(t => t > plan.MadeAt && t < until).Distinct().Order(), until];
            var over = moments.Zip(moments.Skip(1)).Select(m => (From: m.First, Flow: running.Flow - TakenUp(plan, source, m.First), Span: m.Second - m.First)).Where(m => m.Flow >= worthSaying && m.Span >= TimeSpan.FromHours(1)).ToImmutableArray();
            if (over.IsEmpty) continue;
            var volume = over.Aggregate(Volume.Zero, (sum, m) => sum + (m.Flow * m.Span));
            var most = over.MaxBy(m => m.Flow.CubicFeetPerSecond);
            yield return new Conflict([],
                $"{source.Code} runs {Say.Figure(running.Flow.CubicFeetPerSecond)} cfs and cannot be changed before {When.Moment(until)}; from {When.Moment(most.From)} only {Say.Number((running.Flow - most.Flow).CubicFeetPerSecond, 1)} cfs are taken up: {Say.Number(most.Flow.CubicFeetPerSecond, 1)} cfs, {Say.Number(volume.AcreFeet, 1)} ac-ft in all, are over.",
                "Ask whether it can be cut sooner, move it to a joined source under the cap, or get the next field ready for it. None may spill out of a held field.")
            {
                Kind = "water",
                Working = Working.Empty
                    .Given("Q", "running", running.Flow.CubicFeetPerSecond, "cfs", "order of " + source.Code)
                    .Given("T", "taken up then", (running.Flow - most.Flow).CubicFeetPerSecond, "cfs", "plan")
                    .Step("S", "over, until it can be changed", volume.AcreFeet, "ac-ft", "sum of (Q - T) × hours × 0.0826", Sources.WaterBalance),
            };
        }
    }

    /// <summary>Flow that the fields whose first choice a source is take from it at a moment.</summary>
    private static FlowRate TakenUp(SeasonPlan plan, WaterSource source, DateTimeOffset at)
    {
        var taken = FlowRate.Zero;
        foreach (var field in plan.State.Farm.Fields.Where(f => f.Sources.Length > 0 && f.Sources[0] == source.Code))
        {
            var water = FieldWater.Of(plan.State, field.Code);
            var fill = plan.Task(field.Code, PlanTaskKind.Fill);
            taken += fill is null || at < fill.Start ? water.HoldingNow : at < fill.End ? fill.Flow ?? FlowRate.Zero : water.Holding;
        }

        return taken;
    }
}
