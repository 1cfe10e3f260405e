namespace Watersown.Quantities;

/// <summary>A quantity: grain per land area. Held in kilograms per square meter.</summary>
public readonly record struct GrainYield : IComparable<GrainYield>
{
    private GrainYield(double kilogramsPerSquareMeter) => KilogramsPerSquareMeter = Finite.Require(kilogramsPerSquareMeter);

    /// <summary>Nothing of it.</summary>
    public static GrainYield Zero => default;

    public double KilogramsPerSquareMeter { get; }

    public double TonnesPerHectare => KilogramsPerSquareMeter / (0.1);

    public double HundredweightsPerAcre => KilogramsPerSquareMeter / (45.359237 / (4840 * 0.9144 * 0.9144));

    public static GrainYield FromKilogramsPerSquareMeter(double value) => new(value);

    public static GrainYield FromTonnesPerHectare(double value) => new(value * (0.1));

    public static GrainYield FromHundredweightsPerAcre(double value) => new(value * (45.359237 / (4840 * 0.9144 * 0.9144)));

    public static GrainYield operator +(GrainYield left, GrainYield right) => new(left.KilogramsPerSquareMeter + right.KilogramsPerSquareMeter);

    public static GrainYield operator -(GrainYield left, GrainYield right) => new(left.KilogramsPerSquareMeter - right.KilogramsPerSquareMeter);

    public static GrainYield operator *(GrainYield quantity, double factor) => new(quantity.KilogramsPerSquareMeter * factor);

    public static GrainYield operator *(double factor, GrainYield quantity) => new(quantity.KilogramsPerSquareMeter * factor);

    public static GrainYield operator /(GrainYield quantity, double divisor) => new(quantity.KilogramsPerSquareMeter / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(GrainYield left, GrainYield right) => left.KilogramsPerSquareMeter / right.KilogramsPerSquareMeter;

    public static bool operator <(GrainYield left, GrainYield right) => left.KilogramsPerSquareMeter < right.KilogramsPerSquareMeter;

    public static bool operator >(GrainYield left, GrainYield right) => left.KilogramsPerSquareMeter > right.KilogramsPerSquareMeter;

    public static bool operator <=(GrainYield left, GrainYield right) => left.KilogramsPerSquareMeter <= right.KilogramsPerSquareMeter;

    public static bool operator >=(GrainYield left, GrainYield right) => left.KilogramsPerSquareMeter >= right.KilogramsPerSquareMeter;

    /// <summary>Grain of a piece of land that gives this much.</summary>
    public static Mass operator *(GrainYield grain, Area land) => Mass.FromKilograms(grain.KilogramsPerSquareMeter * land.SquareMeters);

    /// <summary>What a piece of land gave, over the land.</summary>
    public static GrainYield Of(Mass grain, Area land) => new(grain.Kilograms / land.SquareMeters);

    public int CompareTo(GrainYield other) => KilogramsPerSquareMeter.CompareTo(other.KilogramsPerSquareMeter);
}
