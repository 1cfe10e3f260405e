namespace Watersown.Schedule.Board.Paper;

/// <summary>A span on paper: how far from the left, and how wide.</summary>
public readonly record struct PaperSpan(
    [property: PlainNumber("points of the board, to the right")] double X,
    [property: PlainNumber("points of the board")] double Width)
{
    /// <summary>Its middle.</summary>
    [PlainNumber("points of the board, to the right")]
    public double Middle => X + (Width / 2);
}

/// <summary>A box on paper.</summary>
public readonly record struct PaperBox(
    [property: PlainNumber("points of the board, to the right")] double X,
    [property: PlainNumber("points of the board, downward")] double Y,
    [property: PlainNumber("points of the board")] double Width,
    [property: PlainNumber("points of the board")] double Height)
{
    [PlainNumber("points of the board, to the right")]
    public double Right => X + Width;

    [PlainNumber("points of the board, downward")]
    public double Bottom => Y + Height;
}

/// <summary>A stroke of the scale on paper.</summary>
/// <param name="Tick">The moment.</param>
/// <param name="X">Where.</param>
public sealed record PaperTick(BoardTick Tick, [property: PlainNumber("points of the board, to the right")] double X)
{
    /// <summary>The hour is written beside it: as many as there is room for.</summary>
    public bool Written { get; init; }
}

/// <summary>A day of the scale on paper.</summary>
public sealed record PaperDay(DateOnly Day, PaperSpan Span)
{
    /// <summary>Where its name begins.</summary>
    [PlainNumber("points of the board, to the right")]
    public double Label => Span.X + 4;

    /// <summary>There is room for weekday, day and month.</summary>
    public bool Wide => Span.Width >= 80;
}

/// <summary>A shaded span on paper.</summary>
public sealed record PaperBand(BoardBand Band, PaperSpan Span);

/// <summary>A board with the places of everything on it. Nothing is left to reckon for whoever draws it.</summary>
public sealed record BoardPaper
{
    public required ScheduleBoard Board { get; init; }

    public required BoardScale Scale { get; init; }

    [PlainNumber("points of the board")]
    public double Width => Scale.Width;

    public required ImmutableArray<PaperDay> Days { get; init; }

    public required ImmutableArray<PaperTick> Ticks { get; init; }

    public required ImmutableArray<PaperBand> Bands { get; init; }

    /// <summary>Where the moment of reading stands; none where the board does not reach it.</summary>
    [PlainNumber("points of the board, to the right")]
    public double? Now { get; init; }

    public required PaperWind Wind { get; init; }

    public required ImmutableArray<PaperRow> Rows { get; init; }

    public required ImmutableArray<PaperFlow> Flows { get; init; }

    public required ImmutableArray<PaperLane> Lanes { get; init; }

    /// <summary>Puts a board on paper.</summary>
    public static BoardPaper Of(ScheduleBoard board)
    {
        var scale = new BoardScale(board.Span);
        return new BoardPaper
        {
            Board = board,
            Scale = scale,
            Days = [.. board.Span.Days.Select((d, i) => new PaperDay(d, Span(scale, board.Span.From.AddDays(i), board.Span.From.AddDays(i + 1))))],
            Ticks = [.. board.Span.Ticks().Select(t => new PaperTick(t, scale.At(t.At)) { Written = !t.Heavy && board.Span.HoursApart is not null && (board.Span.Zoom != BoardZoom.Day || t.At.Hour % 2 == 0) })],
            Bands = [.. board.Bands.Select(b => new PaperBand(b, Span(scale, b.From, b.Until)))],
            Now = board.Span.Has(board.Now) ? scale.At(board.Now) : null,
            Wind = PaperWind.Of(board.Wind, scale),
            Rows = [.. board.Rows.Select(r => PaperRow.Of(r, scale))],
            Flows = [.. board.Flows.Select(f => PaperFlow.Of(f, scale))],
            Lanes = [.. board.Lanes.Select(l => PaperLane.Of(l, scale))],
        };
    }

    internal static PaperSpan Span(BoardScale scale, DateTimeOffset from, DateTimeOffset until) => new(scale.At(from), Math.Round(scale.At(until) - scale.At(from), 2));

    internal static PaperBox Box(BoardScale scale, DateTimeOffset from, DateTimeOffset until, double y, double height)
    {
        var span = Span(scale, from, until);
        return new PaperBox(span.X, y, Math.Max(span.Width, 1), height);
    }
}
