namespace Watersown.Quantities;

/// <summary>A quantity: plants or seeds per land area. Held in per square meter.</summary>
public readonly record struct PlantDensity : IComparable<PlantDensity>
{
    private PlantDensity(double perSquareMeter) => PerSquareMeter = Finite.Require(perSquareMeter);

    /// <summary>Nothing of it.</summary>
    public static PlantDensity Zero => default;

    public double PerSquareMeter { get; }

    public double PerSquareFoot => PerSquareMeter / (1 / (0.3048 * 0.3048));

    public static PlantDensity FromPerSquareMeter(double value) => new(value);

    public static PlantDensity FromPerSquareFoot(double value) => new(value * (1 / (0.3048 * 0.3048)));

    public static PlantDensity operator +(PlantDensity left, PlantDensity right) => new(left.PerSquareMeter + right.PerSquareMeter);

    public static PlantDensity operator -(PlantDensity left, PlantDensity right) => new(left.PerSquareMeter - right.PerSquareMeter);

    public static PlantDensity operator *(PlantDensity quantity, double factor) => new(quantity.PerSquareMeter * factor);

    public static PlantDensity operator *(double factor, PlantDensity quantity) => new(quantity.PerSquareMeter * factor);

    public static PlantDensity operator /(PlantDensity quantity, double divisor) => new(quantity.PerSquareMeter / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(PlantDensity left, PlantDensity right) => left.PerSquareMeter / right.PerSquareMeter;

    public static bool operator <(PlantDensity left, PlantDensity right) => left.PerSquareMeter < right.PerSquareMeter;

    public static bool operator >(PlantDensity left, PlantDensity right) => left.PerSquareMeter > right.PerSquareMeter;

    public static bool operator <=(PlantDensity left, PlantDensity right) => left.PerSquareMeter <= right.PerSquareMeter;

    public static bool operator >=(PlantDensity left, PlantDensity right) => left.PerSquareMeter >= right.PerSquareMeter;

    public int CompareTo(PlantDensity other) => PerSquareMeter.CompareTo(other.PerSquareMeter);
}
