namespace Watersown.Seed;

/// <summary>Seed taking up water: what a dry weight weighs once soaked and drained.</summary>
public static class Soaking
{
    /// <summary>
    /// Soaked weight over dry weight, from moisture before and after on a wet basis. Water on the outside of the seed is
    /// not in it; a weighed sample always beats it.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Moisture after is below before, or 1 or more.</exception>
    [Source(nameof(Sources.MassBalance))]
    [return: PlainNumber("soaked weight over dry weight")]
    public static double WetFactor(Fraction before, Fraction after)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(after.Share, 1, nameof(after));
        ArgumentOutOfRangeException.ThrowIfLessThan(after.Share, before.Share, nameof(after));
        return (1 - before.Share) / (1 - after.Share);
    }

    /// <summary>What dry seed weighs once soaked and drained.</summary>
    [Source(nameof(Sources.MassBalance))]
    public static SoakedSeed Weigh(DrySeed dry, [PlainNumber("soaked weight over dry weight")] double wetFactor) =>
        SoakedSeed.FromKilograms(dry.Kilograms * wetFactor);

    /// <summary>The dry seed in a soaked weight.</summary>
    [Source(nameof(Sources.MassBalance))]
    public static DrySeed DryOf(SoakedSeed soaked, [PlainNumber("soaked weight over dry weight")] double wetFactor) =>
        DrySeed.FromKilograms(soaked.Kilograms / wetFactor);

    /// <summary>The rate to set the gate to for a dry rate.</summary>
    [Source(nameof(Sources.MassBalance))]
    public static SoakedRate Rate(SeedRate dry, [PlainNumber("soaked weight over dry weight")] double wetFactor) =>
        SoakedRate.FromKilogramsPerSquareMeter(dry.KilogramsPerSquareMeter * wetFactor);

    /// <summary>Moisture over all of the grain, from moisture over its dry matter as some laboratories print it.</summary>
    [Source(nameof(Sources.Definition), "m = M / (1 + M)")]
    public static Fraction WetBasis(Fraction dryBasis) => Fraction.FromShare(dryBasis.Share / (1 + dryBasis.Share));
}
