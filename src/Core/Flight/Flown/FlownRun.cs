using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>How it is known where the gate was open.</summary>
public enum GateKnown
{
    /// <summary>The track says so.</summary>
    Told,

    /// <summary>The file draws straight lines apart from each other: each was taken as flown with the gate open from end to end.</summary>
    DrawnApart,

    /// <summary>Worked out: straight over the field along the heading of the job, at its height and speed.</summary>
    WorkedOut,
}

/// <summary>A stretch flown with the gate open.</summary>
/// <param name="Line">Where, in the order flown.</param>
/// <param name="Began">Seconds since 1970, UTC; not a number where no time is told.</param>
/// <param name="Ended">The same at its end.</param>
public sealed record FlownRun(
    ImmutableArray<PlanePoint> Line,
    [property: PlainNumber("seconds since 1970 began, UTC")] double Began,
    [property: PlainNumber("seconds since 1970 began, UTC")] double Ended)
{
    public Length Length
    {
        get
        {
            var meters = 0.0;
            for (var i = 1; i < Line.Length; i++) meters += Turn.Hypot(Line[i].East - Line[i - 1].East, Line[i].North - Line[i - 1].North);
            return Length.FromMeters(meters);
        }
    }

    /// <summary>Over the ground; none where no time is told.</summary>
    public Speed? Speed => Ended > Began ? Quantities.Speed.FromMetersPerSecond(Length.Meters / (Ended - Began)) : null;
}

/// <summary>All that was flown with the gate open, as far as it touches the field.</summary>
public sealed record FlownRuns
{
    /// <summary>In the order flown.</summary>
    public required ImmutableArray<FlownRun> Runs { get; init; }

    public required GateKnown Gate { get; init; }

    /// <summary>The track has a gate signal that never changes, so that it says nothing.</summary>
    public bool SignalStuck { get; init; }

    /// <summary>How far off each end of a run can be, either way; none where no time or speed is told.</summary>
    public required Length? EndError { get; init; }

    /// <summary>Gate-open stretches near by that do not touch the field.</summary>
    public required ImmutableArray<FlownRun> Elsewhere { get; init; }

    /// <summary>Gaps of the track that lie on the field, straight along the way flown: what was flown there is not known.</summary>
    public required ImmutableArray<TrackGap> Unknown { get; init; }

    /// <summary>Length of those gaps, together.</summary>
    public Length UnknownLength => Length.FromMeters(Unknown.Sum(g => Turn.Hypot(g.To.East - g.From.East, g.To.North - g.From.North)));
}
