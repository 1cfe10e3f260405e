namespace Watersown.Quantities;

/// <summary>Warmth gathered over days above a base. Held in Celsius degree-days; Fahrenheit ones are 1.8 times as many.</summary>
public readonly record struct DegreeDays : IComparable<DegreeDays>
{
    private DegreeDays(double celsius) => Celsius = Finite.Require(celsius);

    public static DegreeDays Zero => default;

    public double Celsius { get; }

    public double Fahrenheit => Celsius * 1.8;

    public static DegreeDays FromCelsius(double value) => new(value);

    public static DegreeDays FromFahrenheit(double value) => new(value / 1.8);

    public static DegreeDays operator +(DegreeDays left, DegreeDays right) => new(left.Celsius + right.Celsius);

    public static bool operator <(DegreeDays left, DegreeDays right) => left.Celsius < right.Celsius;

    public static bool operator >(DegreeDays left, DegreeDays right) => left.Celsius > right.Celsius;

    public static bool operator <=(DegreeDays left, DegreeDays right) => left.Celsius <= right.Celsius;

    public static bool operator >=(DegreeDays left, DegreeDays right) => left.Celsius >= right.Celsius;

    public int CompareTo(DegreeDays other) => Celsius.CompareTo(other.Celsius);
}
