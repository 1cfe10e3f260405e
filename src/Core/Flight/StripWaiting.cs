namespace Watersown.Flight;

/// <summary>Aeroplanes that fly out and come back to one loader.</summary>
/// <param name="Aircraft">How many; 1 or more.</param>
/// <param name="Flight">From leaving the loader to coming back, for one load.</param>
/// <param name="Load">At the loader, for one load.</param>
public sealed record LoaderRound(int Aircraft, TimeSpan Flight, TimeSpan Load);

/// <summary>How the loader and the aeroplanes spend their time in the long run.</summary>
/// <param name="AtStrip">Share of time with 0, 1, 2 … aeroplanes at the strip.</param>
/// <param name="LoadsPerHour">Loads that leave in an hour.</param>
/// <param name="Wait">Mean wait before loading begins.</param>
public sealed record LoaderState(
    ImmutableArray<Fraction> AtStrip,
    [property: PlainNumber("loads in an hour")] double LoadsPerHour,
    TimeSpan Wait)
{
    public Fraction Busy => Fraction.FromShare(1 - AtStrip[0].Share);

    /// <summary>Mean number of aeroplanes waiting, the one at the loader not counted.</summary>
    [PlainNumber("aeroplanes")]
    public double Waiting => AtStrip.Select((share, n) => Math.Max(0, n - 1) * share.Share).Sum();

    /// <summary>Mean number of aeroplanes at the strip, waiting or loading.</summary>
    [PlainNumber("aeroplanes")]
    public double Present => AtStrip.Select((share, n) => n * share.Share).Sum();
}

/// <summary>Loads an hour when several aeroplanes share one loader: irregular and clockwork, the truth between them.</summary>
public static class StripWaiting
{
    /// <summary>
    /// Flight and loading times scattered at random (exponential about their means): the low end of the band.
    /// </summary>
    [Source(nameof(Sources.FiniteQueue), "finite calling population, one server; P0 and Lq re-derived from the balance of states")]
    public static LoaderState Random(LoaderRound round)
    {
        Require(round);
        // r load over flight time; weights N!/(N-n)! r^n of n aeroplanes at the strip.
        double r = round.Load / round.Flight, weight = 1, sum = 1;
        var weights = new double[round.Aircraft + 1];
        weights[0] = 1;
        for (var n = 1; n <= round.Aircraft; n++)
        {
            weight *= (round.Aircraft - n + 1) * r;
            weights[n] = weight;
            sum += weight;
        }

        ImmutableArray<Fraction> shares = [.. weights.Select(w => Fraction.FromShare(w / sum))];
        var state = new LoaderState(shares, (1 - shares[0].Share) / round.Load.TotalHours, TimeSpan.Zero);
        return state with { Wait = TimeSpan.FromHours(state.Waiting / state.LoadsPerHour) };
    }

    /// <summary>Every flight and every loading exactly on its mean: the high end of the band.</summary>
    [Source(nameof(Sources.Arithmetic), "min(N / (F + s), 1 / s)")]
    [return: PlainNumber("loads in an hour")]
    public static double Clockwork(LoaderRound round)
    {
        Require(round);
        return Math.Min(round.Aircraft / (round.Flight + round.Load).TotalHours, 1 / round.Load.TotalHours);
    }

    private static void Require(LoaderRound round)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(round.Aircraft, 1, nameof(round));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(round.Flight, TimeSpan.Zero, nameof(round));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(round.Load, TimeSpan.Zero, nameof(round));
    }
}
