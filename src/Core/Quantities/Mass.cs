namespace Watersown.Quantities;

/// <summary>A quantity: a weight of anything but seed, which has dry and soaked types of its own. Held in kilograms.</summary>
public readonly record struct Mass : IComparable<Mass>
{
    private Mass(double kilograms) => Kilograms = Finite.Require(kilograms);

    /// <summary>Nothing of it.</summary>
    public static Mass Zero => default;

    public double Kilograms { get; }

    public double Pounds => Kilograms / (0.45359237);

    public double Hundredweights => Kilograms / (45.359237);

    public static Mass FromKilograms(double value) => new(value);

    public static Mass FromPounds(double value) => new(value * (0.45359237));

    public static Mass FromHundredweights(double value) => new(value * (45.359237));

    public static Mass operator +(Mass left, Mass right) => new(left.Kilograms + right.Kilograms);

    public static Mass operator -(Mass left, Mass right) => new(left.Kilograms - right.Kilograms);

    public static Mass operator *(Mass quantity, double factor) => new(quantity.Kilograms * factor);

    public static Mass operator *(double factor, Mass quantity) => new(quantity.Kilograms * factor);

    public static Mass operator /(Mass quantity, double divisor) => new(quantity.Kilograms / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(Mass left, Mass right) => left.Kilograms / right.Kilograms;

    public static bool operator <(Mass left, Mass right) => left.Kilograms < right.Kilograms;

    public static bool operator >(Mass left, Mass right) => left.Kilograms > right.Kilograms;

    public static bool operator <=(Mass left, Mass right) => left.Kilograms <= right.Kilograms;

    public static bool operator >=(Mass left, Mass right) => left.Kilograms >= right.Kilograms;

    public int CompareTo(Mass other) => Kilograms.CompareTo(other.Kilograms);
}
