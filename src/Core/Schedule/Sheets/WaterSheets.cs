using Watersown.Land;
using Watersown.Schedule.Finish;
using Watersown.Water;

namespace Watersown.Schedule.Sheets;

/// <summary>What an irrigator must know for one day, gathered from a plan.</summary>
public static class WaterSheets
{
    /// <summary>How far ahead a change of water is listed, by the moment it must be sent.</summary>
    [Source(nameof(Sources.FarmDefault), "three days")]
    public static TimeSpan ChangesAhead { get; } = TimeSpan.FromDays(3);

    /// <summary>The water sheet of a day, for one person or for whoever carries it.</summary>
    public static WaterSheet Of(SeasonPlan plan, DateOnly day, string? person)
    {
        var state = plan.State;
        var stops = state.Farm.Fields.Select(f => (Source: FieldSource.First(plan, f), Stop: Stop(plan, f, day))).Where(s => s.Stop is not null).ToList();
        var routes = state.Farm.Sources.Select(source => new SourceRoute(source, RunningOn(plan, source, day), [.. stops.Where(s => s.Source == source.Code).Select(s => s.Stop!)]));
        var loose = stops.Where(s => state.Farm.Source(s.Source ?? string.Empty) is null).Select(s => s.Stop!).ToImmutableArray();
        return new WaterSheet
        {
            Day = day,
            For = person,
            NoSpill = [.. state.Farm.Fields.Where(f => state.Season(f.Code).NoSpill)],
            Routes = [.. routes.Where(r => !r.Stops.IsEmpty)],
            Loose = loose,
            Changes = [.. Changes(plan).Where(c => c.SendBy >= FarmTime.Midnight(state, day) && c.SendBy < FarmTime.Midnight(state, day) + ChangesAhead)],
        };
    }

    /// <summary>Every change of an ordered source in the plan, by the moment it must be sent.</summary>
    [Source(nameof(Sources.Arithmetic), "change of flow less the notice")]
    public static ImmutableArray<WaterChange> Changes(SeasonPlan plan)
    {
        var changes = ImmutableArray.CreateBuilder<WaterChange>();
        foreach (var source in plan.State.Farm.Sources)
        {
            var before = source.Running ?? FlowRate.Zero;
            foreach (var order in plan.Orders.Where(o => o.Source == source.Code).OrderBy(o => o.From))
            {
                // Less than a hundredth of a cfs is arithmetic, not an order.
                if (Math.Abs(order.Flow.CubicFeetPerSecond - before.CubicFeetPerSecond) >= 0.01 && order.From > plan.State.Now)
                    changes.Add(new WaterChange(source, before, order.Flow, order.From, order.From - source.Notice));
                before = order.Flow;
            }
        }

        return [.. changes.OrderBy(c => c.SendBy).ThenBy(c => c.Source.Code, StringComparer.Ordinal)];
    }

    private static CheckDue? NextCheck(SeasonState state, PlanTask fill, DateTimeOffset day)
    {
        if (fill.Flow is not { } flow) return null;
        var from = fill.Start > state.Now ? fill.Start : state.Now;
        return FieldFinish.Of(state, fill.Field, flow, from).NextWet(from > day ? from : day) is { FirstWet: { } at } check && at < fill.End ? new CheckDue(check.Number, at) : null;
    }

    private static FlowRate? RunningOn(SeasonPlan plan, WaterSource source, DateOnly day)
    {
        var (from, until) = (FarmTime.Midnight(plan.State, day), FarmTime.Midnight(plan.State, day.AddDays(1)));
        return plan.Orders.Where(o => o.Source == source.Code && o.From < until && o.Until > from).OrderBy(o => o.From).Select(o => (FlowRate?)o.Flow).FirstOrDefault() ?? source.Running;
    }

    private static WaterStop? Stop(SeasonPlan plan, Field field, DateOnly day)
    {
        var (state, season) = (plan.State, plan.State.Season(field.Code));
        var (from, until) = (FarmTime.Midnight(state, day), FarmTime.Midnight(state, day.AddDays(1)));
        var fill = plan.Task(field.Code, PlanTaskKind.Fill);
        var sow = plan.Tasks.FirstOrDefault(t => t.Kind == PlanTaskKind.Sow && t.Field == field.Code && !t.Fixed);
        var stop = new WaterStop(field, WaterTask.HoldForSeed)
        {
            ChecksWet = season.ChecksWet,
            AsOf = season.AsOf,
            Depth = season.Depth,
            NoSpill = season.NoSpill,
            Target = WaterTargets.Sowing,
            Sow = sow?.Start,
        };
        if (season.Stage == FieldStage.Sown || sow?.End <= from) return stop with { Task = WaterTask.HoldSown, Target = null, Sow = null };
        if (season.Stage == FieldStage.Full || fill?.End <= from) return stop;
        if (fill is null) return season.Stage == FieldStage.Flooding ? stop with { Task = WaterTask.Fill } : null;
        if (fill.Start >= until) return null;
        stop = stop with { Flow = fill.Flow, FullBy = fill.End, NextCheck = NextCheck(state, fill, from) };
        return season.Stage == FieldStage.Flooding || fill.Start < from ? stop with { Task = WaterTask.Fill } : stop with { Task = WaterTask.Open, At = fill.Start, ChecksWet = null };
    }
}
