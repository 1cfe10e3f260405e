using Watersown.Seed;

namespace Watersown.Schedule;

/// <summary>How long drained seed lasts on a day of this season.</summary>
public static class DrainedSeed
{
    /// <summary>By the warmth told for that day, or the plain rule where none is told.</summary>
    [Source(nameof(Sources.RiceBoardSoaking), "about 24 h to plant after soaking and draining")]
    public static TimeSpan Usable(SeasonState state, DateOnly day) =>
        state.Warmth.FirstOrDefault(w => w.Day == day) is { } warmth ? SeedClock.Usable(warmth.Mean) : SeedClock.UsablePlain;
}
