using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>
/// Makes a sheet fit its paper: tries each arrangement with its pictures as large as they may be, then smaller; where none
/// fits one page, goes over to the next page between blocks or table rows. Never leaves a line out.
/// </summary>
internal static class Fitter
{
    // A heading needs at least this much of what follows under it.
    private const double KeepWithNext = 60;

    public static FittedSheet Fit(SheetPage page)
    {
        var head = HeadLayout.Lay(page, string.Empty).Height + Paper.Gap;
        foreach (var blocks in page.Arrangements)
        {
            if (Shrunk(blocks, Paper.Room - head) is { } fitting) return new FittedSheet(page, [fitting]);
        }

        return new FittedSheet(page, Cut(page));
    }

    // The blocks with the largest pictures that fit, or nothing.
    private static ImmutableArray<Block>? Shrunk(ImmutableArray<Block> blocks, double room)
    {
        if (Height(blocks, 1) <= room) return Sized(blocks, 1);
        if (Height(blocks, 0) > room) return null;
        double fits = 0, fails = 1;
        for (var i = 0; i < 7; i++)
        {
            var middle = (fits + fails) / 2;
            if (Height(blocks, middle) <= room) fits = middle;
            else fails = middle;
        }

        return Sized(blocks, fits);
    }

    private static double Height(ImmutableArray<Block> blocks, double share) => BlockLayout.LayAll(Sized(blocks, share, blank: true), Paper.Inner).Height;

    // Pictures at a share between their least and their greatest height. While only heights count, nothing is drawn.
    private static ImmutableArray<Block> Sized(ImmutableArray<Block> blocks, double share, bool blank = false) => [.. blocks.Select(b => b switch
    {
        Block.Picture picture => Sized(picture, share, blank),
        Block.Side side => side with { Left = Sized(side.Left, share, blank), Right = Sized(side.Right, share, blank) },
        _ => b,
    })];

    private static Block.Picture Sized(Block.Picture picture, double share, bool blank)
    {
        var height = picture.Least + ((picture.Most - picture.Least) * share);
        return picture with { Most = height, Draw = blank ? static (width, tall) => new Drawing(string.Empty, string.Empty) { Width = width, Height = tall, Items = [] } : picture.Draw };
    }

    private static ImmutableArray<ImmutableArray<Block>> Cut(SheetPage page)
    {
        var room = Paper.Room - HeadLayout.Lay(page, HeadLayout.Widest(page)).Height - Paper.Gap - Paper.BodyLine - Paper.Gap;
        var pages = ImmutableArray.CreateBuilder<ImmutableArray<Block>>();
        var current = ImmutableArray.CreateBuilder<Block>();
        var waiting = new Queue<Block>(Sized(page.Arrangements[^1], 0.5));
        double used = 0;
        while (waiting.TryDequeue(out var block))
        {
            var gap = current.Count > 0 ? Paper.Gap : 0;
            var height = BlockLayout.Lay(block, Paper.Inner).Height;
            var needed = height + (block is Block.Heading && waiting.Count > 0 ? Paper.Gap + KeepWithNext : 0);
            if (used + gap + needed <= room)
            {
                current.Add(block);
                used += gap + height;
                continue;
            }

            if (block is Block.Grid grid && Split(grid, room - used - gap) is { } split)
            {
                current.Add(split.First);
                waiting = new Queue<Block>(waiting.Prepend(split.Others));
            }
            else if (current.Count == 0)
            {
                current.Add(block); // higher than a page by itself: it cannot be cut, so it stands alone
            }
            else
            {
                waiting = new Queue<Block>(waiting.Prepend(block));
                if (current[^1] is Block.Heading heading && current.Count > 1)
                {
                    current.RemoveAt(current.Count - 1);
                    waiting = new Queue<Block>(waiting.Prepend(heading));
                }
            }

            pages.Add(current.ToImmutable());
            current.Clear();
            used = 0;
        }

        if (current.Count > 0) pages.Add(current.ToImmutable());
        return pages.ToImmutable();
    }

    // The rows of a table that fit a height, and the rest under the same head; nothing where not even two rows do.
    private static (Block.Grid First, Block.Grid Others)? Split(Block.Grid grid, double room)
    {
        var flat = grid with { Folds = 1 };
        var (head, rows) = GridLayout.Heights(flat, Paper.Inner);
        var used = head;
        var fit = 0;
        while (fit < rows.Length && used + rows[fit] <= room) used += rows[fit++];
        if (fit < 2 || fit >= rows.Length) return null;
        return (flat with { Rows = grid.Rows[..fit] }, flat with { Rows = grid.Rows[fit..] });
    }
}
