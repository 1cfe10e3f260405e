using Watersown.Land;

namespace Watersown.Schedule;

/// <summary>What one cell of the sowing board comes to.</summary>
public enum SowingWord
{
    /// <summary>The plan sows it then.</summary>
    Planned,

    /// <summary>The plan has sown it by then.</summary>
    Sown,

    /// <summary>Nothing known stands against it.</summary>
    Can,

    /// <summary>Something stands against it.</summary>
    Blocked,
}

/// <summary>One field on one morning, as it is read across.</summary>
/// <param name="Day">The morning.</param>
/// <param name="Word">What it comes to.</param>
/// <param name="Planned">When the plan sows it that morning.</param>
/// <param name="Blocks">What stands against it: ground or water alone, else each reason.</param>
public sealed record SowingMark(DateOnly Day, SowingWord Word, DateTimeOffset? Planned, ImmutableArray<SowingBlock> Blocks);

/// <summary>One field over the mornings.</summary>
/// <param name="Field">The field.</param>
/// <param name="Marks">One for each morning, in order.</param>
public sealed record SowingLine(Field Field, ImmutableArray<SowingMark> Marks)
{
    /// <summary>The first morning on which the plan sows it, or on which it could go.</summary>
    public DateOnly? First => Marks.Where(m => m.Word is SowingWord.Planned or SowingWord.Can).Select(m => (DateOnly?)m.Day).FirstOrDefault();
}

/// <summary>One morning over all fields.</summary>
/// <param name="Day">The morning.</param>
/// <param name="Planned">Fields that the plan sows, in its order.</param>
/// <param name="Can">Other fields against which nothing known stands.</param>
/// <param name="Block">What keeps the most full fields, where nothing is sown that morning.</param>
public sealed record SowingMorning(DateOnly Day, ImmutableArray<Field> Planned, ImmutableArray<Field> Can, SowingBlock? Block);

/// <summary>The sowing board as a person reads it in a minute: what can go first, the rest counted by what keeps it.</summary>
public sealed record SowingOutlook
{
    /// <summary>The mornings, in order.</summary>
    public required ImmutableArray<SowingMorning> Mornings { get; init; }

    /// <summary>Fields that are sown or could go on one of the mornings, the soonest first.</summary>
    public required ImmutableArray<SowingLine> Near { get; init; }

    /// <summary>Fields that cannot go on any of them, in the farm's order, by what stands first on the last morning.</summary>
    public required ImmutableArray<(SowingBlock Block, ImmutableArray<SowingLine> Lines)> Far { get; init; }

    /// <summary>Sown fields and their net acres, beside all fields and theirs.</summary>
    public required (int Fields, Area Land, int AllFields, Area AllLand) Sown { get; init; }

    /// <summary>The outlook of a plan from one morning on.</summary>
    /// <param name="plan">The plan, laid on the season as it stands.</param>
    /// <param name="first">The first morning.</param>
    /// <param name="days">How many mornings.</param>
    public static SowingOutlook Of(SeasonPlan plan, DateOnly first, int days)
    {
        ImmutableArray<SowingLine> lines = [.. SowingBoard.Of(plan, first, days).Select(LineOf)];
        ImmutableArray<DateOnly> mornings = [.. Enumerable.Range(0, days).Select(first.AddDays)];
        var fields = plan.State.Farm.Fields;
        var sown = fields.Where(f => plan.State.Season(f.Code).Stage == FieldStage.Sown).ToImmutableArray();
        return new SowingOutlook
        {
            Mornings = [.. mornings.Select((day, i) => Morning(day, i, lines))],
            Near = [.. lines.Where(l => l.First is not null).OrderBy(l => l.First).ThenBy(l => l.Marks.Select(m => m.Planned).FirstOrDefault(p => p is not null) ?? DateTimeOffset.MaxValue)],
            Far = [.. lines.Where(l => l.First is null).GroupBy(l => l.Marks[^1].Blocks[0]).OrderByDescending(g => g.Key).Select(g => (g.Key, g.ToImmutableArray()))],
            Sown = (sown.Length, Sum(sown), fields.Length, Sum(fields)),
        };
    }

    private static SowingLine LineOf(SowingRow row)
    {
        var planned = row.Cells.Where(c => c.Planned is not null).Select(c => (DateOnly?)c.Day).FirstOrDefault();
        return new SowingLine(row.Field, [.. row.Cells.Select(c => MarkOf(c, planned))]);
    }

    private static SowingMark MarkOf(SowingCell cell, DateOnly? planned)
    {
        // Until ground and water are done nothing else matters; after that each reason is told.
        ImmutableArray<SowingBlock> blocks = cell.Blocks is [(SowingBlock.Ground or SowingBlock.Water) and var one, ..] ? [one] : cell.Blocks;
        var word = cell.Planned is not null ? SowingWord.Planned : planned < cell.Day ? SowingWord.Sown : blocks.IsEmpty ? SowingWord.Can : SowingWord.Blocked;
        return new SowingMark(cell.Day, word, cell.Planned, word == SowingWord.Blocked ? blocks : []);
    }

    private static SowingMorning Morning(DateOnly day, int index, ImmutableArray<SowingLine> lines)
    {
        var here = lines.Select(l => (l.Field, Mark: l.Marks[index])).ToImmutableArray();
        ImmutableArray<Field> planned = [.. here.Where(h => h.Mark.Word == SowingWord.Planned).OrderBy(h => h.Mark.Planned).Select(h => h.Field)];
        ImmutableArray<Field> can = [.. here.Where(h => h.Mark.Word == SowingWord.Can).Select(h => h.Field)];
        var block = planned.IsEmpty && can.IsEmpty
            ? here.Where(h => h.Mark.Word == SowingWord.Blocked).OrderByDescending(h => h.Mark.Blocks[^1]).Select(h => (SowingBlock?)h.Mark.Blocks[^1]).FirstOrDefault()
            : null;
        return new SowingMorning(day, planned, can, block);
    }

    private static Area Sum(IEnumerable<Field> fields) => fields.Aggregate(Area.Zero, (sum, f) => sum + f.Net);
}
