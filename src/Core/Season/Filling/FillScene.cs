using Watersown.Land;
using Watersown.Season.Boards;
using Watersown.Water.Flood;

namespace Watersown.Season.Filling;

/// <summary>A check at one moment.</summary>
/// <param name="Covered">Of its ground.</param>
/// <param name="Depth">Of the pond on the covered ground.</param>
public readonly record struct CheckMoment(Fraction Covered, WaterDepth Depth);

/// <summary>One check while its field fills: what was seen of it, and what the water balance makes of it from here on.</summary>
/// <param name="Number">Order from the head, 1 first.</param>
/// <param name="Land">Its ground.</param>
public sealed record CheckScene(int Number, Area Land)
{
    /// <summary>When somebody saw it wet first; none where nobody did.</summary>
    public DateTimeOffset? SeenWet { get; init; }

    /// <summary>Readings at the stick, in order of time.</summary>
    public required ImmutableArray<DepthNote> Readings { get; init; }

    /// <summary>When water is expected in it; none where it is wet, or never gets so.</summary>
    public DateTimeOffset? WetAt { get; init; }

    /// <summary>When its last ground is expected to be covered; none where it is, or never gets so.</summary>
    public DateTimeOffset? FullAt { get; init; }

    /// <summary>Already covered at the moment of the scene.</summary>
    public bool IsFull { get; init; }

    /// <summary>How high its boards stand over its mean ground.</summary>
    public required WaterDepth Boards { get; init; }

    /// <summary>How high its ground lies over that of the last check.</summary>
    public required WaterDepth Ground { get; init; }

    /// <summary>From the moment of the scene on, hour by hour.</summary>
    public required ImmutableArray<FloodDepth> Ahead { get; init; }

    /// <summary>Never covered at this flow, as far as the run goes.</summary>
    public bool Never => !IsFull && FullAt is null;

    /// <summary>How it stands so long after the moment of the scene.</summary>
    public CheckMoment After(TimeSpan span)
    {
        if (Ahead.IsEmpty) return new CheckMoment(Fraction.Zero, WaterDepth.Zero);
        var next = Ahead.FirstOrDefault(d => d.At >= span, Ahead[^1]);
        var place = Ahead.IndexOf(next);
        var before = place == 0 || next.At <= span ? next : Ahead[place - 1];
        var share = next.At == before.At ? 1 : Math.Clamp((span - before.At) / (next.At - before.At), 0, 1);
        var covered = Fraction.FromShare(before.Covered.Share + (share * (next.Covered.Share - before.Covered.Share)));
        var mean = before.Depth + ((next.Depth - before.Depth) * share);
        return new CheckMoment(covered, covered > Fraction.Zero ? mean / covered.Share : WaterDepth.Zero);
    }
}

/// <summary>A field that fills, check by check, on one scale of time.</summary>
/// <param name="Field">The field.</param>
/// <param name="Scale">From the first mark of water to a little past the finish.</param>
public sealed record FillScene(Field Field, TimeScale Scale)
{
    /// <summary>The moment from which on it is worked out.</summary>
    public required DateTimeOffset Now { get; init; }

    /// <summary>From the head to the tail.</summary>
    public required ImmutableArray<CheckScene> Checks { get; init; }

    /// <summary>Source that the water comes from; none known.</summary>
    public string? Source { get; init; }

    /// <summary>What the field gets of it.</summary>
    public required FlowRate Flow { get; init; }

    /// <summary>When all of it is covered; none where that is never at this flow.</summary>
    public DateTimeOffset? FullAt { get; init; }

    /// <summary>Hours without daylight.</summary>
    public required ImmutableArray<(DateTimeOffset From, DateTimeOffset Until)> Dark { get; init; }

    /// <summary>What does not add up in the run: rounding.</summary>
    public required Volume Residual { get; init; }

    public required Working Working { get; init; }

    /// <summary>How long the scene runs on from its moment.</summary>
    public TimeSpan Reach => Scale.Until - Now;
}
