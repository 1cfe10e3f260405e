namespace Watersown.Quantities;

/// <summary>A quantity: depth of water gained or lost per time. Held in meters per second.</summary>
public readonly record struct DepthRate : IComparable<DepthRate>
{
    private DepthRate(double metersPerSecond) => MetersPerSecond = Finite.Require(metersPerSecond);

    /// <summary>Nothing of it.</summary>
    public static DepthRate Zero => default;

    public double MetersPerSecond { get; }

    public double InchesPerDay => MetersPerSecond / (0.0254 / 86400);

    public double MillimetersPerDay => MetersPerSecond / (0.001 / 86400);

    public double FeetPerDay => MetersPerSecond / (0.3048 / 86400);

    public static DepthRate FromMetersPerSecond(double value) => new(value);

    public static DepthRate FromInchesPerDay(double value) => new(value * (0.0254 / 86400));

    public static DepthRate FromMillimetersPerDay(double value) => new(value * (0.001 / 86400));

    public static DepthRate FromFeetPerDay(double value) => new(value * (0.3048 / 86400));

    public static DepthRate operator +(DepthRate left, DepthRate right) => new(left.MetersPerSecond + right.MetersPerSecond);

    public static DepthRate operator -(DepthRate left, DepthRate right) => new(left.MetersPerSecond - right.MetersPerSecond);

    public static DepthRate operator *(DepthRate quantity, double factor) => new(quantity.MetersPerSecond * factor);

    public static DepthRate operator *(double factor, DepthRate quantity) => new(quantity.MetersPerSecond * factor);

    public static DepthRate operator /(DepthRate quantity, double divisor) => new(quantity.MetersPerSecond / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(DepthRate left, DepthRate right) => left.MetersPerSecond / right.MetersPerSecond;

    public static bool operator <(DepthRate left, DepthRate right) => left.MetersPerSecond < right.MetersPerSecond;

    public static bool operator >(DepthRate left, DepthRate right) => left.MetersPerSecond > right.MetersPerSecond;

    public static bool operator <=(DepthRate left, DepthRate right) => left.MetersPerSecond <= right.MetersPerSecond;

    public static bool operator >=(DepthRate left, DepthRate right) => left.MetersPerSecond >= right.MetersPerSecond;

    /// <summary>Depth gained or lost in a span of time.</summary>
    public static WaterDepth operator *(DepthRate rate, TimeSpan span) => WaterDepth.FromMeters(rate.MetersPerSecond * span.TotalSeconds);

    public int CompareTo(DepthRate other) => MetersPerSecond.CompareTo(other.MetersPerSecond);
}
