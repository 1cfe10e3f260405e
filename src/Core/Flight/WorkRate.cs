namespace Watersown.Flight;

/// <summary>What decides how fast an aeroplane gets over the land, at the rate as loaded.</summary>
public sealed record SowingRound
{
    public required SoakedRate Rate { get; init; }

    public required SoakedSeed Load { get; init; }

    /// <summary>Loading, taxi, take-off and landing for each load.</summary>
    public required TimeSpan Turnaround { get; init; }

    /// <summary>Mean distance from strip to field, one way.</summary>
    public required Length Ferry { get; init; }

    public required Speed FerrySpeed { get; init; }

    /// <summary>Mean distance from one field to the next.</summary>
    public Length BetweenFields { get; init; }

    public required Area Field { get; init; }

    public required TimeSpan Turn { get; init; }

    public required Length Swath { get; init; }

    /// <summary>Mean length of a pass.</summary>
    public required Length Pass { get; init; }

    /// <summary>Ground speed while sowing.</summary>
    public required Speed Sowing { get; init; }
}

/// <summary>Time that one hectare takes, by what it goes into.</summary>
public sealed record HectareTime(TimeSpan Loading, TimeSpan Ferrying, TimeSpan Moving, TimeSpan Turning, TimeSpan Sowing)
{
    public TimeSpan Total => Loading + Ferrying + Moving + Turning + Sowing;

    public AreaRate Rate => AreaRate.FromSquareMetersPerSecond(10_000 / Total.TotalSeconds);
}

/// <summary>The same work counted in whole passes and whole loads on one rectangular field.</summary>
/// <param name="Passes">Passes over the field.</param>
/// <param name="PerPass">Soaked seed laid on one pass.</param>
/// <param name="PassesPerLoad">Whole passes that one load makes.</param>
/// <param name="Loads">Loads flown.</param>
/// <param name="Time">Time on the field, loading and ferry in it.</param>
public sealed record WholePasses(int Passes, SoakedSeed PerPass, int PassesPerLoad, int Loads, TimeSpan Time)
{
    /// <summary>The smallest load that would make one more whole pass.</summary>
    public SoakedSeed NextLoad => PerPass * (PassesPerLoad + 1);
}

/// <summary>How much land an aeroplane sows in an hour when everything is counted.</summary>
public static class WorkRate
{
    // Floating-point dust must neither add a pass nor lose one.
    private const double Dust = 1e-9;

    /// <summary>
    /// Mean time for each hectare over many loads; valid when part of a pass can be flown on a load and nothing waits.
    /// </summary>
    [Source(nameof(Sources.Baltin1959), "t = 10⁴ [Tr Q/Qf + 2 a Q/(Vf Qf) + C/(Vf F) + Tw/(S L) + 1/(Vs S)]")]
    public static HectareTime Of(SowingRound round)
    {
        var hectare = Area.FromHectares(1);
        var loads = (round.Rate * hectare) / round.Load;
        var passes = hectare / (round.Swath * round.Pass);
        return new HectareTime(
            round.Turnaround * loads,
            2 * loads * (round.Ferry / round.FerrySpeed),
            (round.BetweenFields / round.FerrySpeed) * (hectare / round.Field),
            round.Turn * passes,
            (round.Pass / round.Sowing) * passes);
    }

    /// <summary>
    /// One rectangular field, its width the field over the pass length, every load making whole passes only. None where
    /// a load does not reach over one pass.
    /// </summary>
    [Source(nameof(Sources.WholePassCount), "T = n L/Vs + (n − loads) Tw + loads (2 a/Vf + Tr)")]
    public static WholePasses? ByWholePasses(SowingRound round)
    {
        var passes = Math.Max(1, (int)Math.Ceiling((round.Field / (round.Pass * round.Swath)) - Dust));
        var perPass = round.Rate * (round.Pass * round.Swath);
        var perLoad = (int)Math.Min(passes, Math.Floor((round.Load / perPass) + Dust));
        if (perLoad < 1) return null;
        var loads = (passes + perLoad - 1) / perLoad;
        var time = (passes * (round.Pass / round.Sowing))
            + ((passes - loads) * round.Turn)
            + (loads * ((2 * (round.Ferry / round.FerrySpeed)) + round.Turnaround));
        return new WholePasses(passes, perPass, perLoad, loads, time);
    }
}
