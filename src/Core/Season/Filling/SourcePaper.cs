using Watersown.Land;
using Watersown.Schedule;
using Watersown.Schedule.Board;
using Watersown.Schedule.Board.Paper;
using Watersown.Season.Boards;
using Watersown.Wording;

namespace Watersown.Season.Filling;

/// <summary>Water of one source over some days on paper: what was read at its gate, what it is to give, and where that goes.</summary>
/// <param name="Source">The source.</param>
/// <param name="Scale">Two days back, five ahead.</param>
public sealed record SourcePaper(WaterSource Source, TimeScale Scale)
{
    private const double Left = 30, Right = 358, Top = 12, Ground = 104;

    private static readonly TimeSpan back = TimeSpan.FromDays(2);

    private static readonly TimeSpan ahead = TimeSpan.FromDays(5);

    [PlainNumber("points of paper")]
    public static double Width => 360;

    [PlainNumber("points of paper")]
    public static double Height => 124;

    [PlainNumber("points of paper, downward")]
    public static double GroundAt => Ground;

    [PlainNumber("points of paper, to the right")]
    public static double LeftEdge => Left;

    [PlainNumber("points of paper, to the right")]
    public static double RightEdge => Right;

    public required ImmutableArray<PaperWater> Waters { get; init; }

    /// <summary>The line of what is given, as ordered.</summary>
    public required ImmutableArray<PaperPoint> Given { get; init; }

    /// <summary>Flows read at the gate.</summary>
    public required ImmutableArray<(PaperPoint At, FlowRate Flow)> Read { get; init; }

    /// <summary>How high the most that it can give lies.</summary>
    [PlainNumber("points of paper, downward")]
    public required double Cap { get; init; }

    /// <summary>Nights.</summary>
    public required ImmutableArray<(DateTimeOffset From, DateTimeOffset Until)> Dark { get; init; }

    /// <summary>The coming days' changes of what it gives.</summary>
    public required ImmutableArray<FlowChange> Changes { get; init; }

    /// <summary>Where a moment stands.</summary>
    [PlainNumber("points of paper, to the right")]
    public double At(DateTimeOffset moment) => Math.Round(Left + ((Right - Left) * Scale.At(moment).Share), 2);

    /// <summary>One for each source of the farm, in its order.</summary>
    public static ImmutableArray<SourcePaper> Of(SeasonBook book, SeasonPlan plan)
    {
        var now = book.Now.ToOffset(book.State.Offset);
        var scale = new TimeScale(now - back, now + ahead);
        var lanes = FlowLanes.Of(plan with { State = book.State }, new BoardSpan(BoardZoom.Week, scale.From, scale.Until));
        var dark = FlyingWindows.Nights(book.State, scale.From, scale.Until);
        return [.. lanes.Select(lane => Of(book, lane, scale, dark))];
    }

    private static SourcePaper Of(SeasonBook book, FlowLane lane, TimeScale scale, ImmutableArray<(DateTimeOffset From, DateTimeOffset Until)> dark)
    {
        var read = book.Story.Where(l => l is { Standing: Standing.Stands, Mark.Fact: FlowSeen seen } && string.Equals(seen.Source, lane.Source.Code, StringComparison.OrdinalIgnoreCase) && scale.Holds(l.Mark.Happened))
            .Select(l => (At: l.Mark.Happened, Flow: ((FlowSeen)l.Mark.Fact).Flow)).ToImmutableArray();
        var most = lane.Steps.Select(s => (s.Holding + s.Filling + s.Short).CubicFeetPerSecond).Concat(read.Select(r => r.Flow.CubicFeetPerSecond)).Append(lane.Source.Cap.CubicFeetPerSecond).Append(0.01).Max();
        double High(FlowRate flow) => (Ground - Top) * flow.CubicFeetPerSecond / most;
        double X(DateTimeOffset moment) => Math.Round(Left + ((Right - Left) * scale.At(moment).Share), 2);
        return new SourcePaper(lane.Source, scale)
        {
            Waters = [.. lane.Steps.SelectMany(s => PaperFlow.Stack(s, X, High, Ground))],
            Given = [.. lane.Steps.SelectMany(s => new[] { s.From, s.Until }.Select(t => new PaperPoint(X(t), Math.Round(Ground - High(s.Given), 2))))],
            Read = [.. read.Select(r => (new PaperPoint(X(r.At), Math.Round(Ground - High(r.Flow), 2)), r.Flow))],
            Cap = Math.Round(Ground - High(lane.Source.Cap), 2),
            Dark = dark,
            Changes = [.. lane.Changes.Where(c => c.At > book.Now)],
        };
    }
}
