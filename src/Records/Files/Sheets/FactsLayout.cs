using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>Sets what is known, one ruled line each: name, value in the large face, and its note in small type.</summary>
internal static class FactsLayout
{
    public const double Value = 13;
    public const double ValueLine = 15.5;
    public const double RowTop = 1.25;

    /// <summary>Widths of the three columns, side room included.</summary>
    public static ImmutableArray<double> Widths(Block.Facts facts, double width)
    {
        var name = Math.Min(width * 0.3, facts.Rows.Max(r => SheetFonts.Width(r.Name, Face.Word, Paper.Body)) + Paper.CellSide);
        var value = Math.Min(width * 0.42, facts.Rows.Max(r => SheetFonts.Width(r.Value, Face.Number, Value)) + (2 * Paper.CellSide));
        return [name, value, width - name - value];
    }

    public static Laid Lay(Block.Facts facts, double width)
    {
        var widths = Widths(facts, width);
        return Laid.Stack(facts.Rows.Select(r => Row(r, widths, width)), 0);
    }

    private static Laid Row(Fact fact, ImmutableArray<double> widths, double width)
    {
        var name = TextSetter.Lay([new Run(fact.Name)], widths[0] - Paper.CellSide);
        var value = TextSetter.Lay(TextSetter.Lines([new Stretch(fact.Value, Face.Number)], widths[1] - (2 * Paper.CellSide), Value), widths[1], Value, ValueLine);
        var note = TextSetter.Lay([new Run(fact.Note)], widths[2], Paper.Small, Paper.SmallLine);
        var height = Enumerable.Max([name.Height, value.Height, note.Height]) + (2 * RowTop);
        return new Laid(height + Paper.Hairline,
        [
            .. name.Marks.Select(m => m.Moved(0, Middle(name, height))),
            .. value.Marks.Select(m => m.Moved(widths[0] + Paper.CellSide, Middle(value, height))),
            .. note.Marks.Select(m => m.Moved(widths[0] + widths[1], Middle(note, height))),
            new Mark.Rule(0, height, width, height, Paper.Hairline),
        ]);
    }

    private static double Middle(Laid cell, double height) => (height - cell.Height) / 2;
}
