using Watersown.Seed;

namespace Watersown.Flight;

/// <summary>What went into the trailer, what was left in it, and the land between.</summary>
/// <param name="In">Soaked seed in; above zero.</param>
/// <param name="Left">Soaked seed left; not above what went in.</param>
/// <param name="Land">Land sown; above zero.</param>
/// <param name="Asked">Dry rate asked for; above zero.</param>
public sealed record SownSeed(SoakedSeed In, SoakedSeed Left, Area Land, SeedRate Asked)
{
    [PlainNumber("soaked weight over dry weight")]
    public required double WetFactor { get; init; }

    public bool FactorWeighed { get; init; }
}

/// <summary>What leftover seed says of the sowing.</summary>
public enum SownVerdict
{
    /// <summary>Within what scale and wet factor can be off.</summary>
    AsMeant,

    /// <summary>More seed is left than can be explained: the gate was light, or a strip was skipped.</summary>
    Light,

    /// <summary>More went out than was asked for: the gate was too open, or a strip was sown twice.</summary>
    Heavy,
}

/// <summary>Seed in less seed left is seed out.</summary>
public sealed record SownAnswer
{
    public required SownSeed Seed { get; init; }

    public required SoakedSeed Out { get; init; }

    public required DrySeed OutDry { get; init; }

    /// <summary>Rate if all of the land got the same.</summary>
    public required SeedRate Rate { get; init; }

    /// <summary>Land that the seed left over would have sown at the rate asked for, what was brought over the need taken off.</summary>
    public required Area Missed { get; init; }

    /// <summary>That rate over the one asked for, less one.</summary>
    [PlainNumber("share of the rate asked for, below zero where less")]
    public required double Change { get; init; }

    /// <summary>How far off scale and factor can be, as a share of the rate.</summary>
    public required Fraction Error { get; init; }

    public required SownVerdict Verdict { get; init; }

    public required Working Working { get; init; }
}

/// <summary>Did the field get what was meant? A sum that raises the question; only a look at the field answers it.</summary>
public static class SeedLeftOver
{
    /// <summary>The sum of one sowing.</summary>
    [Source(nameof(Sources.MassBalance), "out = in − left; missed = left ÷ wet factor ÷ rate")]
    public static SownAnswer Of(SownSeed seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(seed.In.Kilograms, 0, nameof(seed));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(seed.Land.SquareMeters, 0, nameof(seed));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(seed.Asked.KilogramsPerSquareMeter, 0, nameof(seed));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(seed.WetFactor, 0, nameof(seed));
        var gone = seed.In > seed.Left ? seed.In - seed.Left : SoakedSeed.Zero;
        var dry = Soaking.DryOf(gone, seed.WetFactor);
        var wanted = seed.Asked * seed.Land;
        var (brought, left) = (Soaking.DryOf(seed.In, seed.WetFactor), Soaking.DryOf(seed.Left, seed.WetFactor));
        var spare = brought > wanted ? brought - wanted : DrySeed.Zero;
        var missed = left > spare ? seed.Land * ((left - spare) / wanted) : Area.Zero;
        var error = SeedOnScale.Error(seed.In, seed.WetFactor, seed.FactorWeighed) / wanted;
        var change = (dry / wanted) - 1;
        return new SownAnswer
        {
            Seed = seed,
            Out = gone,
            OutDry = dry,
            Rate = SeedOnScale.Over(dry, seed.Land),
            Missed = missed,
            Change = change,
            Error = Fraction.FromShare(error),
            Verdict = Math.Abs(change) <= error ? SownVerdict.AsMeant : change < 0 ? SownVerdict.Light : SownVerdict.Heavy,
            Working = Show(seed, gone, dry, missed, error),
        };
    }

    private static Working Show(SownSeed seed, SoakedSeed gone, DrySeed dry, Area missed, double error) => Working.Empty
        .Given("I", "in the trailer", seed.In.Pounds, "lb wet", "scale ticket, else plan")
        .Given("L", "left in it", seed.Left.Pounds, "lb wet", "told after sowing")
        .Given("F", "soaked weight over dry weight", seed.WetFactor, string.Empty, seed.FactorWeighed ? "weighed, same lot" : "farm's usual")
        .Given("A", "land sown", seed.Land.Acres, "ac", "net acres, or the part told")
        .Given("r0", "rate asked for", seed.Asked.PoundsPerAcre, "lb/ac dry", "field")
        .Step("O", "out", gone.Pounds, "lb wet", "I − L", Sources.MassBalance)
        .Step("D", "dry seed in it", dry.Pounds, "lb dry", "O / F", Sources.MassBalance)
        .Step("r", "over all of the land", dry.Pounds / seed.Land.Acres, "lb/ac dry", "D / A", Sources.Arithmetic)
        .Step("m", "or land missed at the rate asked for", missed.Acres, "ac", "(L / F − what was brought over the need) / r0", Sources.Arithmetic)
        .Step("e", "scale and factor can be off by", error * 100, "%", "of the seed asked for", Sources.FarmDefault);
}
