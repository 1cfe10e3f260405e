using Watersown.Land;
using Watersown.Schedule;
using Watersown.Schedule.Board;
using Watersown.Schedule.Board.Paper;
using Watersown.Season.Boards;
using Watersown.Wording;

namespace Watersown.Season.Filling;

/// <summary>Water of one source over some days on paper: what was read at its gate, what it is to give, and where that goes.</summary>
/// <param name="Source">The source.</param>
/// <param name="Paper">Two days back, five ahead.</param>
public sealed record SourcePaper(WaterSource Source, TimePaper Paper)
{
    private static readonly TimeSpan back = TimeSpan.FromDays(2);

    private static readonly TimeSpan ahead = TimeSpan.FromDays(5);

    public required ImmutableArray<PaperWater> Waters { get; init; }

    /// <summary>The line of what is given, as ordered.</summary>
    public required ImmutableArray<PaperPoint> Given { get; init; }

    /// <summary>Flows read at the gate.</summary>
    public required ImmutableArray<PaperPoint> Read { get; init; }

    /// <summary>How high the most that it can give lies.</summary>
    [PlainNumber("points of paper, downward")]
    public required double Cap { get; init; }

    /// <summary>Nights.</summary>
    public required ImmutableArray<(DateTimeOffset From, DateTimeOffset Until)> Dark { get; init; }

    /// <summary>One for each source of the farm, in its order.</summary>
    public static ImmutableArray<SourcePaper> Of(SeasonBook book, SeasonPlan plan)
    {
        var now = book.Now.ToOffset(book.State.Offset);
        var scale = new TimeScale(now - back, now + ahead);
        var lanes = FlowLanes.Of(plan with { State = book.State }, new BoardSpan(BoardZoom.Week, scale.From, scale.Until));
        var dark = FlyingWindows.Nights(book.State, scale.From, scale.Until);
        var paper = new TimePaper(scale) { Ground = 104 };
        return [.. lanes.Select(lane => Of(book, lane, paper, dark))];
    }

    private static SourcePaper Of(SeasonBook book, FlowLane lane, TimePaper paper, ImmutableArray<(DateTimeOffset From, DateTimeOffset Until)> dark)
    {
        var read = book.Story.Where(l => l is { Standing: Standing.Stands, Mark.Fact: FlowSeen seen } && string.Equals(seen.Source, lane.Source.Code, StringComparison.OrdinalIgnoreCase) && paper.Scale.Holds(l.Mark.Happened))
            .Select(l => (At: l.Mark.Happened, Flow: ((FlowSeen)l.Mark.Fact).Flow)).ToImmutableArray();
        var most = lane.Steps.Select(s => (s.Holding + s.Filling + s.Short).CubicFeetPerSecond).Concat(read.Select(r => r.Flow.CubicFeetPerSecond)).Append(lane.Source.Cap.CubicFeetPerSecond).Append(0.01).Max();
        double High(FlowRate flow) => paper.High(flow.CubicFeetPerSecond / most);
        return new SourcePaper(lane.Source, paper)
        {
            Waters = [.. lane.Steps.SelectMany(s => PaperFlow.Stack(s, paper.At, flow => paper.Ground - High(flow), paper.Ground))],
            Given = [.. lane.Steps.SelectMany(s => new[] { s.From, s.Until }.Select(t => new PaperPoint(paper.At(t), High(s.Given))))],
            Read = [.. read.Select(r => new PaperPoint(paper.At(r.At), High(r.Flow)))],
            Cap = High(lane.Source.Cap),
            Dark = dark,
        };
    }
}
