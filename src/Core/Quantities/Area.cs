namespace Watersown.Quantities;

/// <summary>A quantity: a piece of land or of water surface. Held in square meters.</summary>
public readonly record struct Area : IComparable<Area>
{
    private Area(double squareMeters) => SquareMeters = Finite.Require(squareMeters);

    /// <summary>Nothing of it.</summary>
    public static Area Zero => default;

    public double SquareMeters { get; }

    public double Hectares => SquareMeters / (10000);

    public double Acres => SquareMeters / (4840 * 0.9144 * 0.9144);

    public double SquareFeet => SquareMeters / (0.3048 * 0.3048);

    public static Area FromSquareMeters(double value) => new(value);

    public static Area FromHectares(double value) => new(value * (10000));

    public static Area FromAcres(double value) => new(value * (4840 * 0.9144 * 0.9144));

    public static Area FromSquareFeet(double value) => new(value * (0.3048 * 0.3048));

    public static Area operator +(Area left, Area right) => new(left.SquareMeters + right.SquareMeters);

    public static Area operator -(Area left, Area right) => new(left.SquareMeters - right.SquareMeters);

    public static Area operator *(Area quantity, double factor) => new(quantity.SquareMeters * factor);

    public static Area operator *(double factor, Area quantity) => new(quantity.SquareMeters * factor);

    public static Area operator /(Area quantity, double divisor) => new(quantity.SquareMeters / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(Area left, Area right) => left.SquareMeters / right.SquareMeters;

    public static bool operator <(Area left, Area right) => left.SquareMeters < right.SquareMeters;

    public static bool operator >(Area left, Area right) => left.SquareMeters > right.SquareMeters;

    public static bool operator <=(Area left, Area right) => left.SquareMeters <= right.SquareMeters;

    public static bool operator >=(Area left, Area right) => left.SquareMeters >= right.SquareMeters;

    /// <summary>Water standing at one depth over this area.</summary>
    public static Volume operator *(Area area, WaterDepth depth) => Volume.FromCubicMeters(area.SquareMeters * depth.Meters);

    /// <summary>What a depth lost or gained per time comes to over this area.</summary>
    public static FlowRate operator *(Area area, DepthRate rate) => FlowRate.FromCubicMetersPerSecond(area.SquareMeters * rate.MetersPerSecond);

    public int CompareTo(Area other) => SquareMeters.CompareTo(other.SquareMeters);
}
