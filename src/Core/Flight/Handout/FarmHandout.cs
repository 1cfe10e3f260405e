using Watersown.Land;

namespace Watersown.Flight.Handout;

/// <summary>
/// What a farm hands to a flying service or anyone else in open formats: a wish of the farm with what it knows of the ground.
/// Never a permission, and never all that stands on the ground.
/// </summary>
/// <param name="Farm">Name of the farm.</param>
/// <param name="Made">When it was put together, with the farm's offset.</param>
/// <param name="Fields">Fields whose edge is drawn, in the farm's order.</param>
public sealed record FarmHandout(string Farm, DateTimeOffset Made, ImmutableArray<FieldHandout> Fields)
{
    /// <summary>Hazards near any of the fields, each once.</summary>
    public ImmutableArray<Hazard> Hazards { get; init; } = [];

    /// <summary>Strips whose place is known.</summary>
    public ImmutableArray<Strip> Strips { get; init; } = [];
}

/// <summary>One field to be sown, or sown.</summary>
/// <param name="Field">The field.</param>
/// <param name="Land">Its edge as drawn.</param>
public sealed record FieldHandout(Field Field, Boundary Land)
{
    /// <summary>Distance between passes that was asked for.</summary>
    public required Length Swath { get; init; }

    /// <summary>Dry rate asked for, where it is known.</summary>
    public SeedRate? Dry { get; init; }

    /// <summary>The same seed soaked.</summary>
    public SoakedRate? Soaked { get; init; }

    /// <summary>Area of the edge on the ellipsoid.</summary>
    public required Area Drawn { get; init; }

    /// <summary>In order.</summary>
    public ImmutableArray<HandoutPass> Passes { get; init; } = [];

    /// <summary>What was really flown, where it is known.</summary>
    public ImmutableArray<HandoutRun> Flown { get; init; } = [];
}

/// <summary>One pass as wished.</summary>
/// <param name="Number">1 first.</param>
/// <param name="Heading">From true north.</param>
/// <param name="Open">Stretches with the gate open, in order along the heading.</param>
public sealed record HandoutPass(int Number, Bearing Heading, ImmutableArray<HandoutSpan> Open);

/// <summary>A straight stretch.</summary>
public sealed record HandoutSpan(GeoPoint From, GeoPoint To);

/// <summary>A stretch that was flown with the gate open.</summary>
/// <param name="Pass">Number of the pass in the order flown, 1 first.</param>
/// <param name="Fixes">Places in the order flown.</param>
public sealed record HandoutRun(int Pass, ImmutableArray<HandoutFix> Fixes)
{
    /// <summary>No signal of the gate was logged: it was inferred where it stood open.</summary>
    public bool GateInferred { get; init; }
}

/// <summary>Where the aeroplane was.</summary>
/// <param name="At">The place.</param>
/// <param name="Time">When, where the log said it.</param>
public readonly record struct HandoutFix(GeoPoint At, DateTimeOffset? Time);
