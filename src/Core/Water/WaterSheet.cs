using Watersown.Land;

namespace Watersown.Water;

/// <summary>What an irrigator must know for one day, in the order of the route.</summary>
public sealed record WaterSheet
{
    public required DateOnly Day { get; init; }

    /// <summary>Who carries it; none for whoever does.</summary>
    public string? For { get; init; }

    /// <summary>Fields from which no water may be let out.</summary>
    public required ImmutableArray<Field> NoSpill { get; init; }

    /// <summary>By source, in the farm's order; sources with nothing to do are left out.</summary>
    public required ImmutableArray<SourceRoute> Routes { get; init; }

    /// <summary>Fields with something to do whose source is not known.</summary>
    public ImmutableArray<WaterStop> Loose { get; init; } = [];

    /// <summary>Changes of flow to ask for, by the moment they must be sent.</summary>
    public required ImmutableArray<WaterChange> Changes { get; init; }
}

/// <summary>The stops along one source.</summary>
/// <param name="Source">Where the water comes from.</param>
/// <param name="Now">What runs; none known.</param>
/// <param name="Stops">In the order of the farm's fields.</param>
public sealed record SourceRoute(WaterSource Source, FlowRate? Now, ImmutableArray<WaterStop> Stops);

/// <summary>What is to be done at a field.</summary>
public enum WaterTask
{
    /// <summary>Let water in for the first time.</summary>
    Open,

    /// <summary>Water is running in.</summary>
    Fill,

    /// <summary>Full and waiting for seed: keep it shallow.</summary>
    HoldForSeed,

    /// <summary>Sown: keep it as it stands.</summary>
    HoldSown,
}

/// <summary>One field on the route.</summary>
public sealed record WaterStop(Field Field, WaterTask Task)
{
    /// <summary>When water is let in.</summary>
    public DateTimeOffset? At { get; init; }

    public int? ChecksWet { get; init; }

    /// <summary>When the wet checks were last heard of.</summary>
    public DateTimeOffset? AsOf { get; init; }

    /// <summary>Depth to aim at; none where it is to stay as it stands.</summary>
    public WaterDepth? Target { get; init; }

    /// <summary>Depth last told.</summary>
    public WaterDepth? Depth { get; init; }

    /// <summary>What runs in while it fills, all sources together.</summary>
    public FlowRate? Flow { get; init; }

    /// <summary>When it should be full.</summary>
    public DateTimeOffset? FullBy { get; init; }

    /// <summary>The check that is first wet next on that day or after; none where the last one is wet.</summary>
    public CheckDue? NextCheck { get; init; }

    public bool NoSpill { get; init; }

    /// <summary>When it is to be sown by the plan.</summary>
    public DateTimeOffset? Sow { get; init; }
}

/// <summary>When water should come to a check.</summary>
/// <param name="Number">Order from the head.</param>
/// <param name="At">When it is first wet.</param>
public sealed record CheckDue(int Number, DateTimeOffset At);

/// <summary>A change of flow to ask a source for. The text asks; the district decides.</summary>
/// <param name="Source">Where the water comes from.</param>
/// <param name="Before">What runs before.</param>
/// <param name="After">What is asked for.</param>
/// <param name="At">When it is to change.</param>
/// <param name="SendBy">Last moment to send it.</param>
public sealed record WaterChange(WaterSource Source, FlowRate Before, FlowRate After, DateTimeOffset At, DateTimeOffset SendBy);

/// <summary>Depths that the crew aims at.</summary>
public static class WaterTargets
{
    /// <summary>Depth in which soaked seed is laid.</summary>
    [Source(nameof(Sources.FarmDefault), "2 in, within 1 to 3")]
    public static WaterDepth Sowing { get; } = WaterDepth.FromInches(2);

    /// <summary>Least depth for seed.</summary>
    [Source(nameof(Sources.FarmDefault), "1 in")]
    public static WaterDepth SowingLeast { get; } = WaterDepth.FromInches(1);

    /// <summary>Greatest depth for seed.</summary>
    [Source(nameof(Sources.FarmDefault), "3 in")]
    public static WaterDepth SowingMost { get; } = WaterDepth.FromInches(3);
}
