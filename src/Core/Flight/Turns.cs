namespace Watersown.Flight;

/// <summary>
/// Geometry of level turns in still air. Tells what a bank would mean; never which bank to fly. Plan with a turn time
/// taken by watch.
/// </summary>
public static class Turns
{
    private const double StandardGravity = 9.80665;

    /// <summary>Radius of a level turn.</summary>
    /// <param name="speed">Airspeed.</param>
    /// <param name="bankDegrees">Above 0, below 90.</param>
    [Source(nameof(Sources.AviationFormulary), "turn performance")]
    public static Length Radius(Speed speed, [PlainNumber("degrees of bank")] double bankDegrees)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(bankDegrees, 0);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(bankDegrees, 90);
        return Length.FromMeters(speed.MetersPerSecond * speed.MetersPerSecond / (StandardGravity * Math.Tan(bankDegrees * Math.PI / 180)));
    }

    /// <summary>Weight felt over weight in a level turn.</summary>
    [Source(nameof(Sources.AviationFormulary), "load factor 1 / cos bank")]
    [return: PlainNumber("weight felt over weight")]
    public static double LoadFactor([PlainNumber("degrees of bank")] double bankDegrees) => 1 / Math.Cos(bankDegrees * Math.PI / 180);

    /// <summary>
    /// Way flown from the end of one pass to the start of the next a spacing away, all of it at one radius: a bulb where
    /// the next line is nearer than two radii, a half circle with a straight where it is farther.
    /// </summary>
    [Source(nameof(Sources.TurnGeometry), "R (3 π − 4 asin((2 R + S) / (4 R))); π R + S − 2 R from S = 2 R on")]
    public static Length ToNextPass(Length radius, Length spacing)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(radius.Meters, 0, nameof(radius));
        ArgumentOutOfRangeException.ThrowIfLessThan(spacing.Meters, 0, nameof(spacing));
        double r = radius.Meters, s = spacing.Meters;
        return Length.FromMeters(s >= 2 * r ? (Math.PI * r) + s - (2 * r) : r * ((3 * Math.PI) - (4 * Math.Asin(((2 * r) + s) / (4 * r)))));
    }

    /// <summary>
    /// Way flown from the end of one pass to the start of the next by a turn out to one side and back round to the other: two
    /// arcs of one radius, the straight between them, and the run back to the edge.
    /// </summary>
    /// <param name="radius">Of both arcs; above zero.</param>
    /// <param name="spacing">To the next pass, less than the arcs are apart.</param>
    /// <param name="outDegrees">How far the first arc turns out: above 0, below 90.</param>
    [Source(nameof(Sources.TurnGeometry), "d = (2 R cos θ − S) / sin θ; R (π + 2 θ) + d + 2 R sin θ + d cos θ")]
    public static Length OutAndBack(Length radius, Length spacing, [PlainNumber("degrees turned out")] double outDegrees)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(radius.Meters, 0, nameof(radius));
        ArgumentOutOfRangeException.ThrowIfLessThan(spacing.Meters, 0, nameof(spacing));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(outDegrees, 0);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(outDegrees, 90);
        double r = radius.Meters, lean = outDegrees * Math.PI / 180;
        var (sin, cos) = Math.SinCos(lean);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(spacing.Meters, 2 * r * cos, nameof(spacing));
        var straight = ((2 * r * cos) - spacing.Meters) / sin;
        return Length.FromMeters((r * (Math.PI + (2 * lean))) + straight + (2 * r * sin) + (straight * cos));
    }

    /// <summary>Passes to skip so that a plain half circle reaches the next one flown (a racetrack).</summary>
    [Source(nameof(Sources.TurnGeometry), "next whole number of 2 R / S")]
    [return: PlainNumber("passes")]
    public static int RacetrackOffset(Length radius, Length spacing)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(spacing.Meters, 0, nameof(spacing));
        return Math.Max(1, (int)Math.Ceiling((2 * (radius / spacing)) - 1e-9));
    }
}
