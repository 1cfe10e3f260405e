namespace Watersown.Quantities;

/// <summary>A temperature on a scale (not a difference). Held in degrees Celsius.</summary>
public readonly record struct Temperature : IComparable<Temperature>
{
    private Temperature(double celsius) => Celsius = Finite.Require(celsius);

    public double Celsius { get; }

    public double Fahrenheit => (Celsius * 1.8) + 32;

    public double Kelvin => Celsius + 273.15;

    public static Temperature FromCelsius(double value) => new(value);

    public static Temperature FromFahrenheit(double value) => new((value - 32) / 1.8);

    public static Temperature FromKelvin(double value) => new(value - 273.15);

    public static bool operator <(Temperature left, Temperature right) => left.Celsius < right.Celsius;

    public static bool operator >(Temperature left, Temperature right) => left.Celsius > right.Celsius;

    public static bool operator <=(Temperature left, Temperature right) => left.Celsius <= right.Celsius;

    public static bool operator >=(Temperature left, Temperature right) => left.Celsius >= right.Celsius;

    public int CompareTo(Temperature other) => Celsius.CompareTo(other.Celsius);
}
