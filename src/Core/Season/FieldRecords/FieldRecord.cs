using Watersown.Costs;
using Watersown.Growth;
using Watersown.Land;
using Watersown.Season.Crop;
using Watersown.Season.Harvests;

namespace Watersown.Season.FieldRecords;

/// <summary>What a season's page of a field should have, and may lack.</summary>
public enum RecordGap
{
    Gross,
    Certified,
    Variety,
    Lot,
    FirstWater,
    Full,
    Sown,
    DrySeed,
    Stand,
    Heading,
    BoardsOut,
    Cut,
    Tickets,
}

/// <summary>One field's season in facts: what is known, and what is not.</summary>
/// <param name="Field">The field as it stands in the book.</param>
public sealed record FieldRecord(Field Field)
{
    public string? Variety { get; init; }

    /// <summary>Dry seed meant for an acre.</summary>
    public required SeedRate Rate { get; init; }

    /// <summary>Seed lots sown, by their batches.</summary>
    public ImmutableArray<string> Lots { get; init; } = [];

    public DateTimeOffset? FirstWater { get; init; }

    public DateTimeOffset? FullSince { get; init; }

    /// <summary>Sowings, parts too, in order.</summary>
    public ImmutableArray<Sowing> Sowings { get; init; } = [];

    /// <summary>When it was wholly sown; as the farm document says where no mark does.</summary>
    public DateTimeOffset? SownAt { get; init; }

    public Area Sown { get; init; }

    /// <summary>Dry seed told sown; none where a sowing tells no weight.</summary>
    public DrySeed? DrySown { get; init; }

    /// <summary>Ring counts by zone.</summary>
    public int CountedZones { get; init; }

    /// <summary>Stages that somebody saw.</summary>
    public ImmutableArray<StageDate> Seen { get; init; } = [];

    public required FieldHarvest Harvest { get; init; }

    /// <summary>Off the dryer's tickets; none without one.</summary>
    public FieldGrain? Grain { get; init; }

    public required FieldCost Cost { get; init; }

    /// <summary>Things told of it that do not agree.</summary>
    public int Doubts { get; init; }

    /// <summary>What is missing, in the order of the season.</summary>
    public ImmutableArray<RecordGap> Missing { get; init; } = [];

    public bool Complete => Missing.IsEmpty && Doubts == 0;

    /// <summary>One for each field, in the farm's order.</summary>
    public static ImmutableArray<FieldRecord> All(SeasonBook book)
    {
        var tally = book.Harvest.Tally();
        var costs = book.Costs.ByField(book.State.Farm, book.Harvest).ToDictionary(c => c.Field, StringComparer.OrdinalIgnoreCase);
        return [.. book.State.Farm.Fields.Select(f => Of(book, f, tally, costs[f.Code]))];
    }

    private static FieldRecord Of(SeasonBook book, Field field, GrainTally tally, FieldCost cost)
    {
        var told = book.Field(field.Code);
        var season = book.State.Season(field.Code);
        var record = new FieldRecord(field)
        {
            Variety = season.Variety,
            Rate = season.Rate,
            Lots = [.. told.Sowings.Select(s => s.Batch).OfType<string>().Select(b => book.Batch(b)?.Lot).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase)],
            FirstWater = season.FirstWater,
            FullSince = season.FullSince,
            Sowings = told.Sowings,
            SownAt = season.SownAt,
            Sown = told.Sowings.IsEmpty && season.SownAt is not null ? field.Net : told.Sown,
            DrySown = told.Sowings.IsEmpty || told.Sowings.Any(s => s.Dry is null) ? null : told.Sowings.Aggregate(DrySeed.Zero, (sum, s) => sum + s.Dry!.Value),
            CountedZones = told.Counts.Length,
            Seen = SeasonStages.Of(book, field.Code) is { } stages ? [.. stages.Calendar.Stages.Where(s => s.Seen)] : [],
            Harvest = book.Harvest.Field(field.Code),
            Grain = tally.Fields.FirstOrDefault(g => string.Equals(g.Field, field.Code, StringComparison.OrdinalIgnoreCase)),
            Cost = cost,
            Doubts = book.Doubts.Count(d => string.Equals(d.Field, field.Code, StringComparison.OrdinalIgnoreCase)),
        };
        return record with { Missing = [.. Gaps(record)] };
    }

    private static IEnumerable<RecordGap> Gaps(FieldRecord record)
    {
        if (record.Field.Gross is null) yield return RecordGap.Gross;
        if (record.Field.Certified is null) yield return RecordGap.Certified;
        if (record.Variety is null) yield return RecordGap.Variety;
        if (record.Lots.IsEmpty) yield return RecordGap.Lot;
        if (record.FirstWater is null) yield return RecordGap.FirstWater;
        if (record.FullSince is null) yield return RecordGap.Full;
        if (record.SownAt is null) yield return RecordGap.Sown;
        if (record.DrySown is null) yield return RecordGap.DrySeed;
        if (record.CountedZones == 0) yield return RecordGap.Stand;
        if (!record.Seen.Any(s => s.Point == new StagePoint(CropStage.Heading))) yield return RecordGap.Heading;
        if (record.Harvest.BoardsOut is null) yield return RecordGap.BoardsOut;
        if (!record.Harvest.Done) yield return RecordGap.Cut;
        if (record.Grain is null) yield return RecordGap.Tickets;
    }
}
