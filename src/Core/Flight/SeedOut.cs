using Watersown.Seed;

namespace Watersown.Flight;

/// <summary>What really went out over a field: seed weighed in less seed left over.</summary>
public sealed record SeedOut
{
    /// <summary>A road scale and a wet factor together are off by so much, in common practice.</summary>
    [Source(nameof(Sources.FarmDefault), "scale and wet factor together, 2 %")]
    public static Fraction Error { get; } = Fraction.FromPercent(2);

    public required SoakedSeed In { get; init; }

    public required SoakedSeed Left { get; init; }

    public required SoakedSeed Out { get; init; }

    public required DrySeed Dry { get; init; }

    public required Area Land { get; init; }

    /// <summary>Dry rate asked for.</summary>
    public required SeedRate Asked { get; init; }

    /// <summary>Dry rate if all of the land was sown evenly.</summary>
    public required SeedRate Laid { get; init; }

    /// <summary>Land missed if the rate was right; none where more went out than was asked for.</summary>
    public Area? Missed { get; init; }

    /// <summary>How far the rate is from what was asked: below zero for less.</summary>
    [PlainNumber("share of the rate asked for; below zero for less")]
    public required double Off { get; init; }

    /// <summary>The difference is within what scale and wet factor can be off.</summary>
    public bool WithinError => Math.Abs(Off) <= Error.Share;

    public required Working Working { get; init; }
}

/// <summary>Did we sow what we meant?</summary>
public static class SeedOuts
{
    /// <summary>The sum of one sowing.</summary>
    /// <param name="weighed">Soaked seed weighed in.</param>
    /// <param name="left">Soaked seed left over; not above <paramref name="weighed"/>.</param>
    /// <param name="wetFactor">Soaked weight over dry weight.</param>
    /// <param name="land">Land that was to be sown; above zero.</param>
    /// <param name="asked">Dry rate asked for; above zero.</param>
    [Source(nameof(Sources.MassBalance), "(in − left) / wet factor / acres; (asked × acres − out) / asked")]
    public static SeedOut Of(SoakedSeed weighed, SoakedSeed left, [PlainNumber("soaked weight over dry weight")] double wetFactor, Area land, SeedRate asked)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(land.SquareMeters, 0, nameof(land));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(asked.KilogramsPerSquareMeter, 0, nameof(asked));
        var gone = weighed - left;
        var dry = Soaking.DryOf(gone, wetFactor);
        var laid = SeedRate.FromKilogramsPerSquareMeter(dry.Kilograms / land.SquareMeters);
        var missed = Area.FromSquareMeters(land.SquareMeters - (dry.Kilograms / asked.KilogramsPerSquareMeter));
        return new SeedOut
        {
            In = weighed,
            Left = left,
            Out = gone,
            Dry = dry,
            Land = land,
            Asked = asked,
            Laid = laid,
            Missed = missed > Area.Zero ? missed : null,
            Off = (laid / asked) - 1,
            Working = Working.Empty
                .Given("W", "weighed in", weighed.Pounds, "lb wet", "scale ticket, or the sheet")
                .Given("L", "left in the trailer", left.Pounds, "lb wet", "scale or eye")
                .Given("F", "soaked weight over dry weight", wetFactor, string.Empty, "seed")
                .Given("A", "land to be sown", land.Acres, "ac", "field")
                .Given("r", "dry rate asked for", asked.PoundsPerAcre, "lb/ac dry", "field")
                .Step("O", "out", gone.Pounds, "lb wet", "W − L", Sources.MassBalance)
                .Step("D", "dry seed out", dry.Pounds, "lb dry", "O / F", Sources.MassBalance)
                .Step("q", "if all was sown evenly", laid.PoundsPerAcre, "lb/ac dry", "D / A", Sources.Arithmetic)
                .Step("M", "missed, if the rate was right", Math.Max(0, missed.Acres), "ac", "A − D / r", Sources.Arithmetic),
        };
    }
}
