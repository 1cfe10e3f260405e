using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>Sets a ruled table: how wide each column is, how high each row.</summary>
internal static class GridLayout
{
    /// <summary>Room between the halves of a folded table.</summary>
    public const double FoldGap = 11;

    /// <summary>Width of one fold of a table.</summary>
    public static double FoldWidth(Block.Grid grid, double width) => (width - ((grid.Folds - 1) * FoldGap)) / grid.Folds;

    /// <summary>The rows of each fold, first fold first, nearly equal in number.</summary>
    public static ImmutableArray<ImmutableArray<ImmutableArray<Cell>>> Folded(Block.Grid grid)
    {
        var each = (grid.Rows.Length + grid.Folds - 1) / grid.Folds;
        return [.. grid.Rows.Chunk(Math.Max(1, each)).Select(rows => rows.ToImmutableArray())];
    }

    /// <summary>
    /// Widths of the columns, side room included: what their words need, spare room to columns for writing; where there is
    /// too little, the widest wrap, and no column goes below its widest word unless all do.
    /// </summary>
    public static ImmutableArray<double> Widths(Block.Grid grid, double width)
    {
        var count = grid.Columns.Length;
        var least = new double[count];
        var wanted = new double[count];
        for (var c = 0; c < count; c++)
        {
            ImmutableArray<Run> head = [new Run(grid.Columns[c].Head)];
            var cells = grid.Rows.Select(r => r[c]).ToList();
            var box = cells.Exists(k => k.IsBox) ? Paper.Box : 0;
            least[c] = Enumerable.Max([TextSetter.WidestWord(head, Paper.Small), box, grid.Columns[c].Room, .. cells.Select(k => TextSetter.WidestWord(k.Runs, Paper.Body))]) + (2 * Paper.CellSide);
            wanted[c] = Enumerable.Max([TextSetter.Width(head, Paper.Small), box, grid.Columns[c].Room, .. cells.Select(k => TextSetter.Width(k.Runs, Paper.Body))]) + (2 * Paper.CellSide);
            if (grid.Columns[c].Most > 0) wanted[c] = Math.Max(least[c], Math.Min(wanted[c], grid.Columns[c].Most));
        }

        return Shared(grid, least, wanted, width);
    }

    public static Laid Lay(Block.Grid grid, double width)
    {
        var fold = FoldWidth(grid, width);
        var widths = Widths(grid, fold);
        var marks = ImmutableArray.CreateBuilder<Mark>();
        double height = 0, right = 0;
        foreach (var rows in Folded(grid))
        {
            var laid = LayRows(grid, rows, widths, fold);
            marks.AddRange(laid.Marks.Select(m => m.Moved(right, 0)));
            height = Math.Max(height, laid.Height);
            right += fold + FoldGap;
        }

        return new Laid(height, marks.ToImmutable());
    }

    /// <summary>Height of the table's head, and of each row.</summary>
    public static (double Head, ImmutableArray<double> Rows) Heights(Block.Grid grid, double width)
    {
        var widths = Widths(grid, width);
        return (Head(grid, widths).Height + Paper.Line, [.. grid.Rows.Select(r => Row(grid, r, widths).Height + Paper.Hairline)]);
    }

    private static ImmutableArray<double> Shared(Block.Grid grid, double[] least, double[] wanted, double width)
    {
        double allWanted = wanted.Sum(), allLeast = least.Sum();
        if (allWanted <= width)
        {
            var writing = grid.Columns.Count(c => c.Room > 0);
            var spare = width - allWanted;
            return [.. wanted.Select((w, c) => w + (writing > 0 ? (grid.Columns[c].Room > 0 ? spare / writing : 0) : spare * w / allWanted))];
        }

        // Words longer than any column: those are broken, and short ones stay whole.
        if (allLeast >= width) (least, wanted) = ([.. least.Select(l => Math.Min(l, width / least.Length))], least);
        var cap = Cap(least, wanted, width);
        return [.. least.Select((l, c) => Math.Clamp(cap, l, wanted[c]))];
    }

    // Narrow columns keep what they want; only the widest are cut, all down to one width that makes the table fit.
    private static double Cap(double[] least, double[] wanted, double width)
    {
        double low = 0, high = wanted.Max();
        for (var i = 0; i < 40; i++)
        {
            var middle = (low + high) / 2;
            if (least.Select((l, c) => Math.Clamp(middle, l, wanted[c])).Sum() <= width) low = middle;
            else high = middle;
        }

        return low;
    }

    private static Laid LayRows(Block.Grid grid, ImmutableArray<ImmutableArray<Cell>> rows, ImmutableArray<double> widths, double width)
    {
        var pieces = new List<Laid> { Ruled(Head(grid, widths), width, Paper.Line) };
        pieces.AddRange(rows.Select(r => Ruled(Row(grid, r, widths), width, Paper.Hairline)));
        return Laid.Stack(pieces, 0);
    }

    private static Laid Ruled(Laid row, double width, double rule) =>
        new(row.Height + rule, row.Marks.Add(new Mark.Rule(0, row.Height + (rule / 2), width, row.Height + (rule / 2), rule)));

    private static Laid Head(Block.Grid grid, ImmutableArray<double> widths) =>
        Cells([.. grid.Columns.Select((c, i) => TextSetter.Lay([new Run(c.Head)], widths[i] - (2 * Paper.CellSide), Paper.Small, Paper.SmallLine, c.Setting))], widths, fromBottom: true, 0);

    private static Laid Row(Block.Grid grid, ImmutableArray<Cell> row, ImmutableArray<double> widths)
    {
        var laid = row.Select((cell, c) => cell.IsBox
            ? Box(widths[c] - (2 * Paper.CellSide), grid.Columns[c].Setting)
            : TextSetter.Lay(cell.Runs, widths[c] - (2 * Paper.CellSide), setting: grid.Columns[c].Setting));
        var hasRoom = row.Any(c => c.IsBox) || grid.Columns.Any(c => c.Room > 0);
        return Cells([.. laid], widths, fromBottom: false, hasRoom ? Paper.BoxRow : 0);
    }

    private static Laid Box(double width, Setting setting)
    {
        var x = setting switch { Setting.Center => (width - Paper.Box) / 2, Setting.Right => width - Paper.Box, _ => 0 };
        return new Laid(Paper.Box + 1, [new Mark.Frame(x, 1, Paper.Box, Paper.Box, 1.5, Ink.None)]);
    }

    private static Laid Cells(ImmutableArray<Laid> cells, ImmutableArray<double> widths, bool fromBottom, double least)
    {
        var height = Math.Max(least, cells.Max(c => c.Height) + (2 * Paper.CellTop));
        var marks = ImmutableArray.CreateBuilder<Mark>();
        double right = 0;
        for (var c = 0; c < cells.Length; c++)
        {
            var down = fromBottom ? height - Paper.CellTop - cells[c].Height : Math.Max(Paper.CellTop, Math.Min((height - cells[c].Height) / 2, (least - cells[c].Height) / 2));
            marks.AddRange(cells[c].Marks.Select(m => m.Moved(right + Paper.CellSide, down)));
            right += widths[c];
        }

        return new Laid(height, marks.ToImmutable());
    }
}
