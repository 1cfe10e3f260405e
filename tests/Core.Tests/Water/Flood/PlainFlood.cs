namespace Watersown.Water.Flood;

/// <summary>The flood as anybody would write it first: Runge and Kutta's fourth order, one step for all, powers for the weirs. Checks in a row only.</summary>
internal static class PlainFlood
{
    public static double[] Depths(FloodNetwork network, double span, double step)
    {
        var n = network.Checks.Length;
        var (held, covered) = (new double[n], new double[n]);
        for (var t = 0.0; t < span - 1e-9; t += step)
        {
            var a = Rates(network, held, covered);
            var b = Rates(network, Moved(held, a, step / 2), covered);
            var c = Rates(network, Moved(held, b, step / 2), covered);
            var d = Rates(network, Moved(held, c, step), covered);
            for (var i = 0; i < n; i++)
            {
                held[i] += step / 6 * (a[i] + (2 * b[i]) + (2 * c[i]) + d[i]);
                covered[i] = Covered(network.Checks[i], held[i], covered[i]);
            }
        }

        return [.. Enumerable.Range(0, n).Select(i => Pond(network.Checks[i], held[i], covered[i]))];
    }

    private static double[] Moved(double[] held, double[] rates, double step) => [.. held.Zip(rates, (h, r) => h + (r * step))];

    private static double Covered(FloodCheck check, double held, double before) =>
        Math.Max(before, check.Area.SquareMeters * Math.Clamp(held / (check.Area.SquareMeters * (check.TakeUp.Meters + check.Front.Meters)), 0, 1));

    private static double Pond(FloodCheck check, double held, double covered) => Math.Max(0, held - (check.TakeUp.Meters * Covered(check, held, covered))) / check.Area.SquareMeters;

    private static double[] Rates(FloodNetwork network, double[] held, double[] covered)
    {
        var n = network.Checks.Length;
        var rates = new double[n];
        rates[0] = network.Inlets[0].Flow[0].Flow.CubicMetersPerSecond;
        for (var i = 0; i < n; i++)
        {
            var check = network.Checks[i];
            var wet = Covered(check, held[i], covered[i]);
            var pond = Pond(check, held[i], covered[i]);
            if (wet > 0) rates[i] -= check.Percolation.MetersPerSecond * wet * Math.Min(1, pond * check.Area.SquareMeters / wet / 0.001);
            var crest = check.Ground.Meters + network.Boxes[i].Boards.Meters;
            var above = check.Ground.Meters + pond - crest;
            var below = i + 1 < n ? network.Checks[i + 1].Ground.Meters + Pond(network.Checks[i + 1], held[i + 1], covered[i + 1]) - crest : -1;
            var flow = Francis(above, below, network.Boxes[i].Width.Meters);
            rates[i] -= flow;
            if (i + 1 < n) rates[i + 1] += flow;
        }

        return rates;
    }

    // Francis with Villemonte's drowning in feet, a straight line over the last millimeter. From three widths of head on the ends draw
    // in no further: beyond that Francis says nothing, and would run back to none at five.
    private static double Francis(double above, double below, double width)
    {
        if (above <= 0 && below <= 0) return 0;
        if (below > above) return -Francis(below, above, width);
        double h = above / 0.3048, l = width / 0.3048;
        var free = 3.33 * (l - (0.2 * Math.Min(h, 3 * l))) * Math.Pow(h, 1.5) * Math.Pow(0.3048, 3);
        if (below <= 0) return free;
        var still = Math.Min(0.001, above);
        var (ratio, share) = above - below >= still ? (below / above, 1.0) : ((above - still) / above, (above - below) / still);
        return free * share * Math.Pow(1 - Math.Pow(ratio, 1.5), 0.385);
    }
}
