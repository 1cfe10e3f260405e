namespace Watersown.Quantities;

/// <summary>A quantity: dry seed per land area. Held in kilograms per square meter.</summary>
public readonly record struct SeedRate : IComparable<SeedRate>
{
    private SeedRate(double kilogramsPerSquareMeter) => KilogramsPerSquareMeter = Finite.Require(kilogramsPerSquareMeter);

    /// <summary>Nothing of it.</summary>
    public static SeedRate Zero => default;

    public double KilogramsPerSquareMeter { get; }

    public double KilogramsPerHectare => KilogramsPerSquareMeter / (0.0001);

    public double PoundsPerAcre => KilogramsPerSquareMeter / (0.45359237 / (4840 * 0.9144 * 0.9144));

    public static SeedRate FromKilogramsPerSquareMeter(double value) => new(value);

    public static SeedRate FromKilogramsPerHectare(double value) => new(value * (0.0001));

    public static SeedRate FromPoundsPerAcre(double value) => new(value * (0.45359237 / (4840 * 0.9144 * 0.9144)));

    public static SeedRate operator +(SeedRate left, SeedRate right) => new(left.KilogramsPerSquareMeter + right.KilogramsPerSquareMeter);

    public static SeedRate operator -(SeedRate left, SeedRate right) => new(left.KilogramsPerSquareMeter - right.KilogramsPerSquareMeter);

    public static SeedRate operator *(SeedRate quantity, double factor) => new(quantity.KilogramsPerSquareMeter * factor);

    public static SeedRate operator *(double factor, SeedRate quantity) => new(quantity.KilogramsPerSquareMeter * factor);

    public static SeedRate operator /(SeedRate quantity, double divisor) => new(quantity.KilogramsPerSquareMeter / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(SeedRate left, SeedRate right) => left.KilogramsPerSquareMeter / right.KilogramsPerSquareMeter;

    public static bool operator <(SeedRate left, SeedRate right) => left.KilogramsPerSquareMeter < right.KilogramsPerSquareMeter;

    public static bool operator >(SeedRate left, SeedRate right) => left.KilogramsPerSquareMeter > right.KilogramsPerSquareMeter;

    public static bool operator <=(SeedRate left, SeedRate right) => left.KilogramsPerSquareMeter <= right.KilogramsPerSquareMeter;

    public static bool operator >=(SeedRate left, SeedRate right) => left.KilogramsPerSquareMeter >= right.KilogramsPerSquareMeter;

    /// <summary>Dry seed for a piece of land at this rate.</summary>
    public static DrySeed operator *(SeedRate rate, Area area) => DrySeed.FromKilograms(rate.KilogramsPerSquareMeter * area.SquareMeters);

    public int CompareTo(SeedRate other) => KilogramsPerSquareMeter.CompareTo(other.KilogramsPerSquareMeter);
}
