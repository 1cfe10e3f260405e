using System.Runtime.Intrinsics;
using Lanes = System.Runtime.Intrinsics.Vector512<double>;

namespace Watersown.Flight.Laying;

/// <summary>The sweep of <see cref="SweepLine"/> for eight headings at once. The same sums, in lanes.</summary>
internal static class SweepLanes
{
    public static int Count => Lanes.Count;

    public static void Sweep(FieldRings rings, double swath, ReadOnlySpan<double> sines, ReadOnlySpan<double> cosines, Span<double> passes, Span<double> open)
    {
        var (sin, cos) = (Vector512.Create(sines), Vector512.Create(cosines));
        var (low, width) = Extent(rings, sin, cos);
        var count = Vector512.Max(Lanes.One, Vector512.Ceiling((width - Vector512.Create(SweepLine.Dust)) / Vector512.Create(swath)));
        var scale = count / width;
        Sum(rings, sin, cos, scale, low * scale).CopyTo(open);
        count.CopyTo(passes);
    }

    private static (Lanes Low, Lanes Width) Extent(FieldRings rings, Lanes sin, Lanes cos)
    {
        var (low, high) = (Vector512.Create(double.PositiveInfinity), Vector512.Create(double.NegativeInfinity));
        for (var i = 0; i < rings.HullEast.Length; i++)
        {
            var right = (Vector512.Create(rings.HullEast[i]) * cos) - (Vector512.Create(rings.HullNorth[i]) * sin);
            low = Vector512.Min(low, right);
            high = Vector512.Max(high, right);
        }

        return (low, high - low);
    }

    // An edge on which no line of any lane ends is passed over: most edges of a finely drawn field are.
    private static Lanes Sum(FieldRings rings, Lanes sin, Lanes cos, Lanes scale, Lanes shift)
    {
        var (cosScaled, sinScaled, half, sum) = (cos * scale, sin * scale, Vector512.Create(0.5), Lanes.Zero);
        var (east, north) = (rings.East, rings.North);
        var i = 0;
        foreach (var end in rings.Ends)
        {
            var (e, n) = (Vector512.Create(east[i]), Vector512.Create(north[i]));
            var across = (e * cosScaled) - (n * sinScaled) - shift;
            var lines = Vector512.Ceiling(across - half);
            for (i++; i < end; i++)
            {
                var (nextE, nextN) = (Vector512.Create(east[i]), Vector512.Create(north[i]));
                var nextAcross = (nextE * cosScaled) - (nextN * sinScaled) - shift;
                var nextLines = Vector512.Ceiling(nextAcross - half);
                var step = nextLines - lines;
                if (!Vector512.EqualsAll(step, Lanes.Zero))
                {
                    var (ahead, nextAhead) = ((e * sin) + (n * cos), (nextE * sin) + (nextN * cos));
                    var run = Vector512.ConditionalSelect(Vector512.Equals(step, Lanes.Zero), Lanes.One, nextAcross - across);
                    var share = (((lines + nextLines) * half) - across) / run;
                    sum -= step * (ahead + (share * (nextAhead - ahead)));
                }

                (e, n, across, lines) = (nextE, nextN, nextAcross, nextLines);
            }
        }

        return sum;
    }
}
