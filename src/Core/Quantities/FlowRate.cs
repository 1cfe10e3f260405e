namespace Watersown.Quantities;

/// <summary>A quantity: water passing per time. Held in cubic meters per second.</summary>
public readonly record struct FlowRate : IComparable<FlowRate>
{
    private FlowRate(double cubicMetersPerSecond) => CubicMetersPerSecond = Finite.Require(cubicMetersPerSecond);

    /// <summary>Nothing of it.</summary>
    public static FlowRate Zero => default;

    public double CubicMetersPerSecond { get; }

    public double CubicFeetPerSecond => CubicMetersPerSecond / (0.028316846592);

    public double GallonsPerMinute => CubicMetersPerSecond / (0.003785411784 / 60);

    public double AcreFeetPerDay => CubicMetersPerSecond / (1233.48183754752 / 86400);

    public static FlowRate FromCubicMetersPerSecond(double value) => new(value);

    public static FlowRate FromCubicFeetPerSecond(double value) => new(value * (0.028316846592));

    public static FlowRate FromGallonsPerMinute(double value) => new(value * (0.003785411784 / 60));

    public static FlowRate FromAcreFeetPerDay(double value) => new(value * (1233.48183754752 / 86400));

    public static FlowRate operator +(FlowRate left, FlowRate right) => new(left.CubicMetersPerSecond + right.CubicMetersPerSecond);

    public static FlowRate operator -(FlowRate left, FlowRate right) => new(left.CubicMetersPerSecond - right.CubicMetersPerSecond);

    public static FlowRate operator *(FlowRate quantity, double factor) => new(quantity.CubicMetersPerSecond * factor);

    public static FlowRate operator *(double factor, FlowRate quantity) => new(quantity.CubicMetersPerSecond * factor);

    public static FlowRate operator /(FlowRate quantity, double divisor) => new(quantity.CubicMetersPerSecond / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(FlowRate left, FlowRate right) => left.CubicMetersPerSecond / right.CubicMetersPerSecond;

    public static bool operator <(FlowRate left, FlowRate right) => left.CubicMetersPerSecond < right.CubicMetersPerSecond;

    public static bool operator >(FlowRate left, FlowRate right) => left.CubicMetersPerSecond > right.CubicMetersPerSecond;

    public static bool operator <=(FlowRate left, FlowRate right) => left.CubicMetersPerSecond <= right.CubicMetersPerSecond;

    public static bool operator >=(FlowRate left, FlowRate right) => left.CubicMetersPerSecond >= right.CubicMetersPerSecond;

    /// <summary>Water delivered in a span of time.</summary>
    public static Volume operator *(FlowRate flow, TimeSpan span) => Volume.FromCubicMeters(flow.CubicMetersPerSecond * span.TotalSeconds);

    public int CompareTo(FlowRate other) => CubicMetersPerSecond.CompareTo(other.CubicMetersPerSecond);
}
