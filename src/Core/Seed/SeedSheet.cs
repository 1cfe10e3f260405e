namespace Watersown.Seed;

/// <summary>What a seed warehouse and its drivers must know for the days ahead.</summary>
public sealed record SeedSheet
{
    /// <summary>First day of the sheet.</summary>
    public required DateOnly Day { get; init; }

    public required string Place { get; init; }

    public string? Strip { get; init; }

    [PlainNumber("soaked weight over dry weight")]
    public required double WetFactor { get; init; }

    /// <summary>In order of going under water, then by code.</summary>
    public required ImmutableArray<SeedJob> Jobs { get; init; }

    /// <summary>Batches that no field can use in time.</summary>
    public ImmutableArray<SoakBatch> Lost { get; init; } = [];
}

/// <summary>One batch on its way from the bag to the strip.</summary>
/// <param name="Batch">Batch code; none while it has none.</param>
/// <param name="Variety">Variety; none where nobody has said.</param>
/// <param name="Lot">Lot; none where it is not chosen yet.</param>
/// <param name="Dry">Dry weight.</param>
/// <param name="Soaked">Weight once soaked and drained: expected, or as weighed.</param>
public sealed record SeedJob(string? Batch, string? Variety, string? Lot, DrySeed Dry, SoakedSeed Soaked)
{
    /// <summary>The wet weight comes from a scale.</summary>
    public bool Weighed { get; init; }

    /// <summary>Field codes it is for.</summary>
    public required ImmutableArray<string> Fields { get; init; }

    public ImmutableArray<string> Trailers { get; init; } = [];

    public int? TrailerCount { get; init; }

    /// <summary>Last moment to call for the soak; none where it is already under water.</summary>
    public DateTimeOffset? CallBy { get; init; }

    public required DateTimeOffset InSoak { get; init; }

    /// <summary>It is already under water.</summary>
    public bool Soaking { get; init; }

    /// <summary>When the plan takes it off the water, or when it was taken off.</summary>
    public required DateTimeOffset Drain { get; init; }

    /// <summary>It is already off the water. Until then it waits for the farm's call.</summary>
    public bool Drained { get; init; }

    /// <summary>When the trailer leaves.</summary>
    public DateTimeOffset? Leaves { get; init; }

    /// <summary>When it must stand at the strip.</summary>
    public DateTimeOffset? AtStrip { get; init; }

    public DateTimeOffset? UseBy { get; init; }
}
