namespace Watersown.Flight.Laying;

/// <summary>
/// Passes and length over a field on one heading, with no pass laid: an edge crossed by m evenly spaced lines adds m times
/// where the middle one crosses it, signed by the way the edge goes, so that holes and bays fall out by themselves and
/// nothing is sorted.
/// </summary>
internal static class SweepLine
{
    /// <summary>A width of a whole number of swaths must not take one more for floating dust, m.</summary>
    public const double Dust = 1e-4;

    public static (int Passes, double Open) At(FieldRings rings, double swath, double sin, double cos)
    {
        var (low, width) = Extent(rings, sin, cos);
        var passes = Math.Max(1, Math.Ceiling((width - Dust) / swath));
        var scale = passes / width;
        var (cosScaled, sinScaled, shift, sum) = (cos * scale, sin * scale, low * scale, 0.0);
        var i = 0;
        foreach (var end in rings.Ends)
        {
            var (e, n) = (rings.East[i], rings.North[i]);
            var across = (e * cosScaled) - (n * sinScaled) - shift;
            var lines = Math.Ceiling(across - 0.5);
            for (i++; i < end; i++)
            {
                var (nextE, nextN) = (rings.East[i], rings.North[i]);
                var nextAcross = (nextE * cosScaled) - (nextN * sinScaled) - shift;
                var nextLines = Math.Ceiling(nextAcross - 0.5);
                var step = nextLines - lines;
                if (step != 0)
                {
                    var (ahead, nextAhead) = ((e * sin) + (n * cos), (nextE * sin) + (nextN * cos));
                    var share = (((lines + nextLines) / 2) - across) / (nextAcross - across);
                    sum -= step * (ahead + (share * (nextAhead - ahead)));
                }

                (e, n, across, lines) = (nextE, nextN, nextAcross, nextLines);
            }
        }

        return ((int)passes, sum);
    }

    public static (double Low, double Width) Extent(FieldRings rings, double sin, double cos)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var i = 0; i < rings.HullEast.Length; i++)
        {
            var right = (rings.HullEast[i] * cos) - (rings.HullNorth[i] * sin);
            low = Math.Min(low, right);
            high = Math.Max(high, right);
        }

        return (low, high - low);
    }
}
