using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>The board of fields and mornings: what can be sown when, and what blocks the rest, in words.</summary>
public static class DayBoard
{
    internal static IEnumerable<Block> Blocks(DaySheet sheet, Telling tell)
    {
        if (sheet.Board.IsEmpty) yield break;
        var words = tell.Words.Day;
        yield return new Block.Heading(words.Board);
        yield return new Block.Paragraph([new Run(words.BoardKey)]);
        yield return new Block.Grid(words.Board,
            [new Column(tell.Words.Common.Field), .. sheet.Board[0].Cells.Select(c => new Column(tell.ShortDay(c.Day)))],
            [.. sheet.Board.Select(r => (ImmutableArray<Cell>)[Cell.Of(new Run(r.Field.Code + " ", Bold: true), new Run(r.Field.Name)), .. r.Cells.Select(c => Said(c, tell))])]);
    }

    private static Cell Said(SowingCell cell, Telling tell)
    {
        var words = tell.Words.Day;
        if (cell.Planned is { } at) return Cell.Strong(tell.Clock(at));

        // Until ground and water are done, nothing else matters; after that each reason is told.
        return cell.Blocks switch
        {
            [] => Cell.Of(words.BoardCan),
            [(SowingBlock.Ground or SowingBlock.Water) and var first, ..] => Cell.Of(Of(first, words)),
            var blocks => Cell.Of(string.Join(", ", blocks.Select(b => Of(b, words)))),
        };
    }

    /// <summary>What stands against sowing, in one word.</summary>
    public static string Of(SowingBlock block, DayWords words) => block switch
    {
        SowingBlock.Ground => words.BlockGround,
        SowingBlock.Water => words.BlockWater,
        SowingBlock.Seed => words.BlockSeed,
        SowingBlock.Plane => words.BlockPlane,
        SowingBlock.Wind => words.BlockWind,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
