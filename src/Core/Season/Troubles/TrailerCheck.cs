using Watersown.Schedule;
using Watersown.Season.Boards;

namespace Watersown.Season.Troubles;

/// <summary>Whether the seed of a trailer may go onto a field.</summary>
public enum TrailerVerdict
{
    /// <summary>The varieties are the same.</summary>
    Passes,

    /// <summary>Something about trailer, seed or field is not known: somebody has to look.</summary>
    ToConfirm,

    /// <summary>The varieties differ: nothing is loaded.</summary>
    Stops,
}

/// <summary>What is missing where a trailer has to be confirmed.</summary>
public enum TrailerGap
{
    None,

    /// <summary>Nobody has told of a trailer with that number.</summary>
    Trailer,

    /// <summary>Nobody has said what is in it.</summary>
    Seed,

    /// <summary>Nobody has said what the field is to be sown with.</summary>
    Field,
}

/// <summary>A trailer keyed for a field: the seed in it against the seed that the field is for.</summary>
/// <param name="Trailer">The trailer's number, as keyed.</param>
/// <param name="Field">Field code.</param>
/// <param name="Verdict">What follows.</param>
public sealed record TrailerCheck(string Trailer, string Field, TrailerVerdict Verdict)
{
    public TrailerGap Gap { get; init; }

    /// <summary>Batch in the trailer.</summary>
    public string? Batch { get; init; }

    /// <summary>Variety of that batch.</summary>
    public string? Seed { get; init; }

    /// <summary>Variety meant for the field.</summary>
    public string? Wanted { get; init; }

    /// <summary>Fields not yet sown that the seed in the trailer fits, the one it was meant for first.</summary>
    public ImmutableArray<string> Fits { get; init; } = [];

    /// <summary>Right variety, but the batch was meant for other fields than this one.</summary>
    public ImmutableArray<string> MeantFor { get; init; } = [];

    /// <summary>Who let it through in spite of the stop, with the reason; none where nobody did.</summary>
    public Overridden? Override { get; init; }

    /// <summary>Loading is stopped and nobody has answered for going on.</summary>
    public bool IsHeld => Verdict == TrailerVerdict.Stops && Override is null;

    /// <summary>Unlike varieties stop; like ones pass; where either is not known nothing passes unseen.</summary>
    public static TrailerVerdict Compare(string? seed, string? wanted)
    {
        if (string.IsNullOrWhiteSpace(seed) || string.IsNullOrWhiteSpace(wanted)) return TrailerVerdict.ToConfirm;
        return string.Equals(seed.Trim(), wanted.Trim(), StringComparison.OrdinalIgnoreCase) ? TrailerVerdict.Passes : TrailerVerdict.Stops;
    }

    /// <summary>The check of a trailer keyed for a field.</summary>
    public static TrailerCheck Of(SeasonBook book, SeasonPlan? plan, string trailer, string field)
    {
        var line = TrailerLine.Of(book).FirstOrDefault(t => Same(t.Number, trailer.Trim()));
        var wanted = book.State.Fields.FirstOrDefault(f => Same(f.Code, field))?.Variety;
        var verdict = Compare(line?.Variety, wanted);
        var meant = line?.Batch is { } code ? book.State.Batches.FirstOrDefault(b => b.Code == code)?.MeantFor ?? [] : [];
        return new TrailerCheck(trailer.Trim(), field, verdict)
        {
            Gap = line is null ? TrailerGap.Trailer : line.Variety is null ? TrailerGap.Seed : wanted is null ? TrailerGap.Field : TrailerGap.None,
            Batch = line?.Batch,
            Seed = line?.Variety,
            Wanted = wanted,
            Fits = line?.Variety is null ? [] : Fitting(book, plan, line.Variety, field, meant),
            MeantFor = verdict == TrailerVerdict.Passes && !meant.IsEmpty && !meant.Any(m => Same(m, field)) ? meant : [],
            Override = LetThrough(book, trailer.Trim(), field, line?.Batch),
        };
    }

    /// <summary>The trailer last told for a field.</summary>
    public static TrailerBook? LastFor(SeasonBook book, string field) =>
        book.Trailers.Where(t => t.Field is { } code && Same(code, field)).OrderByDescending(t => t.At ?? DateTimeOffset.MinValue).FirstOrDefault();

    private static ImmutableArray<string> Fitting(SeasonBook book, SeasonPlan? plan, string variety, string field, ImmutableArray<string> meant) =>
    [
        .. book.State.Fields.Where(f => f.Stage != FieldStage.Sown && !Same(f.Code, field) && Compare(variety, f.Variety) == TrailerVerdict.Passes)
            .OrderByDescending(f => meant.Contains(f.Code, StringComparer.OrdinalIgnoreCase)).ThenByDescending(f => f.Stage)
            .ThenBy(f => plan?.Task(f.Code, PlanTaskKind.Sow)?.Start ?? DateTimeOffset.MaxValue).Select(f => f.Code),
    ];

    // An override stands for the batch it was given for: other seed in the same trailer stops again.
    private static Overridden? LetThrough(SeasonBook book, string trailer, string field, string? batch) => book.Story
        .Where(l => l.Standing == Standing.Stands).Select(l => l.Mark.Fact).OfType<Overridden>()
        .LastOrDefault(o => o.Trailer is { } number && Same(number, trailer) && o.Field is { } code && Same(code, field) && Same(o.Batch ?? string.Empty, batch ?? string.Empty));

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
