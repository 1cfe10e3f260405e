using Watersown.Land;

namespace Watersown.Schedule.Board;

/// <summary>Water of one source in a span in which nothing changes.</summary>
/// <param name="From">First moment.</param>
/// <param name="Until">Last moment.</param>
public sealed record FlowStep(DateTimeOffset From, DateTimeOffset Until)
{
    /// <summary>What it gives: the order, or for a source turned at will its cap.</summary>
    public required FlowRate Given { get; init; }

    /// <summary>Taken by fields that are full.</summary>
    public required FlowRate Holding { get; init; }

    /// <summary>Taken by fields that fill, their wet ground included.</summary>
    public required FlowRate Filling { get; init; }

    /// <summary>Wanted by fields that have it as their first choice, and given by no source.</summary>
    public FlowRate Short { get; init; }

    /// <summary>Given and taken by nobody.</summary>
    public FlowRate Over => Given - Holding - Filling;
}

/// <summary>A change of flow that must be ordered.</summary>
/// <param name="At">When the flow changes.</param>
/// <param name="AskBy">Last moment to ask for it.</param>
/// <param name="From">Flow before.</param>
/// <param name="To">Flow after.</param>
public sealed record FlowChange(DateTimeOffset At, DateTimeOffset AskBy, FlowRate From, FlowRate To);

/// <summary>Water of one source over time.</summary>
/// <param name="Source">The source.</param>
public sealed record FlowLane(WaterSource Source)
{
    /// <summary>One after another without a gap, from the moment of the plan or the start of the board; equal neighbors joined.</summary>
    public required ImmutableArray<FlowStep> Steps { get; init; }

    /// <summary>Changes to be ordered, in order.</summary>
    public required ImmutableArray<FlowChange> Changes { get; init; }

    /// <summary>The step at a moment; none outside the board.</summary>
    public FlowStep? At(DateTimeOffset moment) => Steps.FirstOrDefault(s => s.From <= moment && moment < s.Until);
}
