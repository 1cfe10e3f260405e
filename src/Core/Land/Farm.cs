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

    /// <summary>How long a look at a hazard holds.</summary>
    public HazardKeep HazardsKeep { get; init; }

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
