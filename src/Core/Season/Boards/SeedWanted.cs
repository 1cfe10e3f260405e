using Watersown.Schedule;

namespace Watersown.Season.Boards;

/// <summary>Dry seed that fields ask for.</summary>
public static class SeedWanted
{
    /// <summary>Net acres times rate, over the fields.</summary>
    [Source(nameof(Sources.Arithmetic), "Σ net acres × rate")]
    public static DrySeed Of(SeasonState state, IEnumerable<string> fields) =>
        fields.Aggregate(DrySeed.Zero, (sum, code) => sum + (state.Season(code).Rate * state.Farm.Field(code).Net));
}
