namespace Watersown.Quantities;

/// <summary>A quantity: a speed. Held in meters per second.</summary>
public readonly record struct Speed : IComparable<Speed>
{
    private Speed(double metersPerSecond) => MetersPerSecond = Finite.Require(metersPerSecond);

    /// <summary>Nothing of it.</summary>
    public static Speed Zero => default;

    public double MetersPerSecond { get; }

    public double MilesPerHour => MetersPerSecond / (0.44704);

    public double KilometersPerHour => MetersPerSecond / (1 / 3.6);

    public double Knots => MetersPerSecond / (1852.0 / 3600);

    public static Speed FromMetersPerSecond(double value) => new(value);

    public static Speed FromMilesPerHour(double value) => new(value * (0.44704));

    public static Speed FromKilometersPerHour(double value) => new(value * (1 / 3.6));

    public static Speed FromKnots(double value) => new(value * (1852.0 / 3600));

    public static Speed operator +(Speed left, Speed right) => new(left.MetersPerSecond + right.MetersPerSecond);

    public static Speed operator -(Speed left, Speed right) => new(left.MetersPerSecond - right.MetersPerSecond);

    public static Speed operator *(Speed quantity, double factor) => new(quantity.MetersPerSecond * factor);

    public static Speed operator *(double factor, Speed quantity) => new(quantity.MetersPerSecond * factor);

    public static Speed operator /(Speed quantity, double divisor) => new(quantity.MetersPerSecond / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(Speed left, Speed right) => left.MetersPerSecond / right.MetersPerSecond;

    public static bool operator <(Speed left, Speed right) => left.MetersPerSecond < right.MetersPerSecond;

    public static bool operator >(Speed left, Speed right) => left.MetersPerSecond > right.MetersPerSecond;

    public static bool operator <=(Speed left, Speed right) => left.MetersPerSecond <= right.MetersPerSecond;

    public static bool operator >=(Speed left, Speed right) => left.MetersPerSecond >= right.MetersPerSecond;

    /// <summary>Land covered per time by a swath moved at this speed.</summary>
    public static AreaRate operator *(Speed speed, Length width) => AreaRate.FromSquareMetersPerSecond(speed.MetersPerSecond * width.Meters);

    /// <summary>Distance covered in a span of time.</summary>
    public static Length operator *(Speed speed, TimeSpan span) => Length.FromMeters(speed.MetersPerSecond * span.TotalSeconds);

    public int CompareTo(Speed other) => MetersPerSecond.CompareTo(other.MetersPerSecond);
}
