using Watersown.Seed;

namespace Watersown.Season.FieldRecords;

/// <summary>Where the seed of one lot went, dry weight throughout: each step can hold no more than the one before.</summary>
/// <param name="Lot">Lot code.</param>
/// <param name="Soaked">Put under water.</param>
/// <param name="Sown">Told sown.</param>
/// <param name="Dumped">Thrown away.</param>
/// <param name="Left">Drained or soaking and still there.</param>
public sealed record SeedChain(string Lot, DrySeed Soaked, DrySeed Sown, DrySeed Dumped, DrySeed Left)
{
    // Scales and the wet factor leave about so much open. Common practice, no source.
    private const double Slack = 1.02;

    /// <summary>In hand when the farm was told, and what had been soaked by then; none where nobody said.</summary>
    public DrySeed? Bought { get; init; }

    /// <summary>Weighed on trailers, as dry seed; none where nothing was weighed.</summary>
    public DrySeed? Loaded { get; init; }

    public bool SoakedTooMuch => Bought is { } bought && Soaked > bought * Slack;

    public bool LoadedTooMuch => Loaded is { } loaded && loaded > Soaked * Slack;

    /// <summary>More is told sown, dumped and left than ever was soaked.</summary>
    public bool SpentTooMuch => Sown + Dumped + Left > Soaked * Slack;

    public bool Holds => !SoakedTooMuch && !LoadedTooMuch && !SpentTooMuch;

    /// <summary>One for each lot of which seed was soaked, in order of their codes.</summary>
    public static ImmutableArray<SeedChain> All(SeasonBook book) =>
    [
        .. book.Batches.Where(b => b.Batch is not null || b.Dry is not null).GroupBy(b => b.Lot ?? string.Empty, StringComparer.OrdinalIgnoreCase)
            .Select(g => Of(book, g.Key, [.. g])).OrderBy(c => c.Lot, StringComparer.Ordinal),
    ];

    private static SeedChain Of(SeasonBook book, string lot, ImmutableArray<BatchBook> batches)
    {
        var soaked = Sum(batches.Select(b => b.Dry ?? DrySeed.Zero));
        var codes = batches.Select(b => b.Code).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var told = book.Ground.Lots.FirstOrDefault(l => string.Equals(l.Code, lot, StringComparison.OrdinalIgnoreCase));
        var factor = told?.WetFactor ?? book.Ground.WetFactor;
        // A trailer weighed twice with one batch is one load; the last weight counts.
        var weighed = book.Story.Where(l => l.Standing == Standing.Stands).Select(l => l.Mark.Fact).OfType<TrailerSeen>()
            .Where(t => t is { Weighed: not null, Batch: { } batch } && codes.Contains(batch)).GroupBy(t => (t.Batch!.ToUpperInvariant(), t.Number)).Select(g => g.Last().Weighed!.Value).ToList();
        return new SeedChain(lot, soaked, Sum(batches.Select(b => b.Sown)), Sum(batches.Select(b => b.Dumped)), Sum(batches.Select(b => b.Remaining ?? DrySeed.Zero)))
        {
            Bought = told?.InHand is { } hand ? hand + Sum(book.Ground.Batches.Where(b => string.Equals(b.Lot, lot, StringComparison.OrdinalIgnoreCase)).Select(b => b.Dry)) : null,
            Loaded = weighed.Count == 0 ? null : Sum(weighed.Select(w => Soaking.DryOf(w, factor))),
        };
    }

    private static DrySeed Sum(IEnumerable<DrySeed> seed) => seed.Aggregate(DrySeed.Zero, (a, b) => a + b);
}
