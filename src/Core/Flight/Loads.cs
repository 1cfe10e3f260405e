namespace Watersown.Flight;

/// <summary>How the seed of one job goes into the hopper.</summary>
/// <param name="Exact">Loads if part of a load could be flown; a plain ratio.</param>
/// <param name="Count">Equal loads: the next whole number.</param>
/// <param name="Each">Soaked weight of each equal load.</param>
/// <param name="DryEach">The dry seed in each.</param>
public sealed record LoadPlan([property: PlainNumber("loads, in parts")] double Exact, int Count, SoakedSeed Each, DrySeed DryEach)
{
    /// <summary>How full the last load would be if all the others were filled to the limit.</summary>
    public required Fraction LastIfFilled { get; init; }

    /// <summary>Soaked weight of each load with one load fewer; above the planning limit by definition, and none where there is only one.</summary>
    public SoakedSeed? EachWithOneFewer { get; init; }
}

/// <summary>Splits a job's seed into loads. Knows weights only, not what is in the hopper.</summary>
public static class Loads
{
    // Floating-point dust on a whole number of loads must not cost a flight.
    private const double Dust = 1e-9;

    /// <summary>
    /// Equal loads, none above the limit. Both weights are soaked weights: what the hopper holds.
    /// </summary>
    /// <param name="dry">The job's dry seed; above zero.</param>
    /// <param name="wetFactor">Soaked weight over dry weight; 1 for seed flown dry.</param>
    /// <param name="limit">Most soaked seed in a load; above zero.</param>
    [Source(nameof(Sources.Arithmetic), "equal loads: the next whole number of limit-sized loads")]
    public static LoadPlan Equal(DrySeed dry, [PlainNumber("soaked weight over dry weight")] double wetFactor, SoakedSeed limit)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(dry.Kilograms, 0, nameof(dry));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(wetFactor, 0);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(limit.Kilograms, 0, nameof(limit));
        var soaked = Seed.Soaking.Weigh(dry, wetFactor);
        var exact = soaked / limit;
        var count = Math.Max(1, (int)Math.Ceiling(exact - Dust));
        return new LoadPlan(exact, count, soaked / count, dry / count)
        {
            LastIfFilled = Fraction.FromShare(Math.Clamp(exact - (count - 1), 0, 1)),
            EachWithOneFewer = count > 1 ? soaked / (count - 1) : null,
        };
    }
}
