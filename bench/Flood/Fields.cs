using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using Watersown.Water.Flood;

namespace Watersown.Bench;

/// <summary>Fields of twenty checks over four days: how many a second on one thread, and how far off.</summary>
internal static class Fields
{
    private const int Many = 256;
    private static readonly double[] Looked = [12, 24, 48, 72, 96];

    public static void Measure()
    {
        foreach (var (name, network) in ((string, FloodNetwork)[])[("drowned from the start", Cases.Drowned()), ("dry at the start", Cases.Dry())])
        {
            Console.WriteLine();
            Console.WriteLine($"20 checks, 96 h, {name}; error: worst depth of any check after {string.Join(", ", Looked)} h, against plain steps of 1 s");
            Measured.Row("what", "best, µs a field", "median", "fields a second, at the median", "times the first", "error, mm", "water astray");
            Measured.Row("---", "---:", "---:", "---:", "---:", "---:", "---:");
            Table(network);
        }
    }

    private static void Table(FloodNetwork network)
    {
        var truth = Looked.Select(h => Plain(network, h, 1)).ToArray();
        double Error(Func<double, double[]> depths) => Looked.Select((h, k) => depths(h).Zip(truth[k], (a, b) => Math.Abs(a - b)).Max()).Max() * 1000;

        var first = Say("scalar RK4 with powers, 60 s", 1, () => Plain(network, 96, 60), null, Error(h => Plain(network, h, 60)), null);
        Say("scalar RK4 with powers, 300 s", 1, () => Plain(network, 96, 300), first, Error(h => Plain(network, h, 300)), null);
        Say("MathNet RK4, 60 s", 1, () => General(network, 96), first, Error(h => General(network, h)), null);
        var quiet = new FloodOptions { Telling = TimeSpan.Zero };
        Say("Flooding.Run", 1, () => Flooding.Run(network, Cases.Span, quiet), first, Error(h => Depths(Flooding.Run(network, TimeSpan.FromHours(h), quiet))), Astray([Flooding.Run(network, Cases.Span, quiet)]));
        var futures = Cases.Futures(Many);
        var alike = futures.SetItem(0, FloodFuture.AsTold);
        Say($"FloodBatch, {Many} futures of one field", Many, () => FloodBatch.Run(network, futures, Cases.Span), first, Error(h => Depths(FloodBatch.Run(network, alike, TimeSpan.FromHours(h))[0])), Astray(FloodBatch.Run(network, futures, Cases.Span)));
        var unlike = Cases.Unlike(network, Many);
        Say($"FloodBatch, {Many} unlike fields, laying out in it", Many, () => FloodBatch.Run(unlike, Cases.Span), first, Unlike(unlike), Astray(FloodBatch.Run(unlike, Cases.Span)));
        Console.WriteLine($"steps: Flooding.Run {Flooding.Run(network, Cases.Span, quiet).Steps}, batch of futures {FloodBatch.Run(network, futures, Cases.Span)[0].Steps}, of unlike fields {FloodBatch.Run(unlike, Cases.Span)[0].Steps}; bytes more for ten times the days: {Bytes(network, futures, 960) - Bytes(network, futures, 96)}");
    }

    private static double Say(string what, int fields, Action action, double? first, double error, double? astray)
    {
        var (best, median) = Measured.Time(action);
        var each = median.TotalMicroseconds / fields;
        Measured.Row(what, Measured.Figure(best.TotalMicroseconds / fields, "0.0"), Measured.Figure(each, "0.0"), Measured.Figure(1e6 / each, "N0"), Measured.Figure((first ?? each) / each, "0.0"), Measured.Figure(error, "0.0000"), astray is { } share ? Measured.Figure(share, "0.0e+0") : "-");
        return each;
    }

    private static double[] Plain(FloodNetwork network, double hours, double step)
    {
        var plain = new PlainStep(network);
        plain.Run(hours * 3600, step);
        return [.. network.Checks.Select((_, i) => plain.Pond(i))];
    }

    // A general solver knows nothing of ground that stays wet: the ground covered is that of the start, or of what is held.
    private static double[] General(FloodNetwork network, double hours)
    {
        var plain = new PlainStep(network);
        var slope = new double[network.Checks.Length];
        var held = Vector<double>.Build.DenseOfArray(plain.Held);
        var steps = network.Inlets[0].Flow;
        for (var k = 0; k < steps.Length && steps[k].From.TotalHours < hours; k++)
        {
            var (from, to, flow) = (steps[k].From.TotalSeconds, Math.Min(hours, k + 1 < steps.Length ? steps[k + 1].From.TotalHours : hours) * 3600, steps[k].Flow.CubicMetersPerSecond);
            held = RungeKutta.FourthOrder(held, from, to, (int)((to - from) / 60) + 1, (_, h) =>
            {
                plain.Rates(h.AsArray() ?? h.ToArray(), flow, slope);
                return Vector<double>.Build.DenseOfArray(slope);
            })[^1];
        }

        held.ToArray().CopyTo(plain.Held, 0);
        return [.. network.Checks.Select((_, i) => plain.Pond(i))];
    }

    private static double[] Depths(FloodRun run) => [.. run.Checks.Select(c => c.Depth.Meters)];

    private static double Unlike(ImmutableArray<FloodNetwork> networks)
    {
        var runs = FloodBatch.Run(networks, Cases.Span);
        return networks.Take(32).Select((n, k) => Plain(n, 96, 10).Zip(Depths(runs[k]), (a, b) => Math.Abs(a - b)).Max()).Max() * 1000;
    }

    private static double Astray(ImmutableArray<FloodRun> runs) => runs.Max(r => Math.Abs(r.Balance.Residual / (r.Balance.In + r.Balance.Rain)));

    private static long Bytes(FloodNetwork network, ImmutableArray<FloodFuture> futures, double hours)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        FloodBatch.Run(network, futures, TimeSpan.FromHours(hours));
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
