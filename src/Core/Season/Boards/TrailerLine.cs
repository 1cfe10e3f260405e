using Watersown.Seed;
using Watersown.Schedule.Sheets;

namespace Watersown.Season.Boards;

/// <summary>One trailer on the board.</summary>
/// <param name="Number">Its number.</param>
public sealed record TrailerLine(string Number)
{
    public string? Batch { get; init; }

    public string? Variety { get; init; }

    /// <summary>Dry seed in it.</summary>
    public DrySeed? Dry { get; init; }

    /// <summary>The same soaked.</summary>
    public SoakedSeed? Soaked { get; init; }

    public bool Weighed { get; init; }

    /// <summary>Field codes it is for.</summary>
    public ImmutableArray<string> Fields { get; init; } = [];

    public string? Place { get; init; }

    public DateTimeOffset? At { get; init; }

    /// <summary>Every trailer that marks or live batches tell of, by number.</summary>
    public static ImmutableArray<TrailerLine> Of(SeasonBook book)
    {
        var live = book.State.Batches.Where(b => book.Batch(b.Code)?.Place is not (BatchPlace.Sown or BatchPlace.Dumped)).ToImmutableArray();
        var numbers = book.Trailers.Select(t => t.Number).Concat(live.SelectMany(b => b.Trailers)).Distinct(StringComparer.OrdinalIgnoreCase);
        return [.. numbers.Select(n => Of(book, live, n)).OrderBy(t => t.Number.Length).ThenBy(t => t.Number, StringComparer.Ordinal)];
    }

    private static TrailerLine Of(SeasonBook book, ImmutableArray<SoakBatch> live, string number)
    {
        var told = book.Trailer(number);
        var batch = told?.Batch is { } code ? book.State.Batches.FirstOrDefault(b => b.Code == code) : live.FirstOrDefault(b => b.Trailers.Contains(number, StringComparer.OrdinalIgnoreCase));
        var factor = FlightSheets.Factor(book.State, batch, book.State.Lots.FirstOrDefault(l => l.Code == batch?.Lot)).Factor;
        // One batch in several trailers: only a scale can say how much sits in each.
        var whole = batch is { Trailers.Length: <= 1 } ? book.Batch(batch.Code)?.Remaining ?? batch.Dry : (DrySeed?)null;
        var soaked = told?.Soaked ?? (whole is { } dry ? Soaking.Weigh(dry, factor) : null);
        return new TrailerLine(number)
        {
            Batch = told?.Batch ?? batch?.Code,
            Variety = batch?.Variety,
            Soaked = soaked,
            Dry = soaked is { } wet ? Soaking.DryOf(wet, factor) : null,
            Weighed = told?.Soaked is not null,
            Fields = told?.Field is { } field ? [field] : batch?.MeantFor ?? [],
            Place = told?.Place,
            At = told?.At,
        };
    }
}
