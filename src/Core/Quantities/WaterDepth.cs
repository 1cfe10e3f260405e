namespace Watersown.Quantities;

/// <summary>A quantity: depth of water over land, measured upright. Held in meters.</summary>
public readonly record struct WaterDepth : IComparable<WaterDepth>
{
    private WaterDepth(double meters) => Meters = Finite.Require(meters);

    /// <summary>Nothing of it.</summary>
    public static WaterDepth Zero => default;

    public double Meters { get; }

    public double Millimeters => Meters / (0.001);

    public double Inches => Meters / (0.0254);

    public double Feet => Meters / (0.3048);

    public static WaterDepth FromMeters(double value) => new(value);

    public static WaterDepth FromMillimeters(double value) => new(value * (0.001));

    public static WaterDepth FromInches(double value) => new(value * (0.0254));

    public static WaterDepth FromFeet(double value) => new(value * (0.3048));

    public static WaterDepth operator +(WaterDepth left, WaterDepth right) => new(left.Meters + right.Meters);

    public static WaterDepth operator -(WaterDepth left, WaterDepth right) => new(left.Meters - right.Meters);

    public static WaterDepth operator *(WaterDepth quantity, double factor) => new(quantity.Meters * factor);

    public static WaterDepth operator *(double factor, WaterDepth quantity) => new(quantity.Meters * factor);

    public static WaterDepth operator /(WaterDepth quantity, double divisor) => new(quantity.Meters / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(WaterDepth left, WaterDepth right) => left.Meters / right.Meters;

    public static bool operator <(WaterDepth left, WaterDepth right) => left.Meters < right.Meters;

    public static bool operator >(WaterDepth left, WaterDepth right) => left.Meters > right.Meters;

    public static bool operator <=(WaterDepth left, WaterDepth right) => left.Meters <= right.Meters;

    public static bool operator >=(WaterDepth left, WaterDepth right) => left.Meters >= right.Meters;

    public int CompareTo(WaterDepth other) => Meters.CompareTo(other.Meters);
}
