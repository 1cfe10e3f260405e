namespace Watersown.Schedule.Board.Paper;

/// <summary>What water of a source goes into.</summary>
public enum FlowUse
{
    Holding,
    Filling,
    Over,
    Short,
}

/// <summary>Water of one use over a span, as high as it is much.</summary>
public sealed record PaperWater(FlowUse Use, FlowStep Step, PaperBox Box);

/// <summary>A change of flow that must be asked for, on paper.</summary>
/// <param name="Change">The change.</param>
/// <param name="X">Where it happens.</param>
public sealed record PaperChange(FlowChange Change, [property: PlainNumber("points of the board, to the right")] double X)
{
    /// <summary>Where the last moment to ask for it stands; none where the board does not reach it.</summary>
    [PlainNumber("points of the board, to the right")]
    public double? AskBy { get; init; }
}

/// <summary>One source on paper: flow upward, time to the right.</summary>
public sealed record PaperFlow(FlowLane Lane)
{
    private const double Top = 8, Bottom = 56;

    [PlainNumber("points of the board, downward")]
    public static double Height => Bottom + 6;

    /// <summary>Where nothing flows.</summary>
    [PlainNumber("points of the board, downward")]
    public static double Ground => Bottom;

    /// <summary>Length of the stroke of a last moment.</summary>
    [PlainNumber("points of the board")]
    public static double LastTop => Ground - 3;

    /// <summary>How high the most that it can give lies.</summary>
    [PlainNumber("points of the board, downward")]
    public required double Cap { get; init; }

    public required ImmutableArray<PaperWater> Waters { get; init; }

    /// <summary>The line of what is given.</summary>
    public required ImmutableArray<Wording.PaperPoint> Given { get; init; }

    public required ImmutableArray<PaperChange> Changes { get; init; }

    internal static PaperFlow Of(FlowLane lane, BoardScale scale)
    {
        var most = lane.Steps.Select(s => (s.Holding + s.Filling + s.Short).CubicFeetPerSecond).Append(lane.Source.Cap.CubicFeetPerSecond).Append(0.01).Max();
        double High(FlowRate flow) => (Bottom - Top) * flow.CubicFeetPerSecond / most;
        return new PaperFlow(lane)
        {
            Cap = Math.Round(Bottom - High(lane.Source.Cap), 2),
            Waters = [.. lane.Steps.SelectMany(s => Stack(s, scale.At, High, Bottom))],
            Given = [.. lane.Steps.SelectMany(s => new[] { s.From, s.Until }.Select(t => new Wording.PaperPoint(scale.At(t), Math.Round(Bottom - High(s.Given), 2))))],
            Changes = [.. lane.Changes.Where(c => scale.Span.Has(c.At)).Select(c => new PaperChange(c, scale.At(c.At)) { AskBy = scale.Span.Has(c.AskBy) ? scale.At(c.AskBy) : null })],
        };
    }

    /// <summary>The uses of a step on top of one another.</summary>
    /// <param name="step">What flows.</param>
    /// <param name="at">Where a moment stands.</param>
    /// <param name="high">How high a flow is drawn.</param>
    /// <param name="ground">Where nothing flows.</param>
    internal static IEnumerable<PaperWater> Stack(FlowStep step, Func<DateTimeOffset, double> at, Func<FlowRate, double> high, double ground)
    {
        var foot = ground;
        foreach (var (use, flow) in new[] { (FlowUse.Holding, step.Holding), (FlowUse.Filling, step.Filling), (FlowUse.Over, step.Over), (FlowUse.Short, step.Short) })
        {
            // A line thinner than the pen says nothing.
            var height = Math.Round(high(flow), 2);
            if (height < 0.5) continue;
            foot -= height;
            yield return new PaperWater(use, step, new PaperBox(at(step.From), Math.Round(foot, 2), Math.Round(at(step.Until) - at(step.From), 2), height));
        }
    }
}
