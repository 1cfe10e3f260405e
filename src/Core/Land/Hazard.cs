namespace Watersown.Land;

/// <summary>What may be hit, hurt or spoilt near a pass.</summary>
public enum HazardKind
{
    Wire,
    Tower,
    Pole,
    Trees,
    House,
    School,
    Livestock,
    Bees,
    SensitiveCrop,
    WaterIntake,
    Pond,
    Road,
    Other,
}

/// <summary>Something known to the farm near its fields. A list of these is never complete.</summary>
/// <param name="Kind">Wire, tower, house and so on.</param>
/// <param name="Name">The farm's words for it.</param>
public sealed record Hazard(HazardKind Kind, string Name)
{
    /// <summary>A point, or the corners of a line.</summary>
    public ImmutableArray<GeoPoint> Points { get; init; } = [];

    public Length? Height { get; init; }

    /// <summary>When somebody last looked.</summary>
    public DateOnly? Confirmed { get; init; }

    /// <summary>Field codes it lies near, where its place is not known better.</summary>
    public ImmutableArray<string> Near { get; init; } = [];

    public string? Note { get; init; }

    /// <summary>What a public file of obstacles says of it; none where only the farm knows it.</summary>
    public HazardListing? Listing { get; init; }
}
