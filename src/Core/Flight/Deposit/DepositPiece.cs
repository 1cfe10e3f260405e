namespace Watersown.Flight.Deposit;

/// <summary>A border across the line of flight, from the left end of the pattern to its right end, in cells.</summary>
internal readonly record struct AcrossEdge(double LeftAlong, double LeftAcross, double RightAlong, double RightAcross)
{
    public double Least => Math.Min(LeftAlong, RightAlong);

    public double Most => Math.Max(LeftAlong, RightAlong);

    /// <summary>It runs level with the lines of cells: it parts them, not cells of one line.</summary>
    public bool IsLevel => RightAlong == LeftAlong;

    /// <summary>The border through a place, square to a way there, or where the sides of two ways meet.</summary>
    /// <param name="place">The place.</param>
    /// <param name="before">The way that comes to it.</param>
    /// <param name="after">The way that leaves it; both the same at the end of a line.</param>
    /// <param name="reach">How far the pattern reaches, in cells.</param>
    public static AcrossEdge At((double Along, double Across) place, (double Along, double Across) before, (double Along, double Across) after, (double Left, double Right) reach)
    {
        var (along, across) = before;
        if (before != after)
        {
            var per = 1 / (1 + ((before.Along * after.Along) + (before.Across * after.Across)));
            (along, across) = ((before.Along + after.Along) * per, (before.Across + after.Across) * per);
        }

        return new AcrossEdge(
            place.Along + (across * reach.Left), place.Across - (along * reach.Left),
            place.Along - (across * reach.Right), place.Across + (along * reach.Right));
    }
}

/// <summary>A border with what parts the cells of a line.</summary>
internal readonly struct LeaningEdge(in AcrossEdge edge)
{
    private readonly double along = edge.LeftAlong;
    private readonly double across = edge.LeftAcross - 0.5;
    private readonly double lean = (edge.RightAcross - edge.LeftAcross) / (edge.RightAlong - edge.LeftAlong);

    /// <summary>It rises to the right, on the lines as they are counted.</summary>
    public bool Rises { get; } = edge.RightAlong > edge.LeftAlong == edge.RightAcross > edge.LeftAcross;

    /// <summary>The first cell of a line that lies beyond it on the right; the cell's middle decides.</summary>
    public double FirstRight(double line) => Math.Ceiling(across + ((line - along) * lean));
}

/// <summary>One straight piece of a pass with the borders before and behind it, in cells.</summary>
/// <param name="Along">Where it begins.</param>
/// <param name="Across">The same across.</param>
/// <param name="WayAlong">Its way, of length one.</param>
/// <param name="WayAcross">The same across.</param>
/// <param name="Back">The border it begins at.</param>
/// <param name="Front">The border it ends at.</param>
internal readonly record struct DepositPiece(double Along, double Across, double WayAlong, double WayAcross, AcrossEdge Back, AcrossEdge Front)
{
    // So nearly across the lines of cells, sides tell too little of where a line begins and ends.
    private const double AlmostAcross = 1e-3;

    /// <summary>Both sides run the piece's own way.</summary>
    public bool IsSound =>
        ((Front.LeftAlong - Back.LeftAlong) * WayAlong) + ((Front.LeftAcross - Back.LeftAcross) * WayAcross) > 0
        && ((Front.RightAlong - Back.RightAlong) * WayAlong) + ((Front.RightAcross - Back.RightAcross) * WayAcross) > 0;

    /// <summary>Where its cells lie within the pattern.</summary>
    public PatternPlace Place(ShapeTable table)
    {
        var (across, along) = (WayAlong * table.PerCell, -WayAcross * table.PerCell);
        var start = table.Start - (Across * across) - (Along * along);
        if (Math.Abs(WayAlong) < AlmostAcross) return new PatternPlace(start, along, across, 0, double.NegativeInfinity, double.PositiveInfinity);
        // Nothing lies before the first knot and beyond the last: there are the sides.
        var (a, b) = ((1 - start) / across, (table.Pieces - 1 - start) / across);
        return new PatternPlace(start, along, across, WayAcross / WayAlong, Math.Min(a, b), Math.Max(a, b));
    }
}

/// <summary>Where cells lie within the pattern of a piece, in pieces of its table, and between which cells a line of them lies within its sides.</summary>
internal readonly record struct PatternPlace(double Start, double PerAlong, double PerAcross, double Lean, double Low, double High)
{
    public double At(double along, double across) => Start + (along * PerAlong) + (across * PerAcross);

    /// <summary>All cells within the sides over lines of cells, and a few more.</summary>
    public (int First, int End) Sides(double from, double until, int across)
    {
        var (a, b) = (from * Lean, until * Lean);

        // Within the cells, so nothing is lost in making whole numbers of them; a check on every line would take longer than the line.
        return unchecked(((int)Math.Clamp(Low + Math.Min(a, b) - 0.5, 0, across), (int)Math.Clamp(High + Math.Max(a, b) + 1, 0, across)));
    }
}
