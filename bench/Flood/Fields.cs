using Watersown.Water.Flood;

namespace Watersown.Bench;

/// <summary>Fields of twenty checks over four days: how many a second on one thread, and how far off.</summary>
internal static class Fields
{
    private const int Many = 256;
    private static readonly double[] Looked = [12, 24, 48, 72, 96];

    public static void Measure()
    {
        // A minute is too long a step for a sheet over wide boards: the plain steps would blow up.
        foreach (var (name, network, step) in ((string, FloodNetwork, int)[])[("drowned from the start", Cases.Drowned(), 60), ("dry at the start", Cases.Dry(), 60), ("dry at the start, thin sheets over wide boards", Cases.Sheets(), 20)])
        {
            Console.WriteLine();
            Console.WriteLine($"20 checks, 96 h, {name}; error: worst depth of any check after {string.Join(", ", Looked)} h, against plain steps of 1 s");
            Measured.Row("what", "best, µs a field", "median", "fields a second, at the median", "times the first", "error, mm", "water astray");
            Measured.Row("---", "---:", "---:", "---:", "---:", "---:", "---:");
            Table(network, step);
        }
    }

    private static void Table(FloodNetwork network, int step)
    {
        var truth = Looked.Select(h => Plain(network, h, 1)).ToArray();
        double Error(Func<double, double[]> depths) => Looked.Select((h, k) => depths(h).Zip(truth[k], (a, b) => Math.Abs(a - b)).Max()).Max() * 1000;

        var first = Say($"scalar RK4 with powers, {step} s", 1, () => Plain(network, 96, step), null, Error(h => Plain(network, h, step)), null);
        if (step == 60) Say("scalar RK4 with powers, 300 s", 1, () => Plain(network, 96, 300), first, Error(h => Plain(network, h, 300)), null);
        Say($"MathNet RK4, {step} s", 1, () => GeneralStep.Depths(network, 96, step), first, Error(h => GeneralStep.Depths(network, h, step)), null);
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
