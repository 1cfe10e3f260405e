using Watersown.Water.Flood;

namespace Watersown.Water.Learning;

/// <summary>What was seen of a flood.</summary>
public enum SightingKind
{
    /// <summary>Water came into a check.</summary>
    Wet,

    /// <summary>No water in a check yet.</summary>
    StillDry,

    /// <summary>A check is covered, or the whole field.</summary>
    Full,

    /// <summary>A depth at the stick.</summary>
    Depth,

    /// <summary>How far the water fell while none came.</summary>
    Drop,

    /// <summary>The flow at the gate, which the case's inflow is from then on.</summary>
    Flow,
}

/// <summary>One thing seen of a flood.</summary>
/// <param name="Kind">What.</param>
/// <param name="At">Since the start of the case.</param>
public sealed record FloodSighting(SightingKind Kind, TimeSpan At)
{
    /// <summary>Place of the check in the network; none for the field as a whole.</summary>
    public int? Check { get; init; }

    /// <summary>A depth, or how far it fell.</summary>
    public WaterDepth Depth { get; init; }

    /// <summary>A drop: over how long.</summary>
    public TimeSpan Over { get; init; }

    /// <summary>How many times the usual spread: more for what was only told or guessed.</summary>
    [PlainNumber("in usual spreads")]
    public double Wider { get; init; } = 1;

    /// <summary>A flow of which other filling fields take a share that nobody measured.</summary>
    public bool Shared { get; init; }
}

/// <summary>A flood of one field, with all that was seen of it.</summary>
public sealed record FloodCase
{
    /// <summary>Checks from the head, those covered at the start, and inlets with the water told to come.</summary>
    public required FloodNetwork Network { get; init; }

    /// <summary>What was held true before.</summary>
    public required FloodFigures Before { get; init; }

    /// <summary>Lost to the air from covered ground.</summary>
    public required DepthRate Evaporation { get; init; }

    /// <summary>By what share the water told to come may be off.</summary>
    public required Fraction InflowSpread { get; init; }

    /// <summary>By how much the moment of the start may be off.</summary>
    public required TimeSpan StartSpread { get; init; }

    public ImmutableArray<FloodSighting> Sightings { get; init; } = [];
}

/// <summary>A figure with the ends between which it lies in nine cases of ten.</summary>
/// <typeparam name="T">Of what kind.</typeparam>
/// <param name="Middle">The likeliest.</param>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end.</param>
public readonly record struct Likely<T>(T Middle, T Low, T High)
    where T : struct;

/// <summary>A moment with its ends, since the start of the case.</summary>
/// <param name="Middle">The likeliest; none where it never comes.</param>
/// <param name="Low">Hardly sooner.</param>
/// <param name="High">Hardly later; none where it may never come.</param>
public readonly record struct LikelyMoment(TimeSpan? Middle, TimeSpan? Low, TimeSpan? High);

/// <summary>What one sighting says against the rest.</summary>
/// <param name="Sighting">The sighting.</param>
/// <param name="Off">How far from what was worked out, in spreads; above zero it was seen later, deeper or more.</param>
/// <param name="Weight">How much it counts: 1 within its spread, less the further off.</param>
public sealed record SightingVerdict(FloodSighting Sighting, [property: PlainNumber("in spreads")] double Off, Fraction Weight)
{
    /// <summary>So far off that it hardly counts.</summary>
    public bool Disagrees => Weight < Fraction.FromShare(0.5);
}

/// <summary>When water comes to a check and covers it.</summary>
public sealed record CheckForecast(LikelyMoment FirstWet, LikelyMoment Full);

/// <summary>What a flood says of its field.</summary>
public sealed record FloodFitted
{
    /// <summary>As they stand after it.</summary>
    public required FloodFigures Figures { get; init; }

    public required Likely<WaterDepth> Fill { get; init; }

    public required Likely<DepthRate> Seepage { get; init; }

    /// <summary>Water that comes over what was told to come.</summary>
    [PlainNumber("ratio")]
    public required Likely<double> Inflow { get; init; }

    /// <summary>In the order of the case.</summary>
    public required ImmutableArray<SightingVerdict> Verdicts { get; init; }

    /// <summary>In the order of the network.</summary>
    public required ImmutableArray<CheckForecast> Checks { get; init; }

    /// <summary>When the last check is covered.</summary>
    public required LikelyMoment Full { get; init; }
}
