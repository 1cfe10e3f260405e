using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Season.Ground;

/// <summary>How the ground of a field looks from above: what is drawn for it.</summary>
public enum GroundLook
{
    /// <summary>Nobody has said how far it has come.</summary>
    Unknown,
    Dry,
    Filling,
    Full,
    Sown,
}

/// <summary>Water in a field by the newest reading of each check, and how old the newest of them is.</summary>
/// <param name="Least">Of the checks that were read.</param>
/// <param name="Most">Of the checks that were read.</param>
/// <param name="At">When the newest was read; not told for a depth out of the farm document.</param>
public sealed record DepthSpan(WaterDepth Least, WaterDepth Most, DateTimeOffset? At);

/// <summary>One field on the land page.</summary>
public sealed record LandRow(Field Field, FieldSeason Season, FieldBook Book)
{
    public required GroundLook Look { get; init; }

    /// <summary>The part of the farm it belongs to.</summary>
    public required string Block { get; init; }

    /// <summary>Checks with water in them; none where the field is not filling.</summary>
    public int? Wet { get; init; }

    public DepthSpan? Depth { get; init; }

    /// <summary>Dry seed that the whole field takes.</summary>
    public DrySeed Dry => Season.Rate * Field.Net;

    /// <summary>Something of it is broken and not mended.</summary>
    public bool Broken { get; init; }
}

/// <summary>What several fields come to. Each kind of acres is summed over the fields that have it.</summary>
/// <param name="Fields">How many.</param>
/// <param name="Net">Net acres.</param>
/// <param name="Dry">Dry seed.</param>
public sealed record LandTotal(int Fields, Area Net, DrySeed Dry)
{
    public Area Gross { get; init; }

    /// <summary>Fields without gross acres.</summary>
    public int WithoutGross { get; init; }

    public Area Certified { get; init; }

    public int WithoutCertified { get; init; }
}

/// <summary>All fields of the farm with how they stand.</summary>
public static class LandBoard
{
    /// <summary>One row for each field of the farm, in the farm's order.</summary>
    [Source(nameof(Sources.FarmRecord), "as marked and told")]
    public static ImmutableArray<LandRow> Of(SeasonBook book) =>
        [.. book.State.Farm.Fields.Select(field => Row(book, field))];

    /// <summary>The row of one field.</summary>
    [Source(nameof(Sources.FarmRecord), "as marked and told")]
    public static LandRow Row(SeasonBook book, Field field)
    {
        var (season, own) = (book.State.Season(field.Code), book.Field(field.Code));
        return new LandRow(field, season, own)
        {
            Look = LookOf(season),
            Block = Blocks.Of(field),
            Wet = WetChecks(season, own),
            Depth = DepthOf(season, own),
            Broken = book.Faults.Any(f => string.Equals(f.Fault.Field, field.Code, StringComparison.OrdinalIgnoreCase)),
        };
    }

    /// <summary>How a field is drawn.</summary>
    public static GroundLook LookOf(FieldSeason season) => season switch
    {
        { Stage: FieldStage.Sown } => GroundLook.Sown,
        { Stage: FieldStage.Full } => GroundLook.Full,
        { Stage: FieldStage.Flooding } => GroundLook.Filling,
        { StageUntold: true } => GroundLook.Unknown,
        _ => GroundLook.Dry,
    };

    /// <summary>What rows come to together.</summary>
    [Source(nameof(Sources.Arithmetic), "each kind of acres summed over the fields that have it")]
    public static LandTotal Total(IEnumerable<LandRow> rows)
    {
        var all = rows.ToList();
        return new LandTotal(all.Count, Sum(all, r => r.Field.Net), all.Aggregate(DrySeed.Zero, (sum, r) => sum + r.Dry))
        {
            Gross = Sum(all, r => r.Field.Gross ?? Area.Zero),
            WithoutGross = all.Count(r => r.Field.Gross is null),
            Certified = Sum(all, r => r.Field.Certified ?? Area.Zero),
            WithoutCertified = all.Count(r => r.Field.Certified is null),
        };
    }

    private static Area Sum(List<LandRow> rows, Func<LandRow, Area> of) => rows.Aggregate(Area.Zero, (sum, r) => sum + of(r));

    private static int? WetChecks(FieldSeason season, FieldBook book) => season.Stage == FieldStage.Flooding
        ? season.ChecksWet ?? (book.Checks.IsEmpty ? null : book.Checks.Count(c => c.IsWet))
        : null;

    private static DepthSpan? DepthOf(FieldSeason season, FieldBook book)
    {
        ImmutableArray<DepthNote> read = [.. book.Checks.Select(c => c.Depth).OfType<DepthNote>()];
        // A word about the whole field that is newer than every check's stands for all of them.
        if (book.Depth is { } whole && read.All(d => d.At <= whole.At)) return new DepthSpan(whole.Depth, whole.Depth, whole.At);
        if (!read.IsEmpty) return new DepthSpan(read.MinBy(d => d.Depth.Inches)!.Depth, read.MaxBy(d => d.Depth.Inches)!.Depth, read.Max(d => d.At));
        return season.Depth is { } told ? new DepthSpan(told, told, season.AsOf) : null;
    }
}
