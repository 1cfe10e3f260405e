namespace Watersown.Seed;

/// <summary>Seed rates: how much dry seed a stand asks for, and how many seeds a rate lays down.</summary>
public static class Seeding
{
    private const double KilogramsPerPound = 0.45359237;

    /// <summary>
    /// Dry rate for a stand goal. Germination is the tag's; establishment is the share of live seeds that become plants
    /// in the field, 0.35 to 0.55 in common practice. As uncertain as that share: count the stand and learn your own.
    /// </summary>
    [Source(nameof(Sources.Definition), "rate = plants / (seeds a pound × germination × establishment)")]
    public static SeedRate RateFor(PlantDensity goal, [PlainNumber("seeds in one pound")] double seedsPerPound, Fraction germination, Fraction establishment) =>
        Weight(SeedsFor(goal, germination, establishment), seedsPerPound);

    /// <summary>Seeds to sow for a stand goal.</summary>
    [Source(nameof(Sources.Definition), "seeds = plants / (germination × establishment)")]
    public static PlantDensity SeedsFor(PlantDensity goal, Fraction germination, Fraction establishment)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(germination.Share, 0, nameof(germination));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(establishment.Share, 0, nameof(establishment));
        return goal / (germination * establishment).Share;
    }

    /// <summary>Seeds laid down by a dry rate.</summary>
    [Source(nameof(Sources.Definition), "seeds = rate × seeds a pound")]
    public static PlantDensity SeedsSown(SeedRate rate, [PlainNumber("seeds in one pound")] double seedsPerPound) =>
        PlantDensity.FromPerSquareMeter(rate.KilogramsPerSquareMeter * seedsPerPound / KilogramsPerPound);

    /// <summary>Seeds in a pound of dry seed, from the weight of 1,000 grains.</summary>
    /// <param name="thousand">Weight of 1,000 grains, dry; above zero.</param>
    [Source(nameof(Sources.Definition), "453.59237 g / (weight of 1,000 grains / 1,000)")]
    [return: PlainNumber("seeds in one pound")]
    public static double SeedsPerPound(DrySeed thousand)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(thousand.Kilograms, 0, nameof(thousand));
        return 1000 * KilogramsPerPound / thousand.Kilograms;
    }

    /// <summary>A rate meant for one germination, for seed whose tag says another: the same live seed on the ground.</summary>
    [Source(nameof(Sources.Definition), "live seed is the same: rate × expected / tag")]
    public static SeedRate ForTag(SeedRate rate, Fraction expected, Fraction tag)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(tag.Share, 0, nameof(tag));
        return rate * (expected.Share / tag.Share);
    }

    private static SeedRate Weight(PlantDensity seeds, double seedsPerPound)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(seedsPerPound, 0);
        return SeedRate.FromKilogramsPerSquareMeter(seeds.PerSquareMeter / seedsPerPound * KilogramsPerPound);
    }
}
