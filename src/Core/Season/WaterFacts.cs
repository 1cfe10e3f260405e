namespace Watersown.Season;

/// <summary>What the water did in a check.</summary>
public enum WaterSeen
{
    Wet,
    Full,
    Dry,
    Reflooded,
}

/// <summary>Water seen in one check.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Check">Number of the check from the head.</param>
/// <param name="Water">What it did.</param>
public sealed record CheckWater(string Field, int Check, WaterSeen Water) : MarkFact
{
    public override string? AboutField => Field;
}

/// <summary>A reading at the stick.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Check">Number of the check; none for the field as a whole.</param>
/// <param name="Depth">How deep.</param>
public sealed record DepthRead(string Field, int? Check, WaterDepth Depth) : MarkFact
{
    public override string? AboutField => Field;
}

/// <summary>Boards of a box set to a height.</summary>
public sealed record BoardsSet(string Field, int Box, WaterDepth Height) : MarkFact
{
    public override string? AboutField => Field;
}

/// <summary>What a source gives, as somebody saw or measured it.</summary>
/// <param name="Source">Source code.</param>
/// <param name="Flow">What it gives.</param>
/// <param name="How">How it was measured.</param>
public sealed record FlowSeen(string Source, FlowRate Flow, string? How) : MarkFact
{
    public override string? AboutSource => Source;
}

/// <summary>How far an order of water has come.</summary>
public enum OrderState
{
    Asked,
    Accepted,
    Running,
    Changed,
    Ended,
}

/// <summary>Water ordered from a source.</summary>
/// <param name="Source">Source code.</param>
/// <param name="From">When the flow is to change.</param>
/// <param name="Flow">What is to run from then.</param>
/// <param name="State">How far it has come.</param>
public sealed record WaterOrdered(string Source, DateTimeOffset From, FlowRate Flow, OrderState State) : MarkFact
{
    /// <summary>The district's number for it.</summary>
    public string? OrderNumber { get; init; }

    public bool ByVoice { get; init; }

    public override string? AboutSource => Source;
}

/// <summary>A source started or stopped.</summary>
public sealed record SourceSwitched(string Source, bool Up) : MarkFact
{
    public override string? AboutSource => Source;
}

/// <summary>
/// A source held to less than it can give, or no longer held, as the district or somebody else said it. What is said later of
/// the end holds for everything said before it.
/// </summary>
/// <param name="Source">Source code.</param>
/// <param name="From">From when.</param>
public sealed record WaterCurtailed(string Source, DateTimeOffset From) : MarkFact
{
    /// <summary>The most that is left of it; none where it is curtailed no longer.</summary>
    public FlowRate? Left { get; init; }

    /// <summary>Until when; until further notice where not told.</summary>
    public DateTimeOffset? Until { get; init; }

    public override string? AboutSource => Source;
}

/// <summary>What is broken.</summary>
public enum FaultKind
{
    Levee,
    Box,
    Pump,
    Gate,
}

/// <summary>Something is broken.</summary>
public sealed record FaultFound(FaultKind Kind) : MarkFact
{
    public string? Field { get; init; }

    public string? Source { get; init; }

    /// <summary>Check it is at; for a levee, the one above it.</summary>
    public int? Check { get; init; }

    /// <summary>For a levee: the check below it.</summary>
    public int? ToCheck { get; init; }

    public int? Box { get; init; }

    /// <summary>How wide the gap is.</summary>
    public Length? Width { get; init; }

    /// <summary>Name of the picture taken of it.</summary>
    public string? Photo { get; init; }

    public override string? AboutField => Field;

    public override string? AboutSource => Source;
}

/// <summary>A fault is mended.</summary>
/// <param name="Fault">The mark that told of it.</param>
public sealed record FaultMended(MarkId Fault) : MarkFact;
