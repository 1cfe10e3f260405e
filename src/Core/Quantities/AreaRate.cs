namespace Watersown.Quantities;

/// <summary>A quantity: land worked per time. Held in square meters per second.</summary>
public readonly record struct AreaRate : IComparable<AreaRate>
{
    private AreaRate(double squareMetersPerSecond) => SquareMetersPerSecond = Finite.Require(squareMetersPerSecond);

    /// <summary>Nothing of it.</summary>
    public static AreaRate Zero => default;

    public double SquareMetersPerSecond { get; }

    public double AcresPerMinute => SquareMetersPerSecond / (4840 * 0.9144 * 0.9144 / 60);

    public double AcresPerHour => SquareMetersPerSecond / (4840 * 0.9144 * 0.9144 / 3600);

    public double HectaresPerHour => SquareMetersPerSecond / (10000.0 / 3600);

    public static AreaRate FromSquareMetersPerSecond(double value) => new(value);

    public static AreaRate FromAcresPerMinute(double value) => new(value * (4840 * 0.9144 * 0.9144 / 60));

    public static AreaRate FromAcresPerHour(double value) => new(value * (4840 * 0.9144 * 0.9144 / 3600));

    public static AreaRate FromHectaresPerHour(double value) => new(value * (10000.0 / 3600));

    public static AreaRate operator +(AreaRate left, AreaRate right) => new(left.SquareMetersPerSecond + right.SquareMetersPerSecond);

    public static AreaRate operator -(AreaRate left, AreaRate right) => new(left.SquareMetersPerSecond - right.SquareMetersPerSecond);

    public static AreaRate operator *(AreaRate quantity, double factor) => new(quantity.SquareMetersPerSecond * factor);

    public static AreaRate operator *(double factor, AreaRate quantity) => new(quantity.SquareMetersPerSecond * factor);

    public static AreaRate operator /(AreaRate quantity, double divisor) => new(quantity.SquareMetersPerSecond / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(AreaRate left, AreaRate right) => left.SquareMetersPerSecond / right.SquareMetersPerSecond;

    public static bool operator <(AreaRate left, AreaRate right) => left.SquareMetersPerSecond < right.SquareMetersPerSecond;

    public static bool operator >(AreaRate left, AreaRate right) => left.SquareMetersPerSecond > right.SquareMetersPerSecond;

    public static bool operator <=(AreaRate left, AreaRate right) => left.SquareMetersPerSecond <= right.SquareMetersPerSecond;

    public static bool operator >=(AreaRate left, AreaRate right) => left.SquareMetersPerSecond >= right.SquareMetersPerSecond;

    public int CompareTo(AreaRate other) => SquareMetersPerSecond.CompareTo(other.SquareMetersPerSecond);
}
