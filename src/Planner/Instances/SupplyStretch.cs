using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Planner.Instances;

/// <summary>A stretch of time over which the most that a source can give does not change, and neither does its order.</summary>
/// <param name="From">First step.</param>
/// <param name="Until">First step after it.</param>
/// <param name="Most">The most it can give; in turns their mean.</param>
/// <param name="Period">Period of order that it lies in; −1 where the source is turned at will.</param>
internal sealed record SupplyStretch(int From, int Until, int Most, int Period)
{
    public int Steps => Until - From;

    /// <summary>The stretches of a source: where it is curtailed, and within each period of its orders.</summary>
    public static ImmutableArray<SupplyStretch> Of(SeasonClock clock, WaterSource source, ImmutableArray<OrderPeriod> periods)
    {
        // Of turns the plan counts on their mean; their hours are told on the page of the source.
        var steady = source with { Turns = null };
        var changes = SourceSupply.Changes(steady, clock.Moment(0), clock.Moment(clock.Horizon)).SelectMany(c => new[] { clock.Floor(c), clock.Ceiling(c) });
        ImmutableArray<int> edges = [.. changes.Concat(periods.Select(p => p.From)).Append(0).Append(clock.Horizon).Where(e => e >= 0 && e <= clock.Horizon).Distinct().Order()];
        return
        [
            .. edges.Zip(edges.Skip(1), (from, until) =>
            {
                // Within a step that it changes in, the less of before and after.
                var (first, last) = (GivenAt(source, clock.Moment(from)), GivenAt(source, clock.Moment(until).AddSeconds(-1)));
                return new SupplyStretch(from, until, Math.Min(first, last), periods.Select((p, i) => p.From <= from && from < p.Until ? i : -1).Append(-1).Max());
            }),
        ];
    }

    private static int GivenAt(WaterSource source, DateTimeOffset at) => (int)Math.Floor((SourceSupply.MeanAt(source, at).CubicFeetPerSecond * 100) + 1e-6);
}
