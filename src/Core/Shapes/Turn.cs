namespace Watersown.Shapes;

/// <summary>An angle kept as its sine and cosine, which lose nothing near 0°, 90° and 180°.</summary>
internal readonly record struct Turn(double Sin, double Cos)
{
    public double Radians => Math.Atan2(Sin, Cos);

    /// <summary>Of degrees; exact at every quarter turn.</summary>
    public static Turn FromDegrees(double degrees)
    {
        var quarter = Math.Round(degrees / 90);
        var (sin, cos) = Math.SinCos(Math.IEEERemainder(degrees, 90) * Math.PI / 180);
        return (((int)(quarter % 4) + 4) % 4) switch
        {
            0 => new Turn(sin, cos),
            1 => new Turn(cos, -sin),
            2 => new Turn(-sin, -cos),
            _ => new Turn(-cos, sin),
        };
    }

    public static Turn FromRadians(double radians)
    {
        var (sin, cos) = Math.SinCos(radians);
        return new Turn(sin, cos);
    }

    /// <summary>Direction of the point (cosine, sine) at any distance from the middle.</summary>
    public static Turn Toward(double sin, double cos)
    {
        var length = Hypot(sin, cos);
        return new Turn(sin / length, cos / length);
    }

    /// <summary>Length of the hypotenuse.</summary>
    public static double Hypot(double x, double y) => Math.Sqrt((x * x) + (y * y));
}
