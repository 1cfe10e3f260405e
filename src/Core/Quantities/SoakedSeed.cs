namespace Watersown.Quantities;

/// <summary>A quantity: seed by its weight after soaking and draining, as hauled, loaded and gated. Held in kilograms.</summary>
public readonly record struct SoakedSeed : IComparable<SoakedSeed>
{
    private SoakedSeed(double kilograms) => Kilograms = Finite.Require(kilograms);

    /// <summary>Nothing of it.</summary>
    public static SoakedSeed Zero => default;

    public double Kilograms { get; }

    public double Pounds => Kilograms / (0.45359237);

    public static SoakedSeed FromKilograms(double value) => new(value);

    public static SoakedSeed FromPounds(double value) => new(value * (0.45359237));

    public static SoakedSeed operator +(SoakedSeed left, SoakedSeed right) => new(left.Kilograms + right.Kilograms);

    public static SoakedSeed operator -(SoakedSeed left, SoakedSeed right) => new(left.Kilograms - right.Kilograms);

    public static SoakedSeed operator *(SoakedSeed quantity, double factor) => new(quantity.Kilograms * factor);

    public static SoakedSeed operator *(double factor, SoakedSeed quantity) => new(quantity.Kilograms * factor);

    public static SoakedSeed operator /(SoakedSeed quantity, double divisor) => new(quantity.Kilograms / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(SoakedSeed left, SoakedSeed right) => left.Kilograms / right.Kilograms;

    public static bool operator <(SoakedSeed left, SoakedSeed right) => left.Kilograms < right.Kilograms;

    public static bool operator >(SoakedSeed left, SoakedSeed right) => left.Kilograms > right.Kilograms;

    public static bool operator <=(SoakedSeed left, SoakedSeed right) => left.Kilograms <= right.Kilograms;

    public static bool operator >=(SoakedSeed left, SoakedSeed right) => left.Kilograms >= right.Kilograms;

    public int CompareTo(SoakedSeed other) => Kilograms.CompareTo(other.Kilograms);
}
