using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>Sets the numbers that are read from a cockpit, each in a frame.</summary>
internal static class FiguresLayout
{
    public const double Size = 34;
    public const double NumberLine = 36;
    public const double Side = 7;
    public const double Bottom = 5;

    /// <summary>The heavy one gets the wider frame.</summary>
    public static ImmutableArray<double> Widths(Block.Figures figures, double width)
    {
        var parts = figures.Items.Sum(i => i.Heavy ? 1.6 : 1.0);
        return [.. figures.Items.Select(i => width * (i.Heavy ? 1.6 : 1.0) / parts)];
    }

    public static Laid Lay(Block.Figures figures, double width)
    {
        var widths = Widths(figures, width);
        var captions = figures.Items.Select((f, i) => TextSetter.Lay(f.Caption, widths[i] - (2 * Side))).ToList();
        var height = NumberLine + captions.Max(c => c.Height) + Bottom;
        var marks = ImmutableArray.CreateBuilder<Mark>();
        double right = 0;
        for (var i = 0; i < widths.Length; i++)
        {
            var stroke = figures.Items[i].Heavy ? 4.0 : 1.5;
            marks.Add(new Mark.Frame(right + (stroke / 2), stroke / 2, widths[i] - stroke, height - stroke, stroke, Ink.None));
            marks.Add(new Mark.Words(figures.Items[i].Number, right + Side, (NumberLine / 2) + (Size * 0.345), Face.Number, Size));
            foreach (var mark in captions[i].Marks) marks.Add(mark.Moved(right + Side, NumberLine));
            right += widths[i];
        }

        return new Laid(height, marks.ToImmutable());
    }
}
