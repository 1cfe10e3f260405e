namespace Watersown.Schedule;

/// <summary>A step of the chain of a field.</summary>
public enum PlanTaskKind
{
    Ground,
    OrderWater,
    Fill,
    CallSeed,
    Soak,
    Drain,
    Haul,
    Sow,
}

/// <summary>One step of one field in the plan.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Kind">What is done.</param>
/// <param name="Start">When it starts.</param>
/// <param name="End">When it is done.</param>
/// <param name="Resource">What it occupies: a source, a tractor group, a soak place, a strip or an aeroplane.</param>
public sealed record PlanTask(string Field, PlanTaskKind Kind, DateTimeOffset Start, DateTimeOffset End, string Resource)
{
    /// <summary>For ground work: which.</summary>
    public GroundWork? Implement { get; init; }

    /// <summary>For a fill: water given to the field all the while, its own wet ground included.</summary>
    public FlowRate? Flow { get; init; }

    /// <summary>For a fill: how much of <see cref="Flow"/> comes from each source.</summary>
    public ImmutableArray<(string Source, FlowRate Flow)> From { get; init; } = [];

    /// <summary>For seed and sowing: the batch.</summary>
    public string? Batch { get; init; }

    /// <summary>For seed and sowing: dry weight.</summary>
    public DrySeed? Dry { get; init; }

    /// <summary>For seed and sowing: soaked weight.</summary>
    public SoakedSeed? Soaked { get; init; }

    /// <summary>For seed: trailers taken up.</summary>
    public int? Trailers { get; init; }

    /// <summary>For sowing: loads flown.</summary>
    public int? Loads { get; init; }

    /// <summary>Already happened or running; not the plan's to move.</summary>
    public bool Fixed { get; init; }

    /// <summary>A person fixed it.</summary>
    public bool Pinned { get; init; }

    /// <summary>Why it stands where it does, in the grower's words.</summary>
    public ImmutableArray<string> Reasons { get; init; } = [];

    /// <summary>The arithmetic behind its length and weights.</summary>
    public Working Working { get; init; } = Working.Empty;
}

/// <summary>Water ordered from a source between two moments.</summary>
public sealed record OrderedFlow(string Source, DateTimeOffset From, DateTimeOffset Until, FlowRate Flow);

/// <summary>Something that must be decided or said, with its last safe moment.</summary>
/// <param name="By">Last safe moment.</param>
/// <param name="What">What to do or say.</param>
/// <param name="Who">Who is told.</param>
/// <param name="Fields">Field codes it is about.</param>
public sealed record Decision(DateTimeOffset By, string What, string Who, ImmutableArray<string> Fields)
{
    /// <summary>What kind of decision: order-water, cut-water, call-soak, put-in-soak, drain, list-flight, dump-seed.</summary>
    public required string Kind { get; init; }

    /// <summary>What waiting past that moment costs, in words.</summary>
    public required string CostOfWaiting { get; init; }

    /// <summary>The same in money where it can be reckoned.</summary>
    public Money? Cost { get; init; }

    public Working Working { get; init; } = Working.Empty;
}

/// <summary>Something that stands in the way, with by how much, in the grower's words.</summary>
/// <param name="Fields">Field codes it is about.</param>
/// <param name="What">What stands in the way and by how much.</param>
/// <param name="Remedy">What would lift it.</param>
public sealed record Conflict(ImmutableArray<string> Fields, string What, string Remedy)
{
    /// <summary>What kind: pin, water, ground, seed, air, date, assumption.</summary>
    public required string Kind { get; init; }

    public Working Working { get; init; } = Working.Empty;
}

/// <summary>What a plan costs by part, in the farm's prices.</summary>
public sealed record PlanCost(Money Delay, Money HeadAge, Money IdleWater, Money SeedLost, Money Ferry, Money Unsown)
{
    public Money Total => Delay + HeadAge + IdleWater + SeedLost + Ferry + Unsown;
}

/// <summary>What should happen, when, and how far it is proved.</summary>
public sealed record SeasonPlan
{
    public required int Number { get; init; }

    public required DateTimeOffset MadeAt { get; init; }

    public required SeasonState State { get; init; }

    /// <summary>In order of start, then field.</summary>
    public required ImmutableArray<PlanTask> Tasks { get; init; }

    public required ImmutableArray<OrderedFlow> Orders { get; init; }

    public required PlanCost Cost { get; init; }

    /// <summary>No plan under the same rules can cost less than this.</summary>
    public required Money Bound { get; init; }

    /// <summary>How far the plan may be from the best, over its own cost.</summary>
    public Fraction Gap => Cost.Total.Amount <= 0 ? Fraction.Zero : Fraction.FromShare(Math.Max(0, (double)((Cost.Total.Amount - Bound.Amount) / Cost.Total.Amount)));

    public required TimeSpan SolveTime { get; init; }

    public ImmutableArray<Decision> Decisions { get; init; } = [];

    public ImmutableArray<Conflict> Conflicts { get; init; } = [];

    /// <summary>Batches that no field can use in time.</summary>
    public ImmutableArray<string> LostBatches { get; init; } = [];

    /// <summary>What was not known and taken as usual, in words.</summary>
    public ImmutableArray<string> Assumptions { get; init; } = [];

    public PlanTask? Task(string field, PlanTaskKind kind) =>
        Tasks.FirstOrDefault(t => t.Kind == kind && string.Equals(t.Field, field, StringComparison.Ordinal));
}
