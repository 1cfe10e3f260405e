using Watersown.Land;
using Watersown.Water.Flood;

namespace Watersown.Schedule;

/// <summary>When a source can be changed, and by when the change must be asked for.</summary>
public static class WaterOrders
{
    /// <summary>Moments from now to the horizon at which the flow may change, first possible one first; empty where any moment will do.</summary>
    public static ImmutableArray<DateTimeOffset> Changes(SeasonState state, WaterSource source)
    {
        if (source.ChangeHours.IsEmpty) return [];
        var changes = ImmutableArray.CreateBuilder<DateTimeOffset>();
        for (var day = FarmTime.Day(state, state.Now); day <= state.Horizon; day = day.AddDays(1))
        {
            foreach (var hour in source.ChangeHours.Order())
            {
                var change = FarmTime.At(state, day, hour);
                if (change - source.Notice >= state.Now) changes.Add(change);
            }
        }

        return changes.ToImmutable();
    }

    /// <summary>The first moment at which a flow can be other than it is; none within the plan's days.</summary>
    public static DateTimeOffset? First(SeasonState state, WaterSource source) =>
        source.ChangeHours.IsEmpty ? state.Now + source.Notice : Changes(state, source).Select(c => (DateTimeOffset?)c).FirstOrDefault();

    /// <summary>What runs now, and the flow that is wanted from the first moment at which it can come, as far as the source can give it.</summary>
    [Source(nameof(Sources.Arithmetic), "first change hour that is a notice away")]
    public static ImmutableArray<FlowStep> Reachable(SeasonState state, WaterSource source, FlowRate wanted)
    {
        var running = SourceSupply.Running(state, source) ?? [new FlowStep(TimeSpan.Zero, FlowRate.Zero)];
        if (First(state, source) is not { } at) return running;
        var flow = SourceSupply.Kept(state, source, wanted);
        var since = at - state.Now;
        return [.. running.Where(s => s.From < since), .. flow.Where(s => s.From > since).Prepend(new FlowStep(since, flow.Last(s => s.From <= since).Flow))];
    }

    /// <summary>The smallest step of a source's flow: its own, or where it has told none, whole cfs of what is ordered and tenths of what is turned at will.</summary>
    [Source(nameof(Sources.CommonPractice), "ordered in whole cfs; turned to a tenth")]
    public static FlowRate Step(WaterSource source) => source.MinStep ?? FlowRate.FromCubicFeetPerSecond(IsOrdered(source) ? 1 : 0.1);

    /// <summary>Sources whose flow must be ordered ahead; the others are turned at will.</summary>
    public static bool IsOrdered(WaterSource source) => !source.ChangeHours.IsEmpty || source.Notice > TimeSpan.Zero;
}
