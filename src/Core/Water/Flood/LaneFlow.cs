using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Lanes = System.Runtime.Intrinsics.Vector512<float>;

namespace Watersown.Water.Flood;

/// <summary>
/// The law of <see cref="BoxFlow"/> for a box of sixteen fields at once, in single precision: a flow is good to about a millionth,
/// which moves a depth by less than a ten-thousandth of a millimeter. Only roots, sums and products are used, which every machine and every
/// browser rounds alike.
/// </summary>
internal static class LaneFlow
{
    private const float Still = (float)BoxFlow.Still;
    private const float PerStill = (float)(1 / BoxFlow.Still);

    // A head too small to matter, so that nothing is divided by zero.
    private const float Least = 1e-12f;

    /// <summary>Flow from above to below, m³/s; below zero where it runs back.</summary>
    /// <param name="above">Water over the crest above, m.</param>
    /// <param name="below">Water over the crest below, m.</param>
    /// <param name="box">Width and ends of the boxes.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes At(Lanes above, Lanes below, ref readonly LaneBox box)
    {
        var head = Vector512.MaxNative(Vector512.MaxNative(above, below), Lanes.Zero);
        if (Vector512.EqualsAll(head, Lanes.Zero)) return Lanes.Zero;
        var flow = Vector512.Create((float)BoxFlow.Coefficient) * (box.Width - (box.Contraction * Vector512.MinNative(head, box.Most))) * head * Vector512.Sqrt(head);
        var tail = Vector512.MaxNative(Vector512.MinNative(above, below), Lanes.Zero);
        if (Vector512.EqualsAll(tail, Lanes.Zero)) return Signed(Vector512.MinNative(flow, head * box.Leveling), above, below);
        var per = Lanes.One / Vector512.MaxNative(head, Vector512.Create(Least));
        var apart = head - tail;
        // The lower level over the higher one, no nearer to it than still water is.
        var ratio = Vector512.MaxNative(Lanes.One - (Vector512.MaxNative(apart, Vector512.MinNative(head, Vector512.Create(Still))) * per), Lanes.Zero);
        var line = Vector512.MinNative(Lanes.One, apart * Vector512.MaxNative(Vector512.Create(PerStill), per));
        var drowned = flow * line * Power(Lanes.One - (ratio * Vector512.Sqrt(ratio)));
        return Signed(Vector512.MinNative(drowned, apart * box.Leveling), above, below);
    }

    /// <summary>x to Villemonte's power, for x from 2⁻¹⁵ to 1.</summary>
    [Source(nameof(Sources.Villemonte1947), "x^0.385: the mantissa by a polynomial through Chebyshev's points, off by 3e-7 at most; the exponent by its four bits")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Power(Lanes x)
    {
        var bits = x.AsInt32();
        var halvings = Vector512.Create(127) - (bits >>> 23);
        var mantissa = ((bits & Vector512.Create(0x007F_FFFF)) | Vector512.Create(0x3F80_0000)).AsSingle() - Vector512.Create(1.5f);
        var power = (mantissa * Vector512.Create(-0.002718742142363698f)) + Vector512.Create(0.00525292930810301f);
        power = (power * mantissa) + Vector512.Create(-0.009576568992900013f);
        power = (power * mantissa) + Vector512.Create(0.021994563636361195f);
        power = (power * mantissa) + Vector512.Create(-0.0615075270286177f);
        power = (power * mantissa) + Vector512.Create(0.30003244984438365f);
        power = (power * mantissa) + Vector512.Create(1.1689478452134456f);
        return power * Halved(halvings, 1, 0.7657789985471914f) * Halved(halvings, 2, 0.5864174746159394f) * (Halved(halvings, 4, 0.3438854545349359f) * Halved(halvings, 8, 0.11825720584069949f));
    }

    // 2^(−0.385 × bit) where the bit is set.
    private static Lanes Halved(Vector512<int> halvings, int bit, float factor) =>
        Vector512.ConditionalSelect(Vector512.Equals(halvings & Vector512.Create(bit), Vector512<int>.Zero).AsSingle(), Lanes.One, Vector512.Create(factor));

    private static Lanes Signed(Lanes flow, Lanes above, Lanes below) => Vector512.ConditionalSelect(Vector512.GreaterThan(below, above), -flow, flow);
}
