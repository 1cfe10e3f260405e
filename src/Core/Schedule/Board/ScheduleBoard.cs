using Watersown.Land;

namespace Watersown.Schedule.Board;

/// <summary>
/// A plan laid out over time: one row for each field, one lane for each thing that fields share. Every place is a moment;
/// whoever draws it chooses the scale.
/// </summary>
public sealed record ScheduleBoard
{
    public required BoardSpan Span { get; init; }

    /// <summary>The moment of reading.</summary>
    public required DateTimeOffset Now { get; init; }

    /// <summary>Fields still to be sown in the order of their sowing, then those the plan does not sow, then the sown ones.</summary>
    public required ImmutableArray<BoardRow> Rows { get; init; }

    /// <summary>Water of each source, in the farm's order.</summary>
    public required ImmutableArray<FlowLane> Flows { get; init; }

    /// <summary>Aeroplanes, trailers, soak place, tractors.</summary>
    public required ImmutableArray<UseLane> Lanes { get; init; }

    /// <summary>Spans that are shaded down the whole board, in order of kind and time.</summary>
    public required ImmutableArray<BoardBand> Bands { get; init; }

    /// <summary>Wind at the strip.</summary>
    public required WindTrack Wind { get; init; }
}

/// <summary>Where a field stands on the board.</summary>
public enum BoardGroup
{
    ToSow,
    NotInPlan,
    Sown,
}

/// <summary>One field over time.</summary>
public sealed record BoardRow(Field Field, BoardGroup Group)
{
    /// <summary>Ground track first, then seed by layer, each in order of time.</summary>
    public required ImmutableArray<BoardBar> Bars { get; init; }

    /// <summary>Last moments to ring somebody, in order.</summary>
    public required ImmutableArray<BoardMoment> Moments { get; init; }

    /// <summary>What holds the field where it is.</summary>
    public required BoardReason Reason { get; init; }

    /// <summary>What stands in the way of this field.</summary>
    public required ImmutableArray<Conflict> Conflicts { get; init; }

    /// <summary>Steps of it that a person has fixed, the newest known ones, whether or not the plan has them yet.</summary>
    public ImmutableArray<Pin> Pins { get; init; } = [];

    /// <summary>When it is sown by the plan, the first time.</summary>
    public DateTimeOffset? Sow => Bars.FirstOrDefault(b => b.State == BarState.Sowing)?.From;
}

/// <summary>What lies under one another in a row.</summary>
public enum BarTrack
{
    Ground,
    Seed,
}

/// <summary>What a bar says: each has one word and one pattern.</summary>
public enum BarState
{
    TooWet,
    DryGround,
    Working,
    Filling,
    Full,
    Sowing,
    Sown,
    InSoak,
    Drained,
    OnTheRoad,
    NoWord,
}

/// <summary>A span in which one thing is true of a field.</summary>
/// <param name="Track">Ground and water, or seed.</param>
/// <param name="Layer">For seed of several sowings: 0 on top.</param>
/// <param name="State">What is true.</param>
/// <param name="From">First moment.</param>
/// <param name="Until">Last moment; where the board ends, if it goes on.</param>
public sealed record BoardBar(BarTrack Track, int Layer, BarState State, DateTimeOffset From, DateTimeOffset Until)
{
    /// <summary>Unique on the board, the same from plan to plan: <c>N4/sow</c>.</summary>
    public required string Key { get; init; }

    /// <summary>The step of the plan that it shows; none for what is true between steps.</summary>
    public PlanTask? Task { get; init; }

    /// <summary>Somebody was told of this step.</summary>
    public ToldTo? Told { get; init; }

    public bool Fixed => Task is { Fixed: true };

    public bool Pinned => Task is { Pinned: true };

    /// <summary>A person may pin it to another hour.</summary>
    public bool CanBePinned => Task is { Fixed: false, Kind: PlanTaskKind.Fill or PlanTaskKind.Sow };

    /// <summary>It goes on beyond the board.</summary>
    public bool GoesOn { get; init; }
}

/// <summary>A step that somebody was told of.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Kind">The step.</param>
/// <param name="Start">When it was said to start.</param>
/// <param name="Who">Who was told.</param>
public sealed record ToldTo(string Field, PlanTaskKind Kind, DateTimeOffset Start, string Who)
{
    /// <summary>When it was said.</summary>
    public DateTimeOffset? At { get; init; }
}

/// <summary>The last moment at which water can be ordered or seed called for a field.</summary>
/// <param name="At">Last safe moment.</param>
/// <param name="Task">The step of the plan.</param>
public sealed record BoardMoment(DateTimeOffset At, PlanTask Task)
{
    public required string Key { get; init; }

    public ToldTo? Told { get; init; }
}

/// <summary>What is shaded down the board.</summary>
public enum BandKind
{
    Night,
    Wind,
    NoForecast,
}

/// <summary>A span shaded down the whole board.</summary>
public sealed record BoardBand(BandKind Kind, DateTimeOffset From, DateTimeOffset Until);

/// <summary>What holds a field where it is: the one thing that, eased by an hour, would bring it forward.</summary>
public enum BoardHold
{
    Pinned,
    Ground,
    Water,
    Seed,
    Wind,
    Plane,
    Trailers,
    Others,
    TooWet,
    NotInPlan,
    Sown,
}

/// <summary>Why a field is not sown sooner.</summary>
/// <param name="Hold">What holds it.</param>
public sealed record BoardReason(BoardHold Hold)
{
    /// <summary>When that is there.</summary>
    public DateTimeOffset? At { get; init; }

    /// <summary>Field codes that go first, or the source whose water it waits for.</summary>
    public ImmutableArray<string> Others { get; init; } = [];
}
