using Watersown.Wording;

namespace Watersown.Land;

/// <summary>Which units people see first. Core is the same in both.</summary>
public enum UnitSystem
{
    UsCustomary,
    Metric,
}

/// <summary>What there is: the ground, the water, the strips and what stands around them.</summary>
public sealed record Farm
{
    public required string Name { get; init; }

    /// <summary>IANA name, such as <c>America/Los_Angeles</c>; the edge converts, Core never does.</summary>
    public required string TimeZone { get; init; }

    public required int SeasonYear { get; init; }

    public UnitSystem Units { get; init; }

    public Language Language { get; init; }

    /// <summary>Final planting date of the farm's own policy, as typed.</summary>
    public DateOnly? FinalPlanting { get; init; }

    public required ImmutableArray<Field> Fields { get; init; }

    public ImmutableArray<Soil> Soils { get; init; } = [];

    public ImmutableArray<WaterSource> Sources { get; init; } = [];

    public ImmutableArray<SharedCap> SharedCaps { get; init; } = [];

    public ImmutableArray<Strip> Strips { get; init; } = [];

    public ImmutableArray<Hazard> Hazards { get; init; } = [];

    public Field Field(string code) => Fields.First(f => string.Equals(f.Code, code, StringComparison.Ordinal));

    public Soil? SoilOf(Field field) => field.Soil is { } code ? Soils.FirstOrDefault(s => string.Equals(s.Code, code, StringComparison.Ordinal)) : null;

    public WaterSource? Source(string code) => Sources.FirstOrDefault(s => string.Equals(s.Code, code, StringComparison.Ordinal));
}

/// <summary>The field runway that the aeroplane loads at.</summary>
/// <param name="Name">The farm's name for it.</param>
/// <param name="PadTrailers">How many trailers the loading pad holds.</param>
public sealed record Strip(string Name, int PadTrailers)
{
    public GeoPoint? At { get; init; }

    /// <summary>For the record only; nothing is computed from it.</summary>
    public Length? RunwayLength { get; init; }
}

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
}
