namespace Watersown.Water.Flood;

/// <summary>How well a flood is known: each may be off by so much to both sides, anywhere in between as likely.</summary>
/// <param name="Flow">Share of the flow let in.</param>
/// <param name="Loss">Share of what covered ground loses.</param>
/// <param name="TakeUp">Share of what the ground drinks as it gets wet.</param>
public sealed record FloodDoubt(Fraction Flow, Fraction Loss, Fraction TakeUp)
{
    private static readonly double[] Quarters = [-0.75, -0.25, 0.25, 0.75];

    /// <summary>Sixty-four futures, each as likely: the middles of the quarters of all three.</summary>
    public ImmutableArray<FloodFuture> Futures() =>
    [
        .. from flow in Quarters
           from loss in Quarters
           from takeUp in Quarters
           select new FloodFuture { Flow = 1 + (Flow.Share * flow), Loss = 1 + (Loss.Share * loss), TakeUp = 1 + (TakeUp.Share * takeUp) },
    ];
}

/// <summary>When a field is full, over futures that are all as likely.</summary>
/// <param name="Early">One in ten is full sooner.</param>
/// <param name="Middle">Half of them are full by then; none where half of them never are.</param>
/// <param name="Late">One in ten is full later, or never; none where more than one in ten never is.</param>
/// <param name="Never">Share of them that are not full when the run ends.</param>
public sealed record FloodSpread(TimeSpan? Early, TimeSpan? Middle, TimeSpan? Late, Fraction Never)
{
    /// <summary>Runs a network in all futures that its doubt leaves open.</summary>
    /// <param name="network">Checks and what joins them.</param>
    /// <param name="doubt">How well it is known.</param>
    /// <param name="span">How long to wait for the last check.</param>
    [Source(nameof(Sources.WaterBalance), "one run for each future; their tenth, their half and nine tenths of them")]
    public static FloodSpread Of(FloodNetwork network, FloodDoubt doubt, TimeSpan span) => Of(FloodBatch.Run(network, doubt.Futures(), span).Select(r => r.AllFull));

    /// <summary>Sorts what all futures tell.</summary>
    /// <param name="full">When each was full; none where it never was.</param>
    [Source(nameof(Sources.Arithmetic), "the tenth, the half and nine tenths of all, those that never are full last")]
    public static FloodSpread Of(IEnumerable<TimeSpan?> full)
    {
        var sorted = full.OrderBy(f => f ?? TimeSpan.MaxValue).ToImmutableArray();
        TimeSpan? After(double share) => sorted[Math.Min(sorted.Length - 1, (int)(share * sorted.Length))];
        return new FloodSpread(After(0.1), After(0.5), After(0.9), Fraction.FromShare(sorted.Count(f => f is null) / (double)sorted.Length));
    }
}
