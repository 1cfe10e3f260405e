using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Season.Boards;

/// <summary>What is known of the water in a check.</summary>
public enum CheckWord
{
    Unknown,
    Dry,
    Wet,
    Full,
}

/// <summary>One check of a field's row.</summary>
/// <param name="Number">Order from the head, 1 first.</param>
/// <param name="Word">What is known of it.</param>
public sealed record CheckCell(int Number, CheckWord Word)
{
    /// <summary>When that became so or was last seen; none where only the farm document says it.</summary>
    public DateTimeOffset? At { get; init; }

    public DepthNote? Depth { get; init; }

    /// <summary>Nobody saw it wet, but water below it went through it.</summary>
    public bool Implied { get; init; }
}

/// <summary>The checks of one field, from the head to the tail.</summary>
/// <param name="Field">The field.</param>
/// <param name="Season">How far it has come.</param>
public sealed record CheckRow(Field Field, FieldSeason Season)
{
    public required ImmutableArray<CheckCell> Cells { get; init; }

    /// <summary>Checks with water in them.</summary>
    public int Wet => Cells.Count(c => c.Word is CheckWord.Wet or CheckWord.Full);

    /// <summary>The first check from the head that nobody has seen wet.</summary>
    public int? Next => Cells.FirstOrDefault(c => c.Word is CheckWord.Dry or CheckWord.Unknown)?.Number;

    /// <summary>How long the head check has been wet.</summary>
    public TimeSpan? HeadAge { get; init; }

    /// <summary>Fields with water in them or about to have it, in the farm's order.</summary>
    public static ImmutableArray<CheckRow> Of(SeasonBook book) =>
    [
        .. book.State.Farm.Fields.Where(f => book.State.Season(f.Code).Stage >= FieldStage.Rolled || book.Field(f.Code).Checks.Any(c => c.IsWet)).Select(f => Of(book, f)),
    ];

    public static CheckRow Of(SeasonBook book, Field field)
    {
        var season = book.State.Season(field.Code);
        var told = book.Field(field.Code);
        return new CheckRow(field, season)
        {
            Cells = [.. field.Basins.OrderBy(b => b.Number).Select((b, place) => Cell(b.Number, place, season, told.Check(b.Number)))],
            HeadAge = season is { FirstWater: { } first, SownAt: null } ? book.State.Now - first : null,
        };
    }

    private static CheckCell Cell(int number, int place, FieldSeason season, CheckBook? told)
    {
        var cell = new CheckCell(number, FromStage(place, season));
        if (told is null) return cell;
        var word = told switch
        {
            { DrySince: not null } => CheckWord.Dry,
            { FullSince: not null } => CheckWord.Full,
            { IsWet: true } => cell.Word == CheckWord.Full ? CheckWord.Full : CheckWord.Wet,
            _ => cell.Word,
        };
        return cell with { Word = word, At = told.DrySince ?? told.FullSince ?? told.FirstWet, Depth = told.Depth, Implied = told.Implied };
    }

    private static CheckWord FromStage(int place, FieldSeason season) => season switch
    {
        { Stage: FieldStage.Full or FieldStage.Sown } => CheckWord.Full,
        { Stage: FieldStage.Flooding, ChecksWet: { } wet } => place < wet ? CheckWord.Wet : CheckWord.Dry,
        { Stage: FieldStage.Flooding } => CheckWord.Unknown,
        _ => CheckWord.Dry,
    };
}
