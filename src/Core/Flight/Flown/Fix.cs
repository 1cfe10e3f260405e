namespace Watersown.Flight.Flown;

/// <summary>What a track says of the gate at one place.</summary>
public enum GateSign
{
    NotTold,
    Shut,
    Open,
}

/// <summary>One place of a track as it stands in the file. What the file does not tell is not a number.</summary>
/// <param name="Latitude">North is positive.</param>
/// <param name="Longitude">East is positive.</param>
public readonly record struct Fix(
    [property: PlainNumber("degrees of latitude")] double Latitude,
    [property: PlainNumber("degrees of longitude")] double Longitude)
{
    /// <summary>When: only differences are used where the file names no zone.</summary>
    [PlainNumber("seconds since 1970 began, UTC")]
    public double Seconds { get; init; } = double.NaN;

    /// <summary>Above whatever the file measures from.</summary>
    [PlainNumber("meters")]
    public double Height { get; init; } = double.NaN;

    /// <summary>Over the ground.</summary>
    [PlainNumber("meters per second")]
    public double Speed { get; init; } = double.NaN;

    /// <summary>Over the ground, from true north.</summary>
    [PlainNumber("degrees")]
    public double Course { get; init; } = double.NaN;

    public GateSign Gate { get; init; }

    /// <summary>The first of a piece: the file draws no line from the one before.</summary>
    public bool Begins { get; init; }
}
