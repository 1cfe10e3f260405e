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

    /// <summary>What runs now, and the flow that is wanted from the first moment at which it can come.</summary>
    [Source(nameof(Sources.Arithmetic), "first change hour that is a notice away")]
    public static ImmutableArray<FlowStep> Reachable(SeasonState state, WaterSource source, FlowRate wanted)
    {
        var flow = source.Down ? FlowRate.Zero : wanted < source.Cap ? wanted : source.Cap;
        var first = source.ChangeHours.IsEmpty ? state.Now + source.Notice : Changes(state, source).Select(c => (DateTimeOffset?)c).FirstOrDefault();
        if (first == state.Now) return [new FlowStep(TimeSpan.Zero, flow)];
        var running = new FlowStep(TimeSpan.Zero, source.Down ? FlowRate.Zero : source.Running ?? FlowRate.Zero);
        return first is { } at ? [running, new FlowStep(at - state.Now, flow)] : [running];
    }

    /// <summary>Sources whose flow must be ordered ahead; the others are turned at will.</summary>
    public static bool IsOrdered(WaterSource source) => !source.ChangeHours.IsEmpty || source.Notice > TimeSpan.Zero;
}
