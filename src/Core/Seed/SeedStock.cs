namespace Watersown.Seed;

/// <summary>How early a variety ripens.</summary>
public enum Maturity
{
    VeryEarly,
    Early,
    Intermediate,
    Late,
    Other,
}

/// <summary>Seed of one variety and one tag.</summary>
/// <param name="Code">The farm's name for the lot: <c>E-1 lot 2</c>.</param>
/// <param name="Variety">Variety code.</param>
public sealed record SeedLot(string Code, string Variety)
{
    public Maturity Maturity { get; init; }

    /// <summary>Dry seed bought and not yet soaked; unknown means enough.</summary>
    public DrySeed? InHand { get; init; }

    public Fraction? Germination { get; init; }

    [PlainNumber("seeds in one pound")]
    public double? SeedsPerPound { get; init; }

    /// <summary>What a soaked pound-for-pound weighs, from scale tickets of this lot.</summary>
    [PlainNumber("soaked weight over dry weight")]
    public double? WetFactor { get; init; }
}

/// <summary>Seed soaked together. One lot only.</summary>
/// <param name="Code">Such as <c>B-08</c>.</param>
/// <param name="Lot">Lot code.</param>
/// <param name="Variety">Variety code.</param>
/// <param name="Dry">Dry weight put in.</param>
/// <param name="InSoak">When it went, or is due to go, under water.</param>
public sealed record SoakBatch(string Code, string Lot, string Variety, DrySeed Dry, DateTimeOffset InSoak)
{
    /// <summary>When it was taken off the water; none while it is still under.</summary>
    public DateTimeOffset? Drained { get; init; }

    /// <summary>Fields it was meant for.</summary>
    public ImmutableArray<string> MeantFor { get; init; } = [];

    /// <summary>Weighed after draining, where a ticket is there.</summary>
    public SoakedSeed? Weighed { get; init; }

    /// <summary>Trailer numbers it sits in.</summary>
    public ImmutableArray<string> Trailers { get; init; } = [];
}

/// <summary>Who soaks the seed, and the rules of the house.</summary>
public sealed record SoakPlace
{
    /// <summary>What is taken where nobody described one.</summary>
    public static SoakPlace Usual { get; } = new() { Name = "the soak place" };

    /// <summary>A trailer stands at the strip so long before its first load (common practice, no source).</summary>
    public static TimeSpan AtStripBefore { get; } = TimeSpan.FromMinutes(15);

    public required string Name { get; init; }

    public string? Phone { get; init; }

    /// <summary>Road distance to the strip.</summary>
    public Length? Road { get; init; }

    /// <summary>Trailers kept for this farm; none known means no limit.</summary>
    public int? Trailers { get; init; }

    /// <summary>What one trailer may weigh on the road with soaked seed, less its own weight.</summary>
    public SoakedSeed? HaulLimit { get; init; }

    /// <summary>Soak calls for the day are taken until this hour.</summary>
    public TimeOnly CallsUntil { get; init; } = new(6, 30);

    /// <summary>Hour at which a batch goes under water.</summary>
    public TimeOnly SoakHour { get; init; } = new(6, 0);

    public TimeSpan SoakLeast { get; init; } = TimeSpan.FromHours(24);

    public TimeSpan SoakMost { get; init; } = TimeSpan.FromHours(48);

    /// <summary>Under the water at most this long with a warning; beyond it the seed is lost.</summary>
    public TimeSpan SoakLost { get; init; } = TimeSpan.FromHours(60);

    public TimeSpan Drain { get; init; } = TimeSpan.FromHours(24);

    /// <summary>Hauling, washing and return after sowing, before a trailer can be filled again.</summary>
    public TimeSpan TrailerReturn { get; init; } = TimeSpan.FromHours(24);

    /// <summary>Road time and weighing before the trailer stands at the strip.</summary>
    public TimeSpan Haul { get; init; } = TimeSpan.FromHours(1);
}
