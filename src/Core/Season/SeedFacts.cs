namespace Watersown.Season;

/// <summary>A batch went under water.</summary>
/// <param name="Batch">Batch code.</param>
public sealed record BatchInSoak(string Batch) : MarkFact
{
    public string? Lot { get; init; }

    public string? Variety { get; init; }

    /// <summary>Dry weight put in.</summary>
    public DrySeed? Dry { get; init; }

    /// <summary>Codes of the fields it is meant for.</summary>
    public FactList<string> MeantFor { get; init; } = [];

    public override string? AboutBatch => Batch;
}

/// <summary>A batch was taken off the water.</summary>
public sealed record BatchDrained(string Batch) : MarkFact
{
    public override string? AboutBatch => Batch;
}

/// <summary>Seed of a batch was thrown away.</summary>
/// <param name="Batch">Batch code.</param>
/// <param name="Dry">Dry weight of it; all that is left where not given.</param>
public sealed record BatchDumped(string Batch, DrySeed? Dry) : MarkFact
{
    public override string? AboutBatch => Batch;
}

/// <summary>Where a trailer is and what is in it.</summary>
/// <param name="Number">The trailer's number.</param>
public sealed record TrailerSeen(string Number) : MarkFact
{
    public string? Batch { get; init; }

    /// <summary>Soaked weight by the scale ticket.</summary>
    public SoakedSeed? Weighed { get; init; }

    /// <summary>Code of the field it is for.</summary>
    public string? Field { get; init; }

    /// <summary>Where it stands.</summary>
    public string? Place { get; init; }

    public override string? AboutField => Field;

    public override string? AboutBatch => Batch;

    public override string? AboutTrailer => Number;
}

/// <summary>Soaked seed left in a trailer after sowing.</summary>
public sealed record SeedLeft(string Trailer, SoakedSeed Left) : MarkFact
{
    public string? Field { get; init; }

    public override string? AboutField => Field;

    public override string? AboutTrailer => Trailer;
}
