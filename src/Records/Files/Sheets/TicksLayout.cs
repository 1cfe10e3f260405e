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
        double right = 0, down = 0, high = 0;
        foreach (var item in ticks.Items)
        {
            var (laid, wide) = One(item, width);
            if (right > 0 && right + wide > width)
            {
                right = 0;
                down += high;
                high = 0;
            }

            marks.AddRange(laid.Marks.Select(m => m.Moved(right, down)));
            right += wide + Between;
            high = Math.Max(high, laid.Height);
        }

        return new Laid(down + high, marks.ToImmutable());
    }

    // Box, words, line, words: in one row, or the first words in several where they are too many for one.
    private static (Laid Laid, double Width) One(Tick tick, double width)
    {
        var marks = new List<Mark>();
        var x = tick.HasBox ? Paper.Box + AfterBox : 0;
        if (tick.HasBox) marks.Add(new Mark.Frame(0.75, (Row - Paper.Box) / 2, Paper.Box, Paper.Box, 1.5, Ink.None));
        var after = tick.After.Length == 0 ? 0 : AfterWords + SheetFonts.Width(tick.After, Face.Word, Paper.Body);

        // A line to write on gives way before words do.
        var words = TextSetter.Lines([new Run(tick.Text)], width - x - after, Paper.Body);
        var last = words.IsEmpty ? 0 : words[^1].Sum(s => SheetFonts.Width(s.Text, s.Face, Paper.Body));
        var line = Math.Min(tick.Line, Math.Max(0, width - x - last - after - AfterWords));
        var text = TextSetter.Lay(words, width - x - after, Paper.Body, Paper.BodyLine);
        var down = (Row - Paper.BodyLine) / 2;
        marks.AddRange(text.Marks.Select(m => m.Moved(x, down)));
        var baseLine = down + text.Height - (Paper.BodyLine / 2) + (Paper.Body * 0.345);
        var end = x + last;
        if (line > 0)
        {
            marks.Add(new Mark.Rule(end + AfterWords, baseLine + 2, end + AfterWords + line, baseLine + 2, 0.75));
            end += AfterWords + line;
        }

        if (tick.After.Length > 0) marks.Add(new Mark.Words(tick.After, end + AfterWords, baseLine, Face.Word, Paper.Body));
        var wide = words.Length > 1 ? width : end + after;
        return (new Laid(Math.Max(Row, text.Height + (2 * down)), [.. marks]), wide);
    }
}
