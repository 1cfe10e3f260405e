using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Places words on a map: inside the frame, and not on top of one another.</summary>
/// <param name="width">Width of the frame, points.</param>
/// <param name="height">Height of the frame, points.</param>
internal sealed class MapLabels(double width, double height)
{
    private readonly List<(double Left, double Top, double Right, double Bottom)> taken = [];

    public ImmutableArray<DrawingItem>.Builder Items { get; } = ImmutableArray.CreateBuilder<DrawingItem>();

    /// <summary>Width that words take, on the safe side: the drawing knows no font.</summary>
    public static double WidthOf(string text, double size, bool bold) => text.Length * size * (bold ? 0.6 : 0.56);

    /// <summary>Keeps a place free of words.</summary>
    public void Take(PaperPoint at, double reach) => taken.Add((at.X - reach, at.Y - reach, at.X + reach, at.Y + reach));

    /// <summary>
    /// Puts words centered as near to a point as there is room. Words that must be there are put at the nearest point inside
    /// the frame where no place is free; others are left out.
    /// </summary>
    public void Put(string text, PaperPoint at, double size, bool bold, bool must)
    {
        var (halfWidth, halfHeight) = (WidthOf(text, size, bold) / 2, size * 0.6);
        foreach (var (right, down) in Tries)
        {
            var middle = Inside(new PaperPoint(at.X + (right * (halfWidth + 7)), at.Y + (down * ((2 * halfHeight) + 3))), halfWidth, halfHeight);
            if (!IsFree(middle, halfWidth, halfHeight)) continue;
            Add(text, middle, size, bold, halfWidth, halfHeight);
            return;
        }

        if (must) Add(text, Inside(at, halfWidth, halfHeight), size, bold, halfWidth, halfHeight);
    }

    /// <summary>Puts words exactly at a point if they are no wider than there is room and nothing is in their way.</summary>
    public bool PutThere(string text, PaperPoint at, double size, double room)
    {
        var (halfWidth, halfHeight) = (WidthOf(text, size, bold: false) / 2, size * 0.6);
        if (2 * halfWidth > room || !IsFree(at, halfWidth, halfHeight) || Inside(at, halfWidth, halfHeight) != at) return false;
        Add(text, at, size, bold: false, halfWidth, halfHeight);
        return true;
    }

    private static IEnumerable<(double Right, double Down)> Tries =>
        [(0, 0), (1, 0), (-1, 0), (0, 1), (0, -1), (1, 1), (-1, 1), (1, -1), (-1, -1), (0, 2), (0, -2), (0, 3), (0, -3), (0, 4), (0, -4)];

    private void Add(string text, PaperPoint middle, double size, bool bold, double halfWidth, double halfHeight)
    {
        taken.Add((middle.X - halfWidth, middle.Y - halfHeight, middle.X + halfWidth, middle.Y + halfHeight));
        Items.Add(new DrawingItem.Label(text, new PaperPoint(middle.X, middle.Y + (size * 0.35)), size) { Setting = Setting.Center, Bold = bold, Clear = true });
    }

    private PaperPoint Inside(PaperPoint at, double halfWidth, double halfHeight) => new(
        Math.Clamp(at.X, Math.Min(halfWidth + 2, width / 2), Math.Max(width - halfWidth - 2, width / 2)),
        Math.Clamp(at.Y, Math.Min(halfHeight + 2, height / 2), Math.Max(height - halfHeight - 2, height / 2)));

    private bool IsFree(PaperPoint at, double halfWidth, double halfHeight) => taken.All(t =>
        at.X + halfWidth <= t.Left || at.X - halfWidth >= t.Right || at.Y + halfHeight <= t.Top || at.Y - halfHeight >= t.Bottom);
}
