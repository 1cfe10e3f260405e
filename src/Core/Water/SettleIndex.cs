using Watersown.Weather;

namespace Watersown.Water;

/// <summary>A stretch of time with one wind over one fetch.</summary>
/// <param name="From">From when.</param>
/// <param name="Until">Until when.</param>
/// <param name="Wind">The wind that stands.</param>
/// <param name="Fetch">Water from levee to levee along it.</param>
public sealed record BlownHours(DateTimeOffset From, DateTimeOffset Until, Wind Wind, Length Fetch);

/// <summary>
/// How hard wind has pulled at seed that has not rooted. A number to rank fields by and for nothing else: that shallower is
/// calmer rests on what growers saw, not on wave theory at these depths.
/// </summary>
public static class SettleIndex
{
    /// <summary>Wind below this moves no seed, as far as the index goes.</summary>
    [Source(nameof(Sources.FarmDefault), "12 mph")]
    public static Speed Calm { get; } = Speed.FromMilesPerHour(12);

    /// <summary>Seed counts as loose for so long; its hold grows evenly from nothing.</summary>
    [Source(nameof(Sources.FarmDefault), "72 h, the weight falling evenly from 1 at sowing to 0")]
    public static TimeSpan Loose { get; } = TimeSpan.FromHours(72);

    /// <summary>Depth at which the depth factor is 1.</summary>
    [Source(nameof(Sources.FarmDefault), "depth factor = depth / 2 in, from 0.5 to 2")]
    public static WaterDepth PlainDepth { get; } = WaterDepth.FromInches(2);

    /// <summary>The index, in mph² h ft.</summary>
    /// <param name="sown">When it was sown.</param>
    /// <param name="depth">Mean depth.</param>
    /// <param name="hours">Winds since then, in order, not overlapping.</param>
    /// <param name="loose">For how long seed counts as loose; as usual where not told.</param>
    [Source(nameof(Sources.FarmDefault), "Σ (wind over 12 mph)² × hours × fetch × depth factor × looseness, as long as seed is loose")]
    [return: PlainNumber("an index; only its order means something")]
    public static double Of(DateTimeOffset sown, WaterDepth depth, ImmutableArray<BlownHours> hours, TimeSpan? loose = null)
    {
        var factor = Math.Clamp(depth / PlainDepth, 0.5, 2);
        return hours.Sum(h => Pull(sown, h, loose ?? Loose)) * factor;
    }

    private static double Pull(DateTimeOffset sown, BlownHours blown, TimeSpan window)
    {
        var (from, until) = (Hours(blown.From - sown, window), Hours(blown.Until - sown, window));
        var over = blown.Wind.Sustained.MilesPerHour - Calm.MilesPerHour;
        if (until <= from || over <= 0) return 0;
        // The weight falls evenly, so its mean over the stretch is that of its middle.
        var loose = 1 - ((from + until) / 2 / window.TotalHours);
        return over * over * (until - from) * loose * blown.Fetch.Feet;
    }

    private static double Hours(TimeSpan span, TimeSpan window) => Math.Clamp(span.TotalHours, 0, window.TotalHours);
}
