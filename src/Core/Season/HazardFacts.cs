using Watersown.Land;

namespace Watersown.Season;

/// <summary>What somebody found who looked for a hazard.</summary>
public enum HazardSighting
{
    /// <summary>It stands and was not known.</summary>
    New,

    /// <summary>It is known and still stands.</summary>
    StillThere,

    /// <summary>It stands no more.</summary>
    Gone,
}

/// <summary>Somebody looked at a hazard.</summary>
/// <param name="Name">The farm's words for it, as its list has them.</param>
/// <param name="What">What was found.</param>
public sealed record HazardSeen(string Name, HazardSighting What) : MarkFact
{
    /// <summary>What it is; only of a new one.</summary>
    public HazardKind? Kind { get; init; }

    /// <summary>Code of the field it lies near.</summary>
    public string? Field { get; init; }

    public Length? Height { get; init; }

    /// <summary>Its point.</summary>
    public GeoPoint? At { get; init; }

    public override string? AboutField => Field;
}
