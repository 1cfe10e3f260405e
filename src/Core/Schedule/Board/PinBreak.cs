using Watersown.Weather;

namespace Watersown.Schedule.Board;

/// <summary>What a pin can break.</summary>
public enum PinBreakKind
{
    Past,
    NoSlot,
    Slot,
    Dark,
    Wind,
    Plane,
    Water,
    SeedYoung,
    SeedOld,
    Ground,
    Flow,
    Notice,
    FullLate,
    HeadAge,
    Told,
}

/// <summary>One thing that a step, pinned to another time, breaks, and by how much. It is said, never forbidden.</summary>
/// <param name="Kind">What.</param>
public sealed record PinBreak(PinBreakKind Kind)
{
    /// <summary>By how much time.</summary>
    public TimeSpan? By { get; init; }

    /// <summary>When what is missing is there, or until when it lasts; for hours of light or of an aeroplane the beginning.</summary>
    public DateTimeOffset? At { get; init; }

    /// <summary>For hours of light or of an aeroplane: their end.</summary>
    public DateTimeOffset? Until { get; init; }

    /// <summary>Fields that are sown then, the source that is short, the batch, or who was told.</summary>
    public ImmutableArray<string> Others { get; init; } = [];

    public Wind? Wind { get; init; }

    public FlowRate? Flow { get; init; }

    public Working Working { get; init; } = Working.Empty;
}
