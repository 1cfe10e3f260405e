namespace Watersown.Seed;

/// <summary>How long soaked seed lasts once it has drained: the warmer, the shorter.</summary>
public static class SeedClock
{
    /// <summary>
    /// Time after draining is done in which seed must be sown, by the mean air of the day. The published plain rule is about
    /// a day; the steps by warmth are a planner default that the farm's own experience replaces.
    /// </summary>
    [Source(nameof(Sources.RiceBoardSoaking), "about 24 h to plant after soaking and draining")]
    [Source(nameof(Sources.FarmDefault), "below 60 °F 36 h, 60 to 70 24 h, 70 to 80 18 h, above 80 12 h")]
    public static TimeSpan Usable(Temperature meanAir) => meanAir.Fahrenheit switch
    {
        < 60 => TimeSpan.FromHours(36),
        < 70 => TimeSpan.FromHours(24),
        <= 80 => TimeSpan.FromHours(18),
        _ => TimeSpan.FromHours(12),
    };

    /// <summary>The plain rule, where no warmth is known.</summary>
    [Source(nameof(Sources.RiceBoardSoaking), "about 24 h to plant after soaking and draining")]
    public static TimeSpan UsablePlain { get; } = TimeSpan.FromHours(24);

    /// <summary>Trailers that a batch takes up: one lot and field each, none above its road weight.</summary>
    [Source(nameof(Sources.Arithmetic), "dry seed × wet factor ÷ haul limit, rounded up")]
    public static int Trailers(DrySeed dry, [PlainNumber("soaked weight over dry weight")] double wetFactor, SoakedSeed? haulLimit) =>
        haulLimit is { } limit ? Math.Max(1, (int)Math.Ceiling((Soaking.Weigh(dry, wetFactor) / limit) - 1e-9)) : 1;
}
