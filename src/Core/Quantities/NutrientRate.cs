namespace Watersown.Quantities;

/// <summary>A quantity: nutrient per land area. Held in kilograms per square meter.</summary>
public readonly record struct NutrientRate : IComparable<NutrientRate>
{
    private NutrientRate(double kilogramsPerSquareMeter) => KilogramsPerSquareMeter = Finite.Require(kilogramsPerSquareMeter);

    /// <summary>Nothing of it.</summary>
    public static NutrientRate Zero => default;

    public double KilogramsPerSquareMeter { get; }

    public double KilogramsPerHectare => KilogramsPerSquareMeter / (0.0001);

    public double PoundsPerAcre => KilogramsPerSquareMeter / (0.45359237 / (4840 * 0.9144 * 0.9144));

    public static NutrientRate FromKilogramsPerSquareMeter(double value) => new(value);

    public static NutrientRate FromKilogramsPerHectare(double value) => new(value * (0.0001));

    public static NutrientRate FromPoundsPerAcre(double value) => new(value * (0.45359237 / (4840 * 0.9144 * 0.9144)));

    public static NutrientRate operator +(NutrientRate left, NutrientRate right) => new(left.KilogramsPerSquareMeter + right.KilogramsPerSquareMeter);

    public static NutrientRate operator -(NutrientRate left, NutrientRate right) => new(left.KilogramsPerSquareMeter - right.KilogramsPerSquareMeter);

    public static NutrientRate operator *(NutrientRate quantity, double factor) => new(quantity.KilogramsPerSquareMeter * factor);

    public static NutrientRate operator *(double factor, NutrientRate quantity) => new(quantity.KilogramsPerSquareMeter * factor);

    public static NutrientRate operator /(NutrientRate quantity, double divisor) => new(quantity.KilogramsPerSquareMeter / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(NutrientRate left, NutrientRate right) => left.KilogramsPerSquareMeter / right.KilogramsPerSquareMeter;

    public static bool operator <(NutrientRate left, NutrientRate right) => left.KilogramsPerSquareMeter < right.KilogramsPerSquareMeter;

    public static bool operator >(NutrientRate left, NutrientRate right) => left.KilogramsPerSquareMeter > right.KilogramsPerSquareMeter;

    public static bool operator <=(NutrientRate left, NutrientRate right) => left.KilogramsPerSquareMeter <= right.KilogramsPerSquareMeter;

    public static bool operator >=(NutrientRate left, NutrientRate right) => left.KilogramsPerSquareMeter >= right.KilogramsPerSquareMeter;

    /// <summary>Nutrient for a piece of land at this rate.</summary>
    public static Mass operator *(NutrientRate rate, Area area) => Mass.FromKilograms(rate.KilogramsPerSquareMeter * area.SquareMeters);

    public int CompareTo(NutrientRate other) => KilogramsPerSquareMeter.CompareTo(other.KilogramsPerSquareMeter);
}
