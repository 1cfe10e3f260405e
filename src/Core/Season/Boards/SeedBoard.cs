using Watersown.Seed;

namespace Watersown.Season.Boards;

/// <summary>A part of a batch's time.</summary>
public enum ClockPart
{
    /// <summary>Under water, within the usual time.</summary>
    InSoak,

    /// <summary>Under water longer than usual: it sprouts too far.</summary>
    SoakLong,

    /// <summary>Taken off the water and draining.</summary>
    Draining,

    /// <summary>Drained and fit to be sown.</summary>
    Usable,

    /// <summary>Past use.</summary>
    PastUse,
}

/// <summary>One part of a batch's time on the scale.</summary>
/// <param name="Part">Which.</param>
/// <param name="From">When it begins.</param>
/// <param name="Until">When it ends.</param>
public sealed record ClockSpan(ClockPart Part, DateTimeOffset From, DateTimeOffset Until)
{
    /// <summary>It has not come yet: as the plan or the rules of the soak place have it.</summary>
    public bool Expected { get; init; }
}

/// <summary>Where a batch stands at the moment of reading.</summary>
public enum BatchStage
{
    /// <summary>Called for and not under water yet.</summary>
    Due,
    InSoak,
    SoakLong,
    Draining,
    Usable,
    PastUse,
}

/// <summary>What a batch must not go beyond.</summary>
public enum BatchLimit
{
    /// <summary>Go under water.</summary>
    Soak,

    /// <summary>Come off the water.</summary>
    Drain,

    /// <summary>Be sown.</summary>
    Use,
}

/// <summary>One batch on the board.</summary>
/// <param name="Batch">The batch as it stands.</param>
public sealed record BatchLine(SoakBatch Batch)
{
    public required BatchStage Stage { get; init; }

    public required ImmutableArray<ClockSpan> Spans { get; init; }

    /// <summary>How long it has been under water or off it; until it is due, how long there is to go.</summary>
    public required TimeSpan Age { get; init; }

    /// <summary>The next moment that cannot be gone past, and what it is for.</summary>
    public required (BatchLimit Limit, DateTimeOffset At) Last { get; init; }

    /// <summary>When it becomes fit to sow, as it stands or as planned.</summary>
    public required DateTimeOffset Ready { get; init; }

    public required DateTimeOffset UseBy { get; init; }

    /// <summary>Dry seed of it that is still there.</summary>
    public required DrySeed Dry { get; init; }

    /// <summary>The same soaked: weighed, or by the best factor at hand.</summary>
    public required SoakedSeed Soaked { get; init; }

    public bool Weighed => Batch.Weighed is not null;

    /// <summary>Fields that the plan sows with it, or that it was meant for.</summary>
    public required ImmutableArray<string> Fields { get; init; }

    /// <summary>When the plan sows its first field.</summary>
    public DateTimeOffset? Sow { get; init; }

    /// <summary>By the plan no field can use it in time.</summary>
    public bool Lost { get; init; }

    public required Working Working { get; init; }
}

/// <summary>A call to make about seed, with its last moment.</summary>
public sealed record SeedBoard
{
    public required TimeScale Scale { get; init; }

    /// <summary>In order of their last moments.</summary>
    public required ImmutableArray<BatchLine> Batches { get; init; }

    /// <summary>What to say to the soak place, soonest first.</summary>
    public required ImmutableArray<Schedule.Decision> Calls { get; init; }

    /// <summary>Dry seed that lies bought and unsoaked, by lot; none known for a lot nobody has counted.</summary>
    public required ImmutableArray<SeedLot> Lots { get; init; }
}
