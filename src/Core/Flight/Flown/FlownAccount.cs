namespace Watersown.Flight.Flown;

/// <summary>What is known of one sowing from the track, the trailer and the invoice.</summary>
/// <param name="Net">Net land.</param>
/// <param name="Flown">Land flown over at least once.</param>
/// <param name="FlownError">How far that can be off, either way.</param>
public sealed record FlownAccount(Area Net, Area Flown, Area FlownError)
{
    /// <summary>The sum of seed in and seed left; none while nobody told what was left.</summary>
    public SownAnswer? Seed { get; init; }

    /// <summary>Acres on the invoice.</summary>
    public Area? BilledLand { get; init; }

    /// <summary>Soaked seed on the invoice.</summary>
    public SoakedSeed? BilledSeed { get; init; }
}

/// <summary>Two figures of land held against each other.</summary>
/// <param name="Told">The one.</param>
/// <param name="Found">The other.</param>
/// <param name="Error">How far apart they may lie and still agree.</param>
public sealed record LandMatch(Area Told, Area Found, Area Error)
{
    /// <summary>The first less the second.</summary>
    public Area Gap => Told - Found;

    public bool Agree => Math.Abs(Gap.SquareMeters) <= Error.SquareMeters;
}

/// <summary>Two weights of soaked seed held against each other.</summary>
/// <param name="Told">The one.</param>
/// <param name="Found">The other.</param>
/// <param name="Error">How far apart they may lie and still agree.</param>
public sealed record SeedMatch(SoakedSeed Told, SoakedSeed Found, SoakedSeed Error)
{
    public bool Agree => Math.Abs(Told.Kilograms - Found.Kilograms) <= Error.Kilograms;
}

/// <summary>What track, trailer and invoice say together. Dry and soaked rates stand side by side and are never mixed.</summary>
public sealed record FlownMatches
{
    /// <summary>Dry seed for each acre that was flown; none while the seed is not known.</summary>
    public SeedRate? Dry { get; init; }

    /// <summary>The same as it left the gate, soaked.</summary>
    public SoakedRate? Soaked { get; init; }

    /// <summary>Acres billed against acres flown.</summary>
    public LandMatch? Billed { get; init; }

    /// <summary>Land that the missing seed would have sown against land that was skipped.</summary>
    public LandMatch? Missing { get; init; }

    /// <summary>Seed billed against seed that went out.</summary>
    public SeedMatch? Seed { get; init; }

    public required Working Working { get; init; }
}

/// <summary>Holds track, trailer and invoice against each other.</summary>
public static class FlownAccounts
{
    /// <summary>An invoice gives whole acres.</summary>
    [Source(nameof(Sources.FarmDefault), "half an acre")]
    public static Area InvoiceError { get; } = Area.FromAcres(0.5);

    /// <summary>What agrees within the errors, and what does not.</summary>
    [Source(nameof(Sources.MassBalance), "seed out over land flown; seed missing over the rate asked for; errors added")]
    public static FlownMatches Of(FlownAccount account)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(account.Net.SquareMeters, 0, nameof(account));
        var working = Working.Empty
            .Given("A", "net land", account.Net.Acres, "ac", "track's field")
            .Given("F", "land flown over at least once", account.Flown.Acres, "ac", "track")
            .Given("eF", "that can be off by", account.FlownError.Acres, "ac", "track");
        var matches = new FlownMatches { Working = working };
        if (account.BilledLand is { } billed)
        {
            matches = matches with
            {
                Billed = new LandMatch(billed, account.Flown, account.FlownError + InvoiceError),
                Working = matches.Working.Given("B", "acres billed", billed.Acres, "ac", "invoice").Step("b", "billed beyond what was flown", (billed - account.Flown).Acres, "ac", "B − F, within eF + 0.5", Sources.Arithmetic),
            };
        }

        if (account.Seed is not { } seed) return matches;
        var (flown, dry) = (account.Flown > Area.Zero ? account.Flown : account.Net, seed.OutDry);
        var wanted = seed.Seed.Asked * account.Net;
        var missing = account.Net * (1 - (dry / wanted));
        var skipped = account.Net - account.Flown;
        var factorError = seed.Seed.FactorWeighed ? SeedOnScale.WeighedFactorError : SeedOnScale.UsualFactorError;
        return matches with
        {
            Dry = SeedRate.FromKilogramsPerSquareMeter(dry.Kilograms / flown.SquareMeters),
            Soaked = SoakedRate.FromKilogramsPerSquareMeter(seed.Out.Kilograms / flown.SquareMeters),
            Missing = new LandMatch(missing, skipped, (account.Net * seed.Error.Share) + account.FlownError),
            Seed = account.BilledSeed is { } weight ? new SeedMatch(weight, seed.Out, seed.Out * (2 * SeedOnScale.ScaleError.Share)) : null,
            Working = matches.Working
                .Given("O", "soaked seed that went out", seed.Out.Pounds, "lb wet", "trailer, in less left")
                .Given("w", "soaked weight over dry weight", seed.Seed.WetFactor, string.Empty, "can be off by " + Wording.Say.Number(factorError, 2))
                .Given("r0", "rate asked for", seed.Seed.Asked.PoundsPerAcre, "lb/ac dry", "field")
                .Step("rd", "dry seed on the land flown", dry.Pounds / flown.Acres, "lb/ac dry", "O / w / F", Sources.MassBalance)
                .Step("rw", "soaked seed on the land flown", seed.Out.Pounds / flown.Acres, "lb/ac wet", "O / F", Sources.MassBalance)
                .Step("m", "land that the missing seed would have sown", missing.Acres, "ac", "A (1 − O / (w r0 A))", Sources.MassBalance)
                .Step("k", "land skipped", skipped.Acres, "ac", "A − F", Sources.Arithmetic)
                .Step("g", "they may differ by", ((account.Net * seed.Error.Share) + account.FlownError).Acres, "ac", "A × error of scale and factor + eF", Sources.FarmDefault),
        };
    }
}
