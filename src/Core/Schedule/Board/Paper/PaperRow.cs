namespace Watersown.Schedule.Board.Paper;

/// <summary>A bar of a field on paper.</summary>
/// <param name="Bar">What it shows.</param>
/// <param name="Box">Where it is drawn.</param>
public sealed record PaperBar(BoardBar Bar, PaperBox Box)
{
    /// <summary>Where a finger takes hold of it: never smaller than a finger needs.</summary>
    public required PaperBox Hold { get; init; }
}

/// <summary>The upright at which a field is sown, with room for its hour beside it.</summary>
/// <param name="Bar">The sowing.</param>
/// <param name="X">Where.</param>
public sealed record PaperSow(BoardBar Bar, [property: PlainNumber("points of the board, to the right")] double X)
{
    /// <summary>The hour stands left of it: there is no room on the right.</summary>
    public bool Left { get; init; }

    /// <summary>Where its hour is written: the start of the words, or their end where they stand left.</summary>
    [PlainNumber("points of the board, to the right")]
    public double Label => Left ? X - 5 : X + 5;
}

/// <summary>A peg: a step that a person has fixed.</summary>
/// <param name="Pin">The step.</param>
/// <param name="X">Where.</param>
public sealed record PaperPeg(Pin Pin, [property: PlainNumber("points of the board, to the right")] double X)
{
    /// <summary>The plan does not have it there yet.</summary>
    public required bool Waits { get; init; }
}

/// <summary>A last moment to ring somebody, on paper.</summary>
public sealed record PaperMoment(BoardMoment Moment, [property: PlainNumber("points of the board, to the right")] double X);

/// <summary>One field on paper.</summary>
public sealed record PaperRow(BoardRow Row)
{
    /// <summary>Where the ground bar lies; seed lies under it.</summary>
    internal const double GroundTop = 8, GroundHeight = 14, SeedTop = 25, SeedHeight = 11, SeedApart = 13, FootRoom = 15, LeastHold = 26, LabelRoom = 84;

    public required ImmutableArray<PaperBar> Bars { get; init; }

    public required ImmutableArray<PaperSow> Sows { get; init; }

    public required ImmutableArray<PaperPeg> Pegs { get; init; }

    public required ImmutableArray<PaperMoment> Moments { get; init; }

    [PlainNumber("points of the board, downward")]
    public required double Height { get; init; }

    /// <summary>Foot of the upright at which it is sown, and of the words beside it.</summary>
    [PlainNumber("points of the board, downward")]
    public double Foot => Height - FootRoom;

    /// <summary>Length of the stroke of a last moment.</summary>
    [PlainNumber("points of the board")]
    public static double LastTop => Ground - 3;

    /// <summary>Foot of the ground bar, on which uprights and last moments stand.</summary>
    [PlainNumber("points of the board, downward")]
    public static double Ground => GroundTop + GroundHeight;

    /// <summary>Where a step of it would stand at another time.</summary>
    public static PaperBox Ghost(DateTimeOffset from, DateTimeOffset until, BoardScale scale) => BoardPaper.Box(scale, from, until, GroundTop - 4, GroundHeight + 8);

    internal static PaperRow Of(BoardRow row, BoardScale scale)
    {
        var layers = row.Bars.Where(b => b.Track == BarTrack.Seed).Select(b => b.Layer + 1).DefaultIfEmpty(1).Max();
        return new PaperRow(row)
        {
            Bars = [.. row.Bars.Select(b => Bar(b, scale))],
            Sows = [.. row.Bars.Where(b => b.State == BarState.Sowing && scale.Span.Has(b.From)).Select(b => new PaperSow(b, scale.At(b.From)) { Left = scale.At(b.From) > scale.Width - LabelRoom })],
            Pegs = [.. row.Pins.Where(p => scale.Span.Has(p.Start)).Select(p => new PaperPeg(p, scale.At(p.Start)) { Waits = !row.Bars.Any(b => b.Pinned && b.Task is { } t && TaskWords.Of(t.Kind) == p.Task && t.Start == p.Start) })],
            Moments = [.. row.Moments.Select(m => new PaperMoment(m, scale.At(m.At)))],
            Height = SeedTop + SeedHeight + ((layers - 1) * SeedApart) + FootRoom,
        };
    }

    private static PaperBar Bar(BoardBar bar, BoardScale scale)
    {
        var box = bar.Track == BarTrack.Ground
            ? BoardPaper.Box(scale, bar.From, bar.Until, GroundTop, GroundHeight)
            : BoardPaper.Box(scale, bar.From, bar.Until, SeedTop + (bar.Layer * SeedApart), SeedHeight);
        // A sowing of an hour is a stroke on a week's board: it is taken hold of by more than is drawn.
        var wider = Math.Max(0, LeastHold - box.Width);
        return new PaperBar(bar, box) { Hold = new PaperBox(box.X - (wider / 2), GroundTop - 6, box.Width + wider, LeastHold) };
    }
}
