using System.Runtime.Intrinsics;
using Lanes = System.Runtime.Intrinsics.Vector512<float>;
using Half = System.Runtime.Intrinsics.Vector512<double>;

namespace Watersown.Water.Flood;

/// <summary>Sixteen numbers in double precision: what must add up.</summary>
internal readonly struct Wide(Half low, Half high)
{
    private readonly Half low = low;
    private readonly Half high = high;

    public double this[int lane] => lane < Half.Count ? low[lane] : high[lane - Half.Count];

    public bool IsZero => low == Half.Zero && high == Half.Zero;

    public static Wide Of(Lanes lanes)
    {
        var (low, high) = Vector512.Widen(lanes);
        return new(low, high);
    }

    public static Wide Of(double value) => new(Vector512.Create(value), Vector512.Create(value));

    public static Wide operator +(Wide a, Wide b) => new(a.low + b.low, a.high + b.high);

    public static Wide operator -(Wide a, Wide b) => new(a.low - b.low, a.high - b.high);

    public static Wide operator *(Wide a, Wide b) => new(a.low * b.low, a.high * b.high);

    public Lanes Narrow() => Vector512.Narrow(low, high);

    public Wide With(int lane, double value) =>
        lane < Half.Count ? new(low.WithElement(lane, value), high) : new(low, high.WithElement(lane - Half.Count, value));
}
