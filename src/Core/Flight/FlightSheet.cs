using Watersown.Land;

namespace Watersown.Flight;

/// <summary>What a pilot and a loader must know about one flight on one field. A request of the farm, never a permission.</summary>
public sealed record FlightSheet
{
    public required Field Field { get; init; }

    /// <summary>First load, with the farm's offset.</summary>
    public required DateTimeOffset From { get; init; }

    public required DateTimeOffset Until { get; init; }

    /// <summary>Which flight of the field this is, 1 first, and how many there are.</summary>
    public required (int Number, int Of) Part { get; init; }

    /// <summary>Land this flight sows: the whole field, or the share that its seed covers.</summary>
    public required Area Land { get; init; }

    /// <summary>Dry rate asked for.</summary>
    public required SeedRate DryRate { get; init; }

    /// <summary>The same seed soaked: what the gate is set to.</summary>
    public required SoakedRate WetRate { get; init; }

    [PlainNumber("soaked weight over dry weight")]
    public required double WetFactor { get; init; }

    /// <summary>Where the factor comes from.</summary>
    public required WetFactorBasis FactorBasis { get; init; }

    public required FlightSeed Seed { get; init; }

    public required DrySeed Dry { get; init; }

    public required SoakedSeed Soaked { get; init; }

    public required LoadPlan Loads { get; init; }

    public required TimeSpan FlyingTime { get; init; }

    public required Aeroplane Aeroplane { get; init; }

    /// <summary>The aeroplane was described by the flying service; otherwise usual figures stand in.</summary>
    public required bool AeroplaneKnown { get; init; }

    public string? Strip { get; init; }

    /// <summary>Strip to the middle of the field.</summary>
    public Length? Distance { get; init; }

    public Bearing? Direction { get; init; }

    public WaterDepth? Depth { get; init; }

    public DateTimeOffset? FullSince { get; init; }

    /// <summary>By the plan, where the field is not full yet.</summary>
    public DateTimeOffset? FullBy { get; init; }

    /// <summary>When depth and flood were last heard of.</summary>
    public DateTimeOffset? WaterAsOf { get; init; }

    public FieldMap? Map { get; init; }

    /// <summary>Nearest first.</summary>
    public ImmutableArray<HazardSight> Hazards { get; init; } = [];

    /// <summary>Known to the farm, but farther away than the sheet looks.</summary>
    public int HazardsElsewhere { get; init; }

    /// <summary>Neighbouring fields of the farm and what is on them, nearest first.</summary>
    public ImmutableArray<Neighbor> Neighbors { get; init; } = [];

    public Working Working { get; init; } = Working.Empty;
}

/// <summary>Where a wet factor comes from, best first.</summary>
public enum WetFactorBasis
{
    ScaleTicket,
    Lot,
    Farm,
}

/// <summary>Which seed goes into the hopper.</summary>
/// <param name="Variety">Variety code; none where nobody has said.</param>
/// <param name="Lot">Lot code; none where it is not chosen yet.</param>
/// <param name="Batch">Batch code; none where it is not called yet.</param>
public sealed record FlightSeed(string? Variety, string? Lot, string? Batch)
{
    public ImmutableArray<string> Trailers { get; init; } = [];

    /// <summary>How many trailers the plan reckons with, where their numbers are not known.</summary>
    public int? TrailerCount { get; init; }

    /// <summary>Past this moment the seed should not be sown.</summary>
    public DateTimeOffset? UseBy { get; init; }
}

/// <summary>A hazard as seen from one field.</summary>
/// <param name="Hazard">What the farm knows.</param>
/// <param name="Mark">Letter that stands on the map; empty where its place is not known.</param>
public sealed record HazardSight(Hazard Hazard, string Mark)
{
    /// <summary>From the nearest edge of the field, or from its middle where no edge is drawn; none where its place is not known.</summary>
    public Length? Distance { get; init; }

    /// <summary>From the middle of the field.</summary>
    public Bearing? Direction { get; init; }

    public bool Inside { get; init; }

    /// <summary>How fresh the look at it is.</summary>
    public HazardLook Look { get; init; }

    /// <summary>Its own place is not known: what is told is the field it lies near.</summary>
    public Field? Near { get; init; }
}

/// <summary>What lies on a neighbouring field.</summary>
public enum GroundCover
{
    Unknown,
    DryGround,
    Filling,
    Full,
    Sown,
}

/// <summary>A neighbouring field and what is on it.</summary>
/// <param name="Field">The neighbour.</param>
/// <param name="Cover">What is on it.</param>
/// <param name="Since">When it was sown or became full.</param>
public sealed record Neighbor(Field Field, GroundCover Cover, DateTimeOffset? Since)
{
    public required Length Distance { get; init; }

    public required Bearing Direction { get; init; }
}
