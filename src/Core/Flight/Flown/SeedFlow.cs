using Watersown.Flight.Deposit;

namespace Watersown.Flight.Flown;

/// <summary>How much each run laid, the gate giving the same all the time.</summary>
internal static class SeedFlow
{
    /// <summary>
    /// Runs with what they laid for each meter. All together they laid what the scale says, or as much as the rate asked for takes
    /// over every swath; a run flown slower than the rest laid more for each meter, where times are told.
    /// </summary>
    [Source(nameof(Sources.Arithmetic), "seed over rate, shared among the runs by the time each took, over its length")]
    public static ImmutableArray<DepositRun> Of(ImmutableArray<FlownRun> landed, FlownQuestion asked)
    {
        var (length, timed) = (landed.Sum(r => r.Length.Meters), landed.All(r => r.Speed is not null));
        var seconds = landed.Sum(r => r.Ended - r.Began);
        var mean = asked is { Out: { } seed, Rate: { } rate } && length > 0 && rate > SeedRate.Zero ? Length.FromMeters(seed.Dry.Kilograms / rate.KilogramsPerSquareMeter / length) : asked.Swath;
        return [.. landed.Select(r => new DepositRun(r.Line, timed && r.Length > Length.Zero ? mean * ((r.Ended - r.Began) / seconds * length / r.Length.Meters) : mean))];
    }
}
