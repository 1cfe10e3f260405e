namespace Watersown.Holds;

/// <summary>What a treatment needs done to the water before it.</summary>
public enum WaterNeeded
{
    /// <summary>Nothing.</summary>
    AsItIs,

    /// <summary>Lowered, so that leaves are bare.</summary>
    Lowered,

    /// <summary>Off the field.</summary>
    Drained,
}

/// <summary>
/// One treatment of one field, as the user typed it from label, permit and recommendation. Nothing of it is shipped or looked up: words
/// stand as they were typed, and only days, hours and the window are reckoned with.
/// </summary>
/// <param name="Field">Field code.</param>
/// <param name="Product">Its name as the user writes it.</param>
/// <param name="From">First day on which it may be applied; for one that was applied, the day it was.</param>
/// <param name="Until">Last such day.</param>
public sealed record Treatment(string Field, string Product, DateOnly From, DateOnly Until)
{
    /// <summary>Which time this season, where the same product comes again.</summary>
    public int Round { get; init; } = 1;

    /// <summary>What the water rules typed for it say.</summary>
    public HoldRule Rule { get; init; } = new();

    public TreatmentPaper Paper { get; init; } = new();

    /// <summary>What it was applied with; for one that was booked, what is meant.</summary>
    public TreatmentWork Work { get; init; } = new();
}

/// <summary>The water rules of one treatment, as typed from label and permit.</summary>
public sealed record HoldRule
{
    /// <summary>Days in which water may not leave.</summary>
    public int? Days { get; init; }

    /// <summary>How its label counts the day of application, where it says so; as the farm counts otherwise.</summary>
    public ApplicationDay? Counting { get; init; }

    /// <summary>What it needs of the water before it.</summary>
    public WaterNeeded Needs { get; init; }

    /// <summary>While its hold runs, water may be lowered by moving it within the field.</summary>
    public bool MovesWithin { get; init; }

    /// <summary>Kinds of release it lets, as typed.</summary>
    public string? Releases { get; init; }

    /// <summary>Least depth while it is held.</summary>
    public WaterDepth? LeastDepth { get; init; }

    /// <summary>Distance to named places, as typed.</summary>
    public string? Buffer { get; init; }

    public Speed? WindLeast { get; init; }

    public Speed? WindMost { get; init; }

    /// <summary>Hours before it at which the county wants its notice.</summary>
    public int? NoticeHours { get; init; }

    /// <summary>The rule in the label's own words, as typed.</summary>
    public string? Text { get; init; }
}

/// <summary>What stands on paper about a treatment.</summary>
public sealed record TreatmentPaper
{
    public string? Registration { get; init; }

    public string? Active { get; init; }

    public string? Recommendation { get; init; }

    /// <summary>Permit and site numbers.</summary>
    public string? Permit { get; init; }

    public DateTimeOffset? NoticeFiled { get; init; }

    /// <summary>Hours until people may go in.</summary>
    public int? ReentryHours { get; init; }

    /// <summary>Days before harvest.</summary>
    public int? PreHarvestDays { get; init; }

    /// <summary>Leaf stages between which it is for, as typed.</summary>
    public string? Leaves { get; init; }

    /// <summary>Who read the label.</summary>
    public string? EnteredBy { get; init; }

    public DateOnly? EnteredOn { get; init; }

    /// <summary>Name of the picture of the label page.</summary>
    public string? LabelPhoto { get; init; }
}

/// <summary>How a treatment was carried out.</summary>
public sealed record TreatmentWork
{
    /// <summary>How much of it an acre, with its unit, as typed.</summary>
    public string? Amount { get; init; }

    public Area? Land { get; init; }

    public string? Method { get; init; }

    public DateTimeOffset? Begun { get; init; }

    public DateTimeOffset? Ended { get; init; }

    public Speed? Wind { get; init; }

    public string? Applicator { get; init; }

    /// <summary>A hired business did it, not the farm.</summary>
    public bool Hired { get; init; }
}
