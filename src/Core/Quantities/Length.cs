namespace Watersown.Quantities;

/// <summary>A quantity: a distance along the ground or in the air. Held in meters.</summary>
public readonly record struct Length : IComparable<Length>
{
    private Length(double meters) => Meters = Finite.Require(meters);

    /// <summary>Nothing of it.</summary>
    public static Length Zero => default;

    public double Meters { get; }

    public double Kilometers => Meters / (1000);

    public double Feet => Meters / (0.3048);

    public double Inches => Meters / (0.0254);

    public double Miles => Meters / (1609.344);

    public static Length FromMeters(double value) => new(value);

    public static Length FromKilometers(double value) => new(value * (1000));

    public static Length FromFeet(double value) => new(value * (0.3048));

    public static Length FromInches(double value) => new(value * (0.0254));

    public static Length FromMiles(double value) => new(value * (1609.344));

    public static Length operator +(Length left, Length right) => new(left.Meters + right.Meters);

    public static Length operator -(Length left, Length right) => new(left.Meters - right.Meters);

    public static Length operator *(Length quantity, double factor) => new(quantity.Meters * factor);

    public static Length operator *(double factor, Length quantity) => new(quantity.Meters * factor);

    public static Length operator /(Length quantity, double divisor) => new(quantity.Meters / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(Length left, Length right) => left.Meters / right.Meters;

    public static bool operator <(Length left, Length right) => left.Meters < right.Meters;

    public static bool operator >(Length left, Length right) => left.Meters > right.Meters;

    public static bool operator <=(Length left, Length right) => left.Meters <= right.Meters;

    public static bool operator >=(Length left, Length right) => left.Meters >= right.Meters;

    /// <summary>The rectangle of this length and that width.</summary>
    public static Area operator *(Length length, Length width) => Area.FromSquareMeters(length.Meters * width.Meters);

    /// <summary>Time to cover this distance at a speed above zero.</summary>
    public static TimeSpan operator /(Length length, Speed speed) => TimeSpan.FromSeconds(length.Meters / speed.MetersPerSecond);

    public int CompareTo(Length other) => Meters.CompareTo(other.Meters);
}
