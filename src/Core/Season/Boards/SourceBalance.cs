using Watersown.Land;
using Watersown.Schedule.Finish;

namespace Watersown.Season.Boards;

/// <summary>Land of one field that a source must hold, and the flow that this takes.</summary>
/// <param name="Field">The field.</param>
/// <param name="Wet">Its covered land.</param>
/// <param name="Flow">What stays of the flow in it: lost to the air and the ground.</param>
public sealed record HeldLand(Field Field, Area Wet, FlowRate Flow);

/// <summary>A field that a source is filling.</summary>
/// <param name="Field">The field.</param>
/// <param name="Dry">Its land still to be covered.</param>
public sealed record FillingLand(Field Field, Area Dry)
{
    public int? ChecksWet { get; init; }
}

/// <summary>What a source gives, against what its fields take up.</summary>
/// <param name="Source">The source.</param>
public sealed record SourceBalance(WaterSource Source)
{
    /// <summary>What it gives now; none known, zero while it is down.</summary>
    public FlowRate? Gives { get; init; }

    /// <summary>When somebody last saw or ordered that.</summary>
    public DateTimeOffset? GivesAt { get; init; }

    public required ImmutableArray<HeldLand> Held { get; init; }

    /// <summary>Flow to hold all that is wet now.</summary>
    public required FlowRate Holds { get; init; }

    public required ImmutableArray<FillingLand> Filling { get; init; }

    /// <summary>What is over once the wet land is held; below zero it is short.</summary>
    public FlowRate? Over { get; init; }

    /// <summary>At this flow: when everything it is filling is covered. None where nothing fills or it can never be.</summary>
    public DateTimeOffset? FullAt { get; init; }

    /// <summary>It fills something and can never finish at this flow.</summary>
    public bool Never { get; init; }

    /// <summary>Covered land at which the flood would stop.</summary>
    public Area? Stall { get; init; }

    /// <summary>The fields it fills, check by check; none where nothing fills, or nobody knows what it gives.</summary>
    public SourceFinish? Finish { get; init; }

    /// <summary>Flow to hold every field that it reaches first, once all are full.</summary>
    public required FlowRate HoldsAll { get; init; }

    /// <summary>For tailwater: full land it waits for, and how much there is.</summary>
    public (Area Needed, Area Full)? Waits { get; init; }

    public required Working Working { get; init; }

    /// <summary>A flow against the length of the stick that the source is drawn on: its cap, or more where more is asked of it.</summary>
    public Fraction OnStick(FlowRate flow)
    {
        var most = Math.Max(Math.Max(Source.Cap.CubicMetersPerSecond, Holds.CubicMetersPerSecond), (Gives ?? FlowRate.Zero).CubicMetersPerSecond);
        return most <= 0 ? Fraction.Zero : Fraction.FromShare(Math.Clamp(flow.CubicMetersPerSecond / most, 0, 1));
    }
}

/// <summary>Sources that share a cap, or that share fields.</summary>
/// <param name="Name">What they are called together; none where they are only joined.</param>
/// <param name="Sources">Their codes.</param>
public sealed record SourceGroup(string? Name, ImmutableArray<string> Sources)
{
    /// <summary>The most they may give together.</summary>
    public required FlowRate Cap { get; init; }

    /// <summary>What they give together now, as far as is known.</summary>
    public required FlowRate Gives { get; init; }

    public required FlowRate Holds { get; init; }

    public required FlowRate HoldsAll { get; init; }

    /// <summary>The most of them without tailwater, where tailwater is one of them.</summary>
    public FlowRate? CapWithoutTailwater { get; init; }

    public required Working Working { get; init; }
}
