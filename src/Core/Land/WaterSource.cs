namespace Watersown.Land;

/// <summary>Where water comes from.</summary>
public enum WaterSourceKind
{
    DistrictTurnout,
    LiftPump,
    Well,
    Tailwater,
    JoinedDitch,
}

/// <summary>A source of water: how much it can give, and what it asks before it changes.</summary>
/// <param name="Code">The farm's code: <c>NT-1</c>.</param>
/// <param name="Kind">District turnout, lift pump, well, tailwater, joined ditch.</param>
/// <param name="Cap">The most it can give.</param>
public sealed record WaterSource(string Code, WaterSourceKind Kind, FlowRate Cap)
{
    public string? Name { get; init; }

    /// <summary>How long before a change it must be asked for.</summary>
    public TimeSpan Notice { get; init; }

    /// <summary>The hours of day at which the flow may change; empty means any hour.</summary>
    public ImmutableArray<TimeOnly> ChangeHours { get; init; } = [];

    /// <summary>Smallest step in which it can be ordered.</summary>
    public FlowRate? MinStep { get; init; }

    /// <summary>What is running now: for a turnout the order, for a pump or well what it gives.</summary>
    public FlowRate? Running { get; init; }

    /// <summary>Out of order until repaired.</summary>
    public bool Down { get; init; }

    /// <summary>It is served in turns; none where it may run at any time.</summary>
    public SourceTurns? Turns { get; init; }

    /// <summary>Curtailments told of it; where several hold, the least that any leaves.</summary>
    public ImmutableArray<Curtailment> Curtailments { get; init; } = [];

    /// <summary>Fields that must be full before tailwater comes, and how many acres of them.</summary>
    public TailwaterNeed? Needs { get; init; }
}

/// <summary>Tailwater flows only while at least so many acres of certain fields are full.</summary>
public sealed record TailwaterNeed(ImmutableArray<string> Fields, Area Full);

/// <summary>Sources that together may not give more than one cap.</summary>
public sealed record SharedCap(string Name, ImmutableArray<string> Sources, FlowRate Cap);
