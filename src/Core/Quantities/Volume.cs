namespace Watersown.Quantities;

/// <summary>A quantity: an amount of water or of bulk seed. Held in cubic meters.</summary>
public readonly record struct Volume : IComparable<Volume>
{
    private Volume(double cubicMeters) => CubicMeters = Finite.Require(cubicMeters);

    /// <summary>Nothing of it.</summary>
    public static Volume Zero => default;

    public double CubicMeters { get; }

    public double AcreFeet => CubicMeters / (1233.48183754752);

    public double CubicFeet => CubicMeters / (0.028316846592);

    public double Gallons => CubicMeters / (0.003785411784);

    public static Volume FromCubicMeters(double value) => new(value);

    public static Volume FromAcreFeet(double value) => new(value * (1233.48183754752));

    public static Volume FromCubicFeet(double value) => new(value * (0.028316846592));

    public static Volume FromGallons(double value) => new(value * (0.003785411784));

    public static Volume operator +(Volume left, Volume right) => new(left.CubicMeters + right.CubicMeters);

    public static Volume operator -(Volume left, Volume right) => new(left.CubicMeters - right.CubicMeters);

    public static Volume operator *(Volume quantity, double factor) => new(quantity.CubicMeters * factor);

    public static Volume operator *(double factor, Volume quantity) => new(quantity.CubicMeters * factor);

    public static Volume operator /(Volume quantity, double divisor) => new(quantity.CubicMeters / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(Volume left, Volume right) => left.CubicMeters / right.CubicMeters;

    public static bool operator <(Volume left, Volume right) => left.CubicMeters < right.CubicMeters;

    public static bool operator >(Volume left, Volume right) => left.CubicMeters > right.CubicMeters;

    public static bool operator <=(Volume left, Volume right) => left.CubicMeters <= right.CubicMeters;

    public static bool operator >=(Volume left, Volume right) => left.CubicMeters >= right.CubicMeters;

    /// <summary>Time a steady flow takes to bring this volume; the flow must be above zero.</summary>
    public static TimeSpan operator /(Volume volume, FlowRate flow) => TimeSpan.FromSeconds(volume.CubicMeters / flow.CubicMetersPerSecond);

    public int CompareTo(Volume other) => CubicMeters.CompareTo(other.CubicMeters);
}
