using Watersown.Land;

namespace Watersown.Season;

/// <summary>What the flying service says it flew, on its invoice or by word.</summary>
/// <param name="Field">Field code.</param>
public sealed record FlightBilled(string Field) : MarkFact
{
    /// <summary>Acres on the invoice.</summary>
    public Area? Land { get; init; }

    /// <summary>Soaked seed on the invoice.</summary>
    public SoakedSeed? Soaked { get; init; }

    /// <summary>Number or name of the invoice.</summary>
    public string? Invoice { get; init; }

    public override string? AboutField => Field;
}

/// <summary>A place on the ground with little or no seed, as a track shows it.</summary>
/// <param name="At">Where to stand.</param>
/// <param name="Land">How much of it is bare.</param>
/// <param name="Run">The way the passes run there.</param>
public sealed record BarePlace(GeoPoint At, Area Land, Bearing Run);

/// <summary>Somebody held a track against the field; what came of it is kept, the track itself is not.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Swath">How wide a pass was taken to sow.</param>
/// <param name="Net">Net land within the edge.</param>
public sealed record TrackLooked(string Field, Length Swath, Area Net) : MarkFact
{
    /// <summary>Land never flown over, over the net land.</summary>
    public required Fraction Skip { get; init; }

    /// <summary>How far that can be off, either way.</summary>
    public required Fraction SkipError { get; init; }

    /// <summary>Land flown twice or more, over the net land.</summary>
    public required Fraction Overlap { get; init; }

    /// <summary>Swept land off the field, over all that was swept.</summary>
    public required Fraction OffField { get; init; }

    [PlainNumber("passes")]
    public int Passes { get; init; }

    /// <summary>There and back; none where nobody can say.</summary>
    public Bearing? Heading { get; init; }

    public Length? Spacing { get; init; }

    /// <summary>The track told where the gate was open; otherwise that was worked out.</summary>
    public bool GateTold { get; init; }

    /// <summary>Where to walk, the largest first.</summary>
    public FactList<BarePlace> Places { get; init; } = [];

    /// <summary>The runs, simplified enough to be drawn.</summary>
    public FactList<FactList<GeoPoint>> Lines { get; init; } = [];

    /// <summary>Land flown over at least once.</summary>
    public Area Flown => Net * (1 - Skip.Share);

    public override string? AboutField => Field;
}
