using Watersown.Land;
using Watersown.Seed;

namespace Watersown.Flight;

/// <summary>Soaked seed on the scale against what the land is to get.</summary>
/// <param name="Ticket">Scale ticket, all trailers together; above zero.</param>
/// <param name="Wanted">Dry seed the land is to get; above zero.</param>
/// <param name="Land">The land; above zero.</param>
public sealed record WeighedSeed(SoakedSeed Ticket, DrySeed Wanted, Area Land)
{
    /// <summary>Soaked weight over dry weight, as known without this ticket; above zero.</summary>
    [PlainNumber("soaked weight over dry weight")]
    public required double WetFactor { get; init; }

    /// <summary>That factor was weighed; otherwise it is the usual one.</summary>
    public bool FactorWeighed { get; init; }

    /// <summary>Most soaked seed in a load; above zero.</summary>
    public required SoakedSeed Limit { get; init; }

    /// <summary>Printed weights are whole numbers of these.</summary>
    public UnitSystem Units { get; init; }
}

/// <summary>Weights as they are printed, in whole pounds or kilograms, so that they add up on paper.</summary>
/// <param name="Wet">On the scale.</param>
/// <param name="Dry">Dry seed in it.</param>
/// <param name="Wanted">Dry seed asked for.</param>
public sealed record WholeWeights(int Wet, int Dry, int Wanted)
{
    /// <summary>What is missing of the dry seed; below zero it is more than asked.</summary>
    public int Short => Wanted - Dry;
}

/// <summary>What a scale ticket means for the land.</summary>
public sealed record ScaleAnswer
{
    public required WeighedSeed Seed { get; init; }

    /// <summary>What the scale should have shown.</summary>
    public required SoakedSeed Expected { get; init; }

    public required DrySeed Dry { get; init; }

    public required WholeWeights Whole { get; init; }

    /// <summary>Rate asked for.</summary>
    public required SeedRate Asked { get; init; }

    /// <summary>Rate if it is spread over all of the land.</summary>
    public required SeedRate Spread { get; init; }

    /// <summary>That rate over the one asked for, less one; below zero where it is thinner.</summary>
    [PlainNumber("share of the rate asked for, below zero where less")]
    public required double Change { get; init; }

    /// <summary>Land that it covers at the rate asked for; not above the land.</summary>
    public required Area AtRate { get; init; }

    /// <summary>Equal whole loads that add up to the ticket.</summary>
    public required ImmutableArray<SoakedSeed> Loads { get; init; }

    /// <summary>How far scale and wet factor can be off together, as dry seed.</summary>
    public required DrySeed Error { get; init; }

    /// <summary>The gap is no larger than that.</summary>
    public required bool WithinError { get; init; }

    /// <summary>The wet factor, if all the seed asked for were there after all.</summary>
    [PlainNumber("soaked weight over dry weight")]
    public required double FactorIfAllThere { get; init; }

    public required Working Working { get; init; }
}

/// <summary>Reads a scale ticket: how much dry seed there is, what it sows, and whether the gap means anything.</summary>
public static class SeedOnScale
{
    /// <summary>How far a truck scale can be off.</summary>
    [Source(nameof(Sources.FarmDefault), "half a percent of the weight")]
    public static Fraction ScaleError { get; } = Fraction.FromPercent(0.5);

    /// <summary>How far a usual wet factor can be off. Seed taken from 26 to 34 % moisture weighs 1.18 to 1.32 of its dry weight.</summary>
    [Source(nameof(Sources.FarmDefault), "0.03 for a usual factor")]
    [PlainNumber("soaked weight over dry weight")]
    public const double UsualFactorError = 0.03;

    /// <summary>How far a factor weighed from the same lot can be off.</summary>
    [Source(nameof(Sources.FarmDefault), "0.01 for a factor weighed before")]
    [PlainNumber("soaked weight over dry weight")]
    public const double WeighedFactorError = 0.01;

    /// <summary>Dry seed that a soaked weight can be off by: the errors of scale and factor added.</summary>
    [Source(nameof(Sources.MassBalance), "D (scale error + factor error / factor)")]
    public static DrySeed Error(SoakedSeed ticket, [PlainNumber("soaked weight over dry weight")] double wetFactor, bool factorWeighed) =>
        Soaking.DryOf(ticket, wetFactor) * (ScaleError.Share + ((factorWeighed ? WeighedFactorError : UsualFactorError) / wetFactor));

    /// <summary>What the ticket means.</summary>
    [Source(nameof(Sources.MassBalance), "dry = ticket / wet factor; what is missing = wanted − dry")]
    public static ScaleAnswer Of(WeighedSeed seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(seed.Ticket.Kilograms, 0, nameof(seed));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(seed.Wanted.Kilograms, 0, nameof(seed));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(seed.Land.SquareMeters, 0, nameof(seed));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(seed.WetFactor, 0, nameof(seed));
        var dry = Soaking.DryOf(seed.Ticket, seed.WetFactor);
        var (asked, spread) = (Over(seed.Wanted, seed.Land), Over(dry, seed.Land));
        var error = Error(seed.Ticket, seed.WetFactor, seed.FactorWeighed);
        var atRate = seed.Land * (dry / seed.Wanted);
        var loads = Loads(seed);
        return new ScaleAnswer
        {
            Seed = seed,
            Expected = Soaking.Weigh(seed.Wanted, seed.WetFactor),
            Dry = dry,
            Whole = new WholeWeights(Whole(seed.Ticket.Kilograms, seed.Ticket.Pounds, seed.Units), Whole(dry.Kilograms, dry.Pounds, seed.Units), Whole(seed.Wanted.Kilograms, seed.Wanted.Pounds, seed.Units)),
            Asked = asked,
            Spread = spread,
            Change = (dry / seed.Wanted) - 1,
            AtRate = atRate < seed.Land ? atRate : seed.Land,
            Loads = loads,
            Error = error,
            WithinError = Math.Abs(seed.Wanted.Kilograms - dry.Kilograms) <= error.Kilograms,
            FactorIfAllThere = seed.Ticket.Kilograms / seed.Wanted.Kilograms,
            Working = Show(seed, dry, asked, spread, error, loads),
        };
    }

    internal static SeedRate Over(DrySeed dry, Area land) => SeedRate.FromKilogramsPerSquareMeter(dry.Kilograms / land.SquareMeters);

    private static ImmutableArray<SoakedSeed> Loads(WeighedSeed seed)
    {
        var metric = seed.Units == UnitSystem.Metric;
        var whole = Whole(seed.Ticket.Kilograms, seed.Ticket.Pounds, seed.Units);
        var count = Math.Max(1, (int)Math.Ceiling((seed.Ticket / seed.Limit) - 1e-9));
        return [.. LoadTally.Shares(whole, count).Select(w => metric ? SoakedSeed.FromKilograms(w) : SoakedSeed.FromPounds(w))];
    }

    private static int Whole(double kilograms, double pounds, UnitSystem units) => (int)Math.Round(units == UnitSystem.Metric ? kilograms : pounds, MidpointRounding.AwayFromZero);

    private static Working Show(WeighedSeed seed, DrySeed dry, SeedRate asked, SeedRate spread, DrySeed error, ImmutableArray<SoakedSeed> loads) => Working.Empty
        .Given("W", "on the scale", seed.Ticket.Pounds, "lb wet", "scale ticket")
        .Given("F", "soaked weight over dry weight", seed.WetFactor, string.Empty, seed.FactorWeighed ? "weighed, same lot" : "farm's usual")
        .Given("D0", "asked for", seed.Wanted.Pounds, "lb dry", "rate × acres")
        .Given("A", "land", seed.Land.Acres, "ac", "net acres")
        .Step("D", "dry seed in it", dry.Pounds, "lb dry", "W / F", Sources.MassBalance)
        .Step("s", "missing, or more than asked where below zero", (seed.Wanted - dry).Pounds, "lb dry", "D0 − D", Sources.Arithmetic)
        .Step("r", "over all of the land", spread.PoundsPerAcre, "lb/ac dry", "D / A", Sources.Arithmetic)
        .Step("a", "land at the rate asked for", dry.Pounds / asked.PoundsPerAcre, "ac", "D / (D0 / A)", Sources.Arithmetic)
        .Step("e", "scale and factor can be off by", error.Pounds, "lb dry", "D (0.005 + " + (seed.FactorWeighed ? "0.01" : "0.03") + " / F)", Sources.FarmDefault)
        .Step("n", "loads", loads.Length, string.Empty, "ceil(W / most in a load)", Sources.Arithmetic);
}
