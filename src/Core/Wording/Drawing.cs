namespace Watersown.Wording;

/// <summary>A point on paper, points from the left and from the top.</summary>
public readonly record struct PaperPoint(
    [property: PlainNumber("points of paper, to the right")] double X,
    [property: PlainNumber("points of paper, downward")] double Y);

/// <summary>A line drawing in black on white, and what it says to somebody who cannot see it.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Description">What it shows, in a few sentences.</param>
public sealed record Drawing(string Title, string Description)
{
    [PlainNumber("points of paper")]
    public required double Width { get; init; }

    [PlainNumber("points of paper")]
    public required double Height { get; init; }

    /// <summary>Later ones are drawn over earlier ones.</summary>
    public required ImmutableArray<DrawingItem> Items { get; init; }
}

/// <summary>Something drawn.</summary>
public abstract record DrawingItem
{
    private DrawingItem()
    {
    }

    /// <summary>Lines through points, one ring or several; where several are filled, one inside another is a hole.</summary>
    public sealed record Path(ImmutableArray<ImmutableArray<PaperPoint>> Rings) : DrawingItem
    {
        public bool Closed { get; init; }

        /// <summary>Width of the line, points; 0 draws no line.</summary>
        [PlainNumber("points of paper")]
        public double Stroke { get; init; } = 1;

        public bool Dashed { get; init; }

        public Ink Fill { get; init; }
    }

    /// <summary>A few words.</summary>
    /// <param name="Text">What they say.</param>
    /// <param name="At">Where: the left end, middle or right end of the base line.</param>
    /// <param name="Size">Height of type, points.</param>
    public sealed record Label(string Text, PaperPoint At, [property: PlainNumber("points of paper")] double Size) : DrawingItem
    {
        public Setting Setting { get; init; }

        public bool Bold { get; init; }

        /// <summary>White behind the words, so that lines do not cross them.</summary>
        public bool Clear { get; init; }
    }
}

/// <summary>What a shape is filled with.</summary>
public enum Ink
{
    None,
    White,
    Pale,
    Gray,
    Black,
}
