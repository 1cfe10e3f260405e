using Watersown.Schedule;
using Watersown.Water;
using Watersown.Water.Flood;

namespace Watersown.Bench;

/// <summary>Fields of a farm, each with the water that fills it in less than five days, then what holds it.</summary>
internal static class MayFields
{
    public static TimeSpan Span { get; } = TimeSpan.FromDays(31);

    public static ImmutableArray<FloodNetwork> Of(SeasonState state, bool asMeasured) => [.. state.Farm.Fields.Select(f => Network(state, f.Code, f.Sources[0], asMeasured))];

    private static FloodNetwork Network(SeasonState state, string code, string source, bool asMeasured)
    {
        var water = FieldWater.Of(state, code);
        var fill = FlowRate.FromCubicMetersPerSecond((water.Job.Dry * water.Job.Fill).CubicMeters / (5 * 86400.0));
        var full = Ponding.FillTime(water.Job, water.Holding + fill)!.Value;
        return FieldFlood.Network(state, code, source, [new FlowStep(TimeSpan.Zero, water.Holding + fill), new FlowStep(full, water.Holding)], asMeasured: asMeasured);
    }
}
