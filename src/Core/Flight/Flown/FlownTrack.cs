using Watersown.Land;
using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>Whether a line runs from one place of a track to the next.</summary>
public enum TrackBreak
{
    /// <summary>It does.</summary>
    None,

    /// <summary>The file itself begins a new piece.</summary>
    Piece,

    /// <summary>Time is missing, the receiver jumped, or the track came back from far away.</summary>
    Lost,
}

/// <summary>One place of a clean track, on the field's plane.</summary>
/// <param name="At">Where.</param>
/// <param name="Seconds">When; not a number where no time is told.</param>
public readonly record struct FlownFix(PlanePoint At, [property: PlainNumber("seconds since 1970 began, UTC")] double Seconds)
{
    [PlainNumber("meters; not a number where not told")]
    public float Height { get; init; }

    [PlainNumber("meters per second; not a number where not told")]
    public float Speed { get; init; }

    public GateSign Gate { get; init; }

    /// <summary>What lies between this place and the one before.</summary>
    public TrackBreak Break { get; init; }
}

/// <summary>A stretch of which the track says nothing.</summary>
/// <param name="From">Where it was lost.</param>
/// <param name="To">Where it came back.</param>
/// <param name="Lasted">For how long.</param>
public sealed record TrackGap(PlanePoint From, PlanePoint To, TimeSpan Lasted);

/// <summary>Places of a track that lie far from the field.</summary>
/// <param name="Around">The middle of a square of a fiftieth of a degree.</param>
/// <param name="Count">How many lie in it.</param>
public sealed record FarPlace(GeoPoint Around, long Count);

/// <summary>A track made clean: what lies near the field, and how much of the rest was dropped and why.</summary>
public sealed record FlownTrack
{
    public required LocalPlane Plane { get; init; }

    /// <summary>Near the field, in the order flown.</summary>
    public required ImmutableArray<FlownFix> Fixes { get; init; }

    /// <summary>All places given, dropped ones among them.</summary>
    public required long Given { get; init; }

    public required ImmutableArray<Dropped> Dropped { get; init; }

    /// <summary>The usual time from one place to the next; none where no time is told.</summary>
    public required TimeSpan? Every { get; init; }

    /// <summary>Where time is missing, near the field.</summary>
    public required ImmutableArray<TrackGap> Gaps { get; init; }

    /// <summary>What lies far from the field, most first.</summary>
    public required ImmutableArray<FarPlace> Far { get; init; }

    public bool TimeTold => Every is not null;
}
