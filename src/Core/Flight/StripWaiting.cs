namespace Watersown.Flight;

/// <summary>Aeroplanes that fly out and come back to the loaders.</summary>
/// <param name="Aircraft">How many; 1 or more.</param>
/// <param name="Flight">From leaving the loader to coming back, for one load.</param>
/// <param name="Load">At the loader, for one load.</param>
public sealed record LoaderRound(int Aircraft, TimeSpan Flight, TimeSpan Load)
{
    /// <summary>Loaders that work side by side.</summary>
    public int Loaders { get; init; } = 1;
}

/// <summary>How the loader and the aeroplanes spend their time in the long run.</summary>
/// <param name="AtStrip">Share of time with 0, 1, 2 … aeroplanes at the strip.</param>
/// <param name="LoadsPerHour">Loads that leave in an hour.</param>
/// <param name="Wait">Mean wait before loading begins.</param>
public sealed record LoaderState(
    ImmutableArray<Fraction> AtStrip,
    [property: PlainNumber("loads in an hour")] double LoadsPerHour,
    TimeSpan Wait)
{
    public int Loaders { get; init; } = 1;

    /// <summary>Share of its time that a loader works.</summary>
    public Fraction Busy => Fraction.FromShare(AtStrip.Select((share, n) => Math.Min(n, Loaders) * share.Share).Sum() / Loaders);

    /// <summary>Mean number of aeroplanes waiting, those at a loader not counted.</summary>
    [PlainNumber("aeroplanes")]
    public double Waiting => AtStrip.Select((share, n) => Math.Max(0, n - Loaders) * share.Share).Sum();

    /// <summary>Mean number of aeroplanes at the strip, waiting or loading.</summary>
    [PlainNumber("aeroplanes")]
    public double Present => AtStrip.Select((share, n) => n * share.Share).Sum();
}

/// <summary>Loads an hour when several aeroplanes share the loaders: irregular and clockwork, the truth between them.</summary>
public static class StripWaiting
{
    /// <summary>
    /// Flight and loading times scattered at random (exponential about their means): the low end of the band.
    /// </summary>
    [Source(nameof(Sources.FiniteQueue), "finite calling population; P0 and Lq re-derived from the balance of states, several servers likewise")]
    public static LoaderState Random(LoaderRound round)
    {
        Require(round);
        // r load over flight time; weights of n aeroplanes at the strip, each made of the one before: (N - n + 1) r / min(n, c).
        double r = round.Load / round.Flight, weight = 1, sum = 1;
        var weights = new double[round.Aircraft + 1];
        weights[0] = 1;
        for (var n = 1; n <= round.Aircraft; n++)
        {
            weight *= (round.Aircraft - n + 1) * r / Math.Min(n, round.Loaders);
            weights[n] = weight;
            sum += weight;
        }

        ImmutableArray<Fraction> shares = [.. weights.Select(w => Fraction.FromShare(w / sum))];
        var state = new LoaderState(shares, 0, TimeSpan.Zero) { Loaders = round.Loaders };
        state = state with { LoadsPerHour = round.Loaders * state.Busy.Share / round.Load.TotalHours };
        return state with { Wait = TimeSpan.FromHours(state.Waiting / state.LoadsPerHour) };
    }

    /// <summary>Every flight and every loading exactly on its mean: the high end of the band.</summary>
    [Source(nameof(Sources.Arithmetic), "min(N / (F + s), c / s)")]
    [return: PlainNumber("loads in an hour")]
    public static double Clockwork(LoaderRound round)
    {
        Require(round);
        return Math.Min(round.Aircraft / (round.Flight + round.Load).TotalHours, round.Loaders / round.Load.TotalHours);
    }

    private static void Require(LoaderRound round)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(round.Aircraft, 1, nameof(round));
        ArgumentOutOfRangeException.ThrowIfLessThan(round.Loaders, 1, nameof(round));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(round.Flight, TimeSpan.Zero, nameof(round));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(round.Load, TimeSpan.Zero, nameof(round));
    }
}
