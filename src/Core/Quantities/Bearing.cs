namespace Watersown.Quantities;

/// <summary>A direction, degrees clockwise from true north, 0 up to but not including 360.</summary>
public readonly record struct Bearing
{
    private Bearing(double degrees)
    {
        var wrapped = Finite.Require(degrees) % 360;
        if (wrapped < 0) wrapped += 360;
        Degrees = wrapped >= 360 ? 0 : wrapped;
    }

    public double Degrees { get; }

    public double Radians => Degrees * Math.PI / 180;

    /// <summary>The opposite way.</summary>
    public Bearing Back => new(Degrees + 180);

    /// <summary>For a debugger or a failed test; without it the way back of the way back would be told for ever.</summary>
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Degrees}°");

    public static Bearing FromDegrees(double value) => new(value);
}
