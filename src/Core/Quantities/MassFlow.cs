namespace Watersown.Quantities;

/// <summary>A quantity: weight passing per time, such as seed through a gate. Held in kilograms per second.</summary>
public readonly record struct MassFlow : IComparable<MassFlow>
{
    private MassFlow(double kilogramsPerSecond) => KilogramsPerSecond = Finite.Require(kilogramsPerSecond);

    /// <summary>Nothing of it.</summary>
    public static MassFlow Zero => default;

    public double KilogramsPerSecond { get; }

    public double PoundsPerMinute => KilogramsPerSecond / (0.45359237 / 60);

    public static MassFlow FromKilogramsPerSecond(double value) => new(value);

    public static MassFlow FromPoundsPerMinute(double value) => new(value * (0.45359237 / 60));

    public static MassFlow operator +(MassFlow left, MassFlow right) => new(left.KilogramsPerSecond + right.KilogramsPerSecond);

    public static MassFlow operator -(MassFlow left, MassFlow right) => new(left.KilogramsPerSecond - right.KilogramsPerSecond);

    public static MassFlow operator *(MassFlow quantity, double factor) => new(quantity.KilogramsPerSecond * factor);

    public static MassFlow operator *(double factor, MassFlow quantity) => new(quantity.KilogramsPerSecond * factor);

    public static MassFlow operator /(MassFlow quantity, double divisor) => new(quantity.KilogramsPerSecond / divisor);

    /// <summary>How many times one goes into the other; a plain ratio.</summary>
    public static double operator /(MassFlow left, MassFlow right) => left.KilogramsPerSecond / right.KilogramsPerSecond;

    public static bool operator <(MassFlow left, MassFlow right) => left.KilogramsPerSecond < right.KilogramsPerSecond;

    public static bool operator >(MassFlow left, MassFlow right) => left.KilogramsPerSecond > right.KilogramsPerSecond;

    public static bool operator <=(MassFlow left, MassFlow right) => left.KilogramsPerSecond <= right.KilogramsPerSecond;

    public static bool operator >=(MassFlow left, MassFlow right) => left.KilogramsPerSecond >= right.KilogramsPerSecond;

    public int CompareTo(MassFlow other) => KilogramsPerSecond.CompareTo(other.KilogramsPerSecond);
}
