namespace Watersown.Quantities;

/// <summary>A quantity: soaked seed per land area, what the gate is set to. Held in kilograms per square meter.</summary>
public readonly record struct SoakedRate : IComparable<SoakedRate>
{
    private SoakedRate(double kilogramsPerSquareMeter) => KilogramsPerSquareMeter = Finite.Require(kilogramsPerSquareMeter);

    /// <summary>Nothing of it.</summary>
    public static SoakedRate Zero => default;

    public double KilogramsPerSquareMeter { get; }

    public double KilogramsPerHectare => KilogramsPerSquareMeter / (0.0001);

    public double PoundsPerAcre => KilogramsPerSquareMeter / (0.45359237 / (4840 * 0.9144 * 0.9144));

    public static SoakedRate FromKilogramsPerSquareMeter(double value) => new(value);

    public static SoakedRate FromKilogramsPerHectare(double value) => new(value * (0.0001));

    public static SoakedRate FromPoundsPerAcre(double value) => new(value * (0.45359237 / (4840 * 0.9144 * 0.9144)));

    public static SoakedRate operator +(SoakedRate left, SoakedRate right) => new(left.KilogramsPerSquareMeter + right.KilogramsPerSquareMeter);

    public static SoakedRate operator -(SoakedRate left, SoakedRate right) => new(left.KilogramsPerSquareMeter - right.KilogramsPerSquareMeter);

    public static SoakedRate operator *(SoakedRate quantity, double factor) => new(quantity.KilogramsPerSquareMeter * factor);

    public static SoakedRate operator *(double factor, SoakedRate quantity) => new(quantity.KilogramsPerSquareMeter * factor);

    public static SoakedRate operator /(SoakedRate quantity, double divisor) => new(quantity.KilogramsPerSquareMeter / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(SoakedRate left, SoakedRate right) => left.KilogramsPerSquareMeter / right.KilogramsPerSquareMeter;

    public static bool operator <(SoakedRate left, SoakedRate right) => left.KilogramsPerSquareMeter < right.KilogramsPerSquareMeter;

    public static bool operator >(SoakedRate left, SoakedRate right) => left.KilogramsPerSquareMeter > right.KilogramsPerSquareMeter;

    public static bool operator <=(SoakedRate left, SoakedRate right) => left.KilogramsPerSquareMeter <= right.KilogramsPerSquareMeter;

    public static bool operator >=(SoakedRate left, SoakedRate right) => left.KilogramsPerSquareMeter >= right.KilogramsPerSquareMeter;

    /// <summary>Soaked seed for a piece of land at this rate.</summary>
    public static SoakedSeed operator *(SoakedRate rate, Area area) => SoakedSeed.FromKilograms(rate.KilogramsPerSquareMeter * area.SquareMeters);

    /// <summary>Weight that must leave the gate per time to lay this rate at a land rate.</summary>
    public static MassFlow operator *(SoakedRate rate, AreaRate land) => MassFlow.FromKilogramsPerSecond(rate.KilogramsPerSquareMeter * land.SquareMetersPerSecond);

    public int CompareTo(SoakedRate other) => KilogramsPerSquareMeter.CompareTo(other.KilogramsPerSquareMeter);
}
