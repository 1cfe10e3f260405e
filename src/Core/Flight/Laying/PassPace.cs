namespace Watersown.Flight.Laying;

/// <summary>What makes one way of flying a field longer than another.</summary>
/// <param name="Swath">Widest distance between passes.</param>
/// <param name="Speed">Ground speed while sowing.</param>
/// <param name="Turn">From the end of one pass to the start of the next, by the watch.</param>
public sealed record PassPace(Length Swath, Speed Speed, TimeSpan Turn)
{
    /// <summary>How turns to farther passes are reckoned from the one timed; none where each pass lies beside the last, and what is farther is flown besides.</summary>
    public TurnReach? Reach { get; init; }

    /// <summary>Wind that is reckoned with; none for still air.</summary>
    public PassWind? Wind { get; init; }

    /// <summary>As fast as passes on a heading are flown, one way as often as the other.</summary>
    internal Speed SpeedOn(Bearing heading) => Wind is { } wind ? wind.Mean(Speed, heading) : Speed;

    /// <summary>No heading is flown faster: square to the wind.</summary>
    private Speed Fastest => Wind is { } wind ? SpeedOn(Bearing.FromDegrees(wind.From.Degrees + 90)) : Speed;

    /// <summary>The shortest turn there can be: the one timed, or a plain half circle where passes are taken up far apart.</summary>
    internal TimeSpan LeastTurn => Reach is { } reach && reach.Time(2 * reach.Radius) is var half && half < Turn ? half : Turn;

    /// <summary>The least that passes and the turns between them take, whatever their heading.</summary>
    [Source(nameof(Sources.WholePassCount), "length / speed + (passes − 1) × turn")]
    public TimeSpan Time(Length flown, [PlainNumber("passes")] int passes) => (flown / Fastest) + (Math.Max(0, passes - 1) * Turn);

    /// <summary>Passes on a heading and the turns between them.</summary>
    [Source(nameof(Sources.WholePassCount), "length / speed on the heading + (passes − 1) × turn")]
    public TimeSpan Time(Length flown, [PlainNumber("passes")] int passes, Bearing heading) => (flown / SpeedOn(heading)) + (Math.Max(0, passes - 1) * Turn);
}
