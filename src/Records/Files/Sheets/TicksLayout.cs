using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>Sets boxes to tick and lines to write on, as many in a row as fit.</summary>
internal static class TicksLayout
{
    public const double Row = 19;
    public const double Between = 16;
    private const double AfterBox = 5;
    private const double AfterWords = 4;

    public static Laid Lay(Block.Ticks ticks, double width)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        double right = 0, down = 0;
        foreach (var item in ticks.Items)
        {
            // A line to write on gives way before words do.
            var tick = item with { Line = Math.Max(0, item.Line - Math.Max(0, Width(item) - width)) };
            var wide = Width(tick);
            if (right > 0 && right + wide > width)
            {
                right = 0;
                down += Row;
            }

            marks.AddRange(Marks(tick).Select(m => m.Moved(right, down)));
            right += wide + Between;
        }

        return new Laid(down + Row, marks.ToImmutable());
    }

    private static double Width(Tick tick) =>
        (tick.HasBox ? Paper.Box + AfterBox : 0) + SheetFonts.Width(tick.Text, Face.Word, Paper.Body)
        + (tick.Line > 0 ? AfterWords + tick.Line : 0)
        + (tick.After.Length > 0 ? AfterWords + SheetFonts.Width(tick.After, Face.Word, Paper.Body) : 0);

    private static IEnumerable<Mark> Marks(Tick tick)
    {
        const double baseLine = (Row / 2) + (Paper.Body * 0.345);
        double x = 0;
        if (tick.HasBox)
        {
            yield return new Mark.Frame(0.75, (Row - Paper.Box) / 2, Paper.Box, Paper.Box, 1.5, Ink.None);
            x += Paper.Box + AfterBox;
        }

        yield return new Mark.Words(tick.Text, x, baseLine, Face.Word, Paper.Body);
        x += SheetFonts.Width(tick.Text, Face.Word, Paper.Body);
        if (tick.Line > 0)
        {
            yield return new Mark.Rule(x + AfterWords, baseLine + 2, x + AfterWords + tick.Line, baseLine + 2, 0.75);
            x += AfterWords + tick.Line;
        }

        if (tick.After.Length > 0) yield return new Mark.Words(tick.After, x + AfterWords, baseLine, Face.Word, Paper.Body);
    }
}
