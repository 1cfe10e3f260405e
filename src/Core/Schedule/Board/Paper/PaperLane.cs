namespace Watersown.Schedule.Board.Paper;

/// <summary>A shared thing taken, on paper.</summary>
public sealed record PaperUse(LaneBar Bar, PaperBox Box)
{
    /// <summary>There is room to write beside or in it for whom.</summary>
    public bool Written { get; init; }

    [PlainNumber("points of the board, to the right")]
    public double LabelX => Box.X + 4;

    [PlainNumber("points of the board, downward")]
    public double LabelY => Box.Bottom - 2;
}

/// <summary>Hours in which an aeroplane may be planned, on paper.</summary>
public sealed record PaperSlot(LaneSlot Slot, PaperBox Box);

/// <summary>How many are taken over a span, as high as there are many.</summary>
public sealed record PaperCount([property: PlainNumber("things taken")] int Taken, PaperBox Box);

/// <summary>One shared thing on paper.</summary>
public sealed record PaperLane(UseLane Lane)
{
    private const double Top = 5, Thick = 13, Apart = 15, CountHeight = 48, Letter = 8;

    [PlainNumber("points of the board, downward")]
    public required double Height { get; init; }

    public required ImmutableArray<PaperUse> Uses { get; init; }

    public required ImmutableArray<PaperSlot> Slots { get; init; }

    /// <summary>For more than can be shown one by one.</summary>
    public required ImmutableArray<PaperCount> Counts { get; init; }

    internal static PaperLane Of(UseLane lane, BoardScale scale)
    {
        if (lane.IsCounted) return new PaperLane(lane) { Height = CountHeight + (2 * Top), Uses = [], Slots = [], Counts = [.. Counted(lane, scale)] };
        var thick = lane.Kind == LaneKind.Aeroplane ? 2 * Thick : Thick;
        return new PaperLane(lane)
        {
            Height = (2 * Top) + thick + ((lane.Layers - 1) * Apart),
            Uses = [.. Written(lane.Bars.Select(b => new PaperUse(b, BoardPaper.Box(scale, b.From, b.Until, Top + (b.Layer * Apart), thick))), lane.Kind)],
            Slots = [.. lane.Slots.Where(s => scale.Span.Meets(s.From, s.Until)).Select(s => new PaperSlot(s, BoardPaper.Box(scale, s.From, s.Until, Top, thick)))],
            Counts = [],
        };
    }

    /// <summary>A trip of a trailer is written once, where it begins; a use too short for its name goes without.</summary>
    private static IEnumerable<PaperUse> Written(IEnumerable<PaperUse> uses, LaneKind kind) => uses.Select(u => u with
    {
        Written = kind != LaneKind.Aeroplane && u.Bar.Use is not (LaneUse.Drained or LaneUse.ComingBack) && u.Box.Width >= Letter * (u.Bar.Field ?? u.Bar.Batch ?? string.Empty).Length,
    });

    private static IEnumerable<PaperCount> Counted(UseLane lane, BoardScale scale)
    {
        var counts = lane.Counts();
        var most = Math.Max(lane.Most ?? 0, counts.Select(c => c.Taken).DefaultIfEmpty(1).Max());
        for (var i = 0; i < counts.Length; i++)
        {
            var until = i + 1 < counts.Length ? counts[i + 1].From : scale.Span.Until;
            if (counts[i].Taken == 0 || !scale.Span.Meets(counts[i].From, until)) continue;
            var height = Math.Round(CountHeight * counts[i].Taken / most, 2);
            yield return new PaperCount(counts[i].Taken, BoardPaper.Box(scale, counts[i].From, until, Top + CountHeight - height, height));
        }
    }
}
