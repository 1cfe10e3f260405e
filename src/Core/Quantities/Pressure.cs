namespace Watersown.Quantities;

/// <summary>A quantity: air pressure. Held in pascals.</summary>
public readonly record struct Pressure : IComparable<Pressure>
{
    private Pressure(double pascals) => Pascals = Finite.Require(pascals);

    /// <summary>Nothing of it.</summary>
    public static Pressure Zero => default;

    public double Pascals { get; }

    public double Hectopascals => Pascals / (100);

    public double Kilopascals => Pascals / (1000);

    public double PoundsPerSquareInch => Pascals / (0.45359237 * 9.80665 / (0.0254 * 0.0254));

    public static Pressure FromPascals(double value) => new(value);

    public static Pressure FromHectopascals(double value) => new(value * (100));

    public static Pressure FromKilopascals(double value) => new(value * (1000));

    public static Pressure FromPoundsPerSquareInch(double value) => new(value * (0.45359237 * 9.80665 / (0.0254 * 0.0254)));

    public static Pressure operator +(Pressure left, Pressure right) => new(left.Pascals + right.Pascals);

    public static Pressure operator -(Pressure left, Pressure right) => new(left.Pascals - right.Pascals);

    public static Pressure operator *(Pressure quantity, double factor) => new(quantity.Pascals * factor);

    public static Pressure operator *(double factor, Pressure quantity) => new(quantity.Pascals * factor);

    public static Pressure operator /(Pressure quantity, double divisor) => new(quantity.Pascals / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(Pressure left, Pressure right) => left.Pascals / right.Pascals;

    public static bool operator <(Pressure left, Pressure right) => left.Pascals < right.Pascals;

    public static bool operator >(Pressure left, Pressure right) => left.Pascals > right.Pascals;

    public static bool operator <=(Pressure left, Pressure right) => left.Pascals <= right.Pascals;

    public static bool operator >=(Pressure left, Pressure right) => left.Pascals >= right.Pascals;

    public int CompareTo(Pressure other) => Pascals.CompareTo(other.Pascals);
}
