namespace Watersown.Season;

/// <summary>A field, or a part of it, was sown.</summary>
/// <param name="Field">Field code.</param>
public sealed record FieldSown(string Field) : MarkFact
{
    /// <summary>Acres of the part; the whole field where not given.</summary>
    public Area? Land { get; init; }

    /// <summary>The farm's word for the part.</summary>
    public string? Part { get; init; }

    public string? Batch { get; init; }

    /// <summary>Dry weight sown.</summary>
    public DrySeed? Dry { get; init; }

    public int? Loads { get; init; }

    /// <summary>Sown a second time on purpose.</summary>
    public bool Resow { get; init; }

    public override string? AboutField => Field;

    public override string? AboutBatch => Batch;
}

/// <summary>A load left for a field.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Number">Number of the load on that field; none where nobody counts.</param>
public sealed record LoadGone(string Field, int? Number) : MarkFact
{
    public string? Trailer { get; init; }

    /// <summary>Soaked weight of the load.</summary>
    public SoakedSeed? Soaked { get; init; }

    public override string? AboutField => Field;

    public override string? AboutTrailer => Trailer;
}

/// <summary>Hours in which the flying service says it will come.</summary>
public sealed record SlotGiven(DateOnly Day, TimeOnly From, TimeOnly Until) : MarkFact
{
    public string? Aeroplane { get; init; }
}

/// <summary>Why a flight was called off.</summary>
public enum StandDownReason
{
    Wind,
    Rain,
    Fog,
    Aeroplane,
    Seed,
    Field,
    Other,
}

/// <summary>No flying on a day.</summary>
/// <param name="Day">The day.</param>
/// <param name="Who">Who called it off.</param>
/// <param name="Why">Why.</param>
public sealed record StoodDown(DateOnly Day, string Who, StandDownReason Why) : MarkFact
{
    /// <summary>Code of the field, where only its flight is off.</summary>
    public string? Field { get; init; }

    public override string? AboutField => Field;
}
