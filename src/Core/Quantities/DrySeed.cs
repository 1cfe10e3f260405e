namespace Watersown.Quantities;

/// <summary>A quantity: seed by its dry weight, as bought and as rates are quoted. Held in kilograms.</summary>
public readonly record struct DrySeed : IComparable<DrySeed>
{
    private DrySeed(double kilograms) => Kilograms = Finite.Require(kilograms);

    /// <summary>Nothing of it.</summary>
    public static DrySeed Zero => default;

    public double Kilograms { get; }

    public double Pounds => Kilograms / (0.45359237);

    public double Hundredweights => Kilograms / (45.359237);

    public static DrySeed FromKilograms(double value) => new(value);

    public static DrySeed FromPounds(double value) => new(value * (0.45359237));

    public static DrySeed FromHundredweights(double value) => new(value * (45.359237));

    public static DrySeed operator +(DrySeed left, DrySeed right) => new(left.Kilograms + right.Kilograms);

    public static DrySeed operator -(DrySeed left, DrySeed right) => new(left.Kilograms - right.Kilograms);

    public static DrySeed operator *(DrySeed quantity, double factor) => new(quantity.Kilograms * factor);

    public static DrySeed operator *(double factor, DrySeed quantity) => new(quantity.Kilograms * factor);

    public static DrySeed operator /(DrySeed quantity, double divisor) => new(quantity.Kilograms / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(DrySeed left, DrySeed right) => left.Kilograms / right.Kilograms;

    public static bool operator <(DrySeed left, DrySeed right) => left.Kilograms < right.Kilograms;

    public static bool operator >(DrySeed left, DrySeed right) => left.Kilograms > right.Kilograms;

    public static bool operator <=(DrySeed left, DrySeed right) => left.Kilograms <= right.Kilograms;

    public static bool operator >=(DrySeed left, DrySeed right) => left.Kilograms >= right.Kilograms;

    public int CompareTo(DrySeed other) => Kilograms.CompareTo(other.Kilograms);
}
