namespace Watersown.Flight.AtStrip;

/// <summary>One field, or part of one, that is to be flown in a morning.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Land">What is sown.</param>
/// <param name="Rate">As loaded.</param>
/// <param name="Seed">What is in the hopper: only seed of one variety, lot and batch is the same.</param>
public sealed record StripJob(string Field, Area Land, SoakedRate Rate, StripSeed Seed)
{
    /// <summary>Mean length of a pass.</summary>
    public required Length PassLength { get; init; }

    /// <summary>One way from the strip.</summary>
    public required Length Ferry { get; init; }

    /// <summary>Codes of fields close enough to be flown on one load.</summary>
    public ImmutableArray<string> Beside { get; init; } = [];

    /// <summary>All of it.</summary>
    [Source(nameof(Sources.Arithmetic), "rate × land")]
    public SoakedSeed Wet => Rate * Land;

    /// <summary>Equal loads at a limit.</summary>
    [Source(nameof(Sources.Arithmetic), "the next whole number of limit-sized loads")]
    public int LoadsAt(SoakedSeed limit) => Math.Max(1, (int)Math.Ceiling((Wet / limit) - 1e-9));
}

/// <summary>Seed by its name; unknown is never the same as anything.</summary>
public sealed record StripSeed(string? Variety, string? Lot, string? Batch)
{
    /// <summary>It is known to be the same seed: variety and lot told and alike, and no two batches of it.</summary>
    public bool IsSame(StripSeed other) => Variety is not null && Lot is not null && Variety == other.Variety && Lot == other.Lot && Batch == other.Batch;
}

/// <summary>What stands at the strip.</summary>
/// <param name="Aeroplanes">Alike; 1 or more.</param>
/// <param name="Loaders">1 or more.</param>
public sealed record StripCrew(int Aeroplanes, int Loaders);

/// <summary>How the flying service bills; what is not told is not in the sum.</summary>
public sealed record StripBill
{
    /// <summary>For each hour of each aeroplane.</summary>
    public Money? Hour { get; init; }

    /// <summary>For each acre sown.</summary>
    public Money? Acre { get; init; }

    /// <summary>For each pound flown, as loaded.</summary>
    public Money? WetPound { get; init; }
}
