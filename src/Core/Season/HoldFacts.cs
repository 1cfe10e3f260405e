using Watersown.Holds;

namespace Watersown.Season;

/// <summary>A treatment booked, applied or called off. What is said later of the same field, product and time takes its place.</summary>
/// <param name="What">As typed from label, permit and recommendation.</param>
/// <param name="State">How far it has come.</param>
public sealed record TreatmentTold(Treatment What, TreatmentState State) : MarkFact
{
    public override string? AboutField => What.Field;
}

/// <summary>Water wanted lower or gone on some days, or no longer.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Wish">Why; one of each a field.</param>
public sealed record WaterWished(string Field, WaterWish Wish) : MarkFact
{
    /// <summary>Between which days; wanted no longer where not told.</summary>
    public DaySpan? Days { get; init; }

    public override string? AboutField => Field;
}

/// <summary>Held water was let go, as somebody saw or did it.</summary>
/// <param name="Field">Field code.</param>
public sealed record HeldWaterGone(string Field) : MarkFact
{
    /// <summary>Why.</summary>
    public string? Reason { get; init; }

    /// <summary>Number of the county's emergency release, where there is one.</summary>
    public string? Reference { get; init; }

    public override string? AboutField => Field;
}

/// <summary>How the farm counts days of holds, and the days of its own county office.</summary>
/// <param name="Settings">As typed.</param>
public sealed record HoldSettingsTold(HoldSettings Settings) : MarkFact;
