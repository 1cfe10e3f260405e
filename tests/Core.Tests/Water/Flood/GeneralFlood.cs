using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using Watersown.Hydraulics;

namespace Watersown.Water.Flood;

/// <summary>
/// Checks in a row by a general solver of another library: Runge and Kutta's fourth order, the weirs by their published law in feet. It knows
/// nothing of ground that stays wet after the pond shrinks: for floods that only rise, or fields that are wet all over.
/// </summary>
internal static class GeneralFlood
{
    public static double[] Depths(FloodNetwork network, TimeSpan span, double step)
    {
        var held = Vector<double>.Build.Dense([.. network.Checks.Select(c => c.Covered.Share * (c.TakeUp + c.Depth).Meters)]);
        var flow = network.Inlets[0].Flow;
        for (var k = 0; k < flow.Length && flow[k].From < span; k++)
        {
            var end = k + 1 < flow.Length && flow[k + 1].From < span ? flow[k + 1].From : span;
            var now = flow[k].Flow.CubicMetersPerSecond;
            held = RungeKutta.FourthOrder(held, flow[k].From.TotalSeconds, end.TotalSeconds, (int)((end - flow[k].From).TotalSeconds / step) + 1, (_, h) => Rates(network, h, now))[^1];
        }

        return [.. network.Checks.Select((c, i) => Pond(c, held[i]))];
    }

    private static Vector<double> Rates(FloodNetwork network, Vector<double> held, double flow)
    {
        var comes = flow;
        return Vector<double>.Build.Dense([.. network.Checks.Select((check, i) =>
        {
            var goes = 0.0;
            if (network.Boxes.FirstOrDefault(b => b.From == i) is { } box)
            {
                var crest = check.Ground + box.Boards;
                var below = box.To is { } to ? (network.Checks[to].Ground + WaterDepth.FromMeters(Pond(network.Checks[to], held[to]))) - crest : WaterDepth.FromMeters(-1);
                goes = Over(box, check.Ground + WaterDepth.FromMeters(Pond(check, held[i])) - crest, below);
            }

            var lost = (check.Percolation + network.Air[0].Evaporation).MetersPerSecond * Math.Min(Covered(check, held[i]), Pond(check, held[i]) / 0.001);
            var net = ((comes - goes) / check.Area.SquareMeters) - lost;
            comes = goes;
            return net;
        })]);
    }

    private static double Covered(FloodCheck check, double held) => Math.Max(check.Covered.Share, Math.Clamp(held / (check.TakeUp + check.Front).Meters, 0, 1));

    private static double Pond(FloodCheck check, double held) => Math.Max(0, held - (check.TakeUp.Meters * Covered(check, held)));

    // Levels within a millimeter of each other are joined by a straight line.
    private static double Over(FloodBox box, WaterDepth above, WaterDepth below)
    {
        if (below > above) return -Over(box, below, above);
        if (above.Meters <= 0) return 0;
        var free = Weir.FreeFlow(box.Kind, above, box.Width).CubicMetersPerSecond;
        var still = Math.Min(0.001, above.Meters);
        var apart = (above - below).Meters;
        return apart >= still ? free * Weir.Drowning(box.Kind, above, below) : free * Weir.Drowning(box.Kind, above, above - WaterDepth.FromMeters(still)) * apart / still;
    }
}
