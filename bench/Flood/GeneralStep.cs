using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using Watersown.Water.Flood;

namespace Watersown.Bench;

/// <summary>
/// A general solver of another library over the plain laws. It knows nothing of ground that stays wet: the ground covered is that of the
/// start, or of what is held.
/// </summary>
internal static class GeneralStep
{
    /// <summary>Depths after some hours.</summary>
    /// <param name="network">Checks in a row.</param>
    /// <param name="hours">How long.</param>
    /// <param name="step">Of its steps, s.</param>
    public static double[] Depths(FloodNetwork network, double hours, int step)
    {
        var plain = new PlainStep(network);
        var slope = new double[network.Checks.Length];
        var held = Vector<double>.Build.DenseOfArray(plain.Held);
        var steps = network.Inlets[0].Flow;
        for (var k = 0; k < steps.Length && steps[k].From.TotalHours < hours; k++)
        {
            var (from, to, flow) = (steps[k].From.TotalSeconds, Math.Min(hours, k + 1 < steps.Length ? steps[k + 1].From.TotalHours : hours) * 3600, steps[k].Flow.CubicMetersPerSecond);
            held = RungeKutta.FourthOrder(held, from, to, (int)((to - from) / step) + 1, (_, h) =>
            {
                plain.Rates(h.AsArray() ?? h.ToArray(), flow, slope);
                return Vector<double>.Build.DenseOfArray(slope);
            })[^1];
        }

        held.ToArray().CopyTo(plain.Held, 0);
        return [.. network.Checks.Select((_, i) => plain.Pond(i))];
    }
}
