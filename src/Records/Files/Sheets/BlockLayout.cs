using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>Lays one block of a sheet into a width.</summary>
internal static class BlockLayout
{
    public const double AlarmFrame = 5;
    public const double AlarmSide = 13;
    public const double AlarmTop = 10;
    public const double Shout = 26;
    public const double ShoutLine = 31;
    public const double AlarmList = 17;
    public const double AlarmListLine = 22;

    public const double BannerSide = 8;
    public const double BannerTop = 4;

    public static Laid Lay(Block block, double width) => block switch
    {
        Block.Banner banner => Banner(banner, width),
        Block.Alarm alarm => Alarm(alarm, width),
        Block.Heading heading => TextSetter.Lay(TextSetter.Lines([new Stretch(heading.Text, Face.Number)], width, Paper.Heading), width, Paper.Heading, Paper.HeadingLine),
        Block.Paragraph paragraph => TextSetter.Lay(paragraph.Runs, width),
        Block.Figures figures => FiguresLayout.Lay(figures, width),
        Block.Facts facts => FactsLayout.Lay(facts, width),
        Block.Grid grid => GridLayout.Lay(grid, width),
        Block.Picture picture => new Laid(picture.Most, [new Mark.Picture(picture.Draw(width, picture.Most), 0, 0)]),
        Block.Side side => Side(side, width),
        Block.Ticks ticks => TicksLayout.Lay(ticks, width),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    public static Laid LayAll(ImmutableArray<Block> blocks, double width) => Laid.Stack(blocks.Select(b => Lay(b, width)), Paper.Gap);

    public static (double Left, double Right) SideWidths(Block.Side side, double width)
    {
        var left = (width - Paper.ColumnGap) * side.LeftShare.Share;
        return (left, width - Paper.ColumnGap - left);
    }

    private static Laid Banner(Block.Banner banner, double width)
    {
        var words = TextSetter.Lay(banner.Runs, width - (2 * BannerSide));
        var height = words.Height + (2 * BannerTop);
        return new Laid(height, [new Mark.Frame(1, 1, width - 2, height - 2, 2, Ink.None), .. words.Marks.Select(m => m.Moved(BannerSide, BannerTop))]);
    }

    private static Laid Alarm(Block.Alarm alarm, double width)
    {
        var inner = width - (2 * AlarmSide);
        ImmutableArray<Laid> lines =
        [
            TextSetter.Lay(TextSetter.Lines([new Stretch(alarm.Shout, Face.WordBold)], inner, Shout), inner, Shout, ShoutLine),
            .. alarm.Lines.Select(l => TextSetter.Lay([new Run(l, Bold: true)], inner, AlarmList, AlarmListLine)),
        ];
        var words = Laid.Stack(lines, 0);
        var height = words.Height + (2 * AlarmTop);
        return new Laid(height, [new Mark.Frame(AlarmFrame / 2, AlarmFrame / 2, width - AlarmFrame, height - AlarmFrame, AlarmFrame, Ink.None), .. words.Marks.Select(m => m.Moved(AlarmSide, AlarmTop))]);
    }

    private static Laid Side(Block.Side side, double width)
    {
        var (left, right) = SideWidths(side, width);
        var (first, second) = (LayAll(side.Left, left), LayAll(side.Right, right));
        return new Laid(Math.Max(first.Height, second.Height), [.. first.Marks, .. second.Marks.Select(m => m.Moved(left + Paper.ColumnGap, 0))]);
    }
}
