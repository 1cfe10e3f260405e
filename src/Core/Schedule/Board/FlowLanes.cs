using Watersown.Land;

namespace Watersown.Schedule.Board;

/// <summary>
/// Water of every source over time, as the plan counts on it: fields that fill take their planned flow, full ones what they
/// lose, each from its first choice as far as that reaches, then from the next.
/// </summary>
internal static class FlowLanes
{
    public static ImmutableArray<FlowLane> Of(SeasonPlan plan, BoardSpan span)
    {
        var state = plan.State;
        var from = plan.MadeAt > span.From ? plan.MadeAt : span.From;
        if (state.Farm.Sources.IsEmpty || from >= span.Until) return [.. state.Farm.Sources.Select(s => new FlowLane(s) { Steps = [], Changes = Changes(plan, s, span) })];
        var fields = Fields(plan);
        ImmutableArray<DateTimeOffset> cuts =
        [
            .. plan.Orders.Select(o => o.From).Concat(fields.SelectMany(f => new[] { f.FillFrom, f.FillUntil }))
                .Concat(state.Farm.Sources.SelectMany(s => SourceSupply.Changes(s with { Turns = null }, from, span.Until))).Append(from).Append(span.Until)
                .Where(t => t >= from && t <= span.Until).Distinct().Order(),
        ];
        var steps = state.Farm.Sources.Select(_ => new List<FlowStep>()).ToArray();
        for (var i = 0; i + 1 < cuts.Length; i++)
        {
            var shared = Share(plan, fields, cuts[i]);
            for (var s = 0; s < steps.Length; s++) Add(steps[s], new FlowStep(cuts[i], cuts[i + 1]) { Given = shared[s].Given, Holding = shared[s].Holding, Filling = shared[s].Filling, Short = shared[s].Short });
        }

        return [.. state.Farm.Sources.Select((s, i) => new FlowLane(s) { Steps = [.. steps[i]], Changes = Changes(plan, s, span) })];
    }

    private static void Add(List<FlowStep> steps, FlowStep step)
    {
        if (steps.Count > 0 && steps[^1] with { Until = step.Until } == step with { From = steps[^1].From }) steps[^1] = steps[^1] with { Until = step.Until };
        else steps.Add(step);
    }

    private static ImmutableArray<FlowChange> Changes(SeasonPlan plan, WaterSource source, BoardSpan span)
    {
        var orders = plan.Orders.Where(o => o.Source == source.Code).OrderBy(o => o.From).ToImmutableArray();
        return
        [
            .. orders.Zip(orders.Skip(1))
                .Where(o => o.First.Flow != o.Second.Flow && WaterOrders.IsOrdered(source))
                .Select(o => new FlowChange(o.Second.From, o.Second.From - source.Notice, o.First.Flow, o.Second.Flow))
                .Where(c => span.Has(c.At) || span.Has(c.AskBy)),
        ];
    }

    private static ImmutableArray<Drinker> Fields(SeasonPlan plan)
    {
        var state = plan.State;
        var fills = plan.Tasks.Where(t => t.Kind == PlanTaskKind.Fill).ToLookup(t => t.Field, StringComparer.Ordinal);
        return
        [
            .. state.Farm.Fields.Select(f =>
            {
                var sources = f.Sources.Select(c => state.Farm.Sources.IndexOf(state.Farm.Source(c)!)).Where(i => i >= 0).ToImmutableArray();
                var water = FieldWater.Of(state, f.Code);
                var fill = fills[f.Code].FirstOrDefault();
                var never = DateTimeOffset.MaxValue;
                return new Drinker(sources, fill?.Start ?? never, fill?.End ?? never, water.HoldingNow, fill?.Flow ?? FlowRate.Zero, water.Holding);
            }).Where(f => !f.Sources.IsEmpty),
        ];
    }

    private static (FlowRate Given, FlowRate Holding, FlowRate Filling, FlowRate Short)[] Share(SeasonPlan plan, ImmutableArray<Drinker> fields, DateTimeOffset at)
    {
        var sources = plan.State.Farm.Sources;
        var given = sources.Select(s => Given(plan, s, at)).ToImmutableArray();
        var sharing = new FlowSharing(given, [.. plan.State.Farm.SharedCaps.Select(c => (c.Cap, c.Sources.Select(code => sources.IndexOf(plan.State.Farm.Source(code)!)).Where(i => i >= 0).ToImmutableArray()))], [.. fields.Select(f => (f.Sources, f.Wants(at)))]);
        var result = given.Select(g => (Given: g, Holding: FlowRate.Zero, Filling: FlowRate.Zero, Short: FlowRate.Zero)).ToArray();
        for (var f = 0; f < fields.Length; f++)
        {
            foreach (var s in fields[f].Sources)
            {
                var flow = sharing.Flow(f, s);
                if (fields[f].Fills(at)) result[s].Filling += flow;
                else result[s].Holding += flow;
            }

            result[fields[f].Sources[0]].Short += sharing.Missing(f);
        }

        return result;
    }

    private static FlowRate Given(SeasonPlan plan, WaterSource source, DateTimeOffset at)
    {
        if (source.Needs is { } need && FullAcres(plan, need, at) < need.Full) return FlowRate.Zero;
        var order = plan.Orders.FirstOrDefault(o => o.Source == source.Code && o.From <= at && at < o.Until)?.Flow;
        // As the plan counts on it: turns at their mean.
        var most = SourceSupply.MeanAt(source, at);
        return order is { } flow && flow < most ? flow : most;
    }

    private static Area FullAcres(SeasonPlan plan, TailwaterNeed need, DateTimeOffset at) => Area.FromAcres(need.Fields
        .Where(c => plan.State.Season(c).Stage is FieldStage.Sown or FieldStage.Full || (plan.Task(c, PlanTaskKind.Fill) is { } fill && fill.End <= at))
        .Sum(c => plan.State.Farm.Field(c).Net.Acres));

    /// <summary>A field and what it takes before, in and after its fill.</summary>
    private sealed record Drinker(ImmutableArray<int> Sources, DateTimeOffset FillFrom, DateTimeOffset FillUntil, FlowRate Before, FlowRate Filling, FlowRate After)
    {
        public bool Fills(DateTimeOffset at) => FillFrom <= at && at < FillUntil;

        public FlowRate Wants(DateTimeOffset at) => at < FillFrom ? Before : at < FillUntil ? Filling : After;
    }
}
