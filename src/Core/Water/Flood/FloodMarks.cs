namespace Watersown.Water.Flood;

/// <summary>
/// Keeps what happened when: moments inside a step are found on the cubic through its two ends and their rates.
/// </summary>
internal sealed class FloodMarks
{
    private readonly FloodPart part;
    private readonly FloodSystem system;
    private readonly double[] firstWet;
    private readonly double[] full;
    private readonly double[] deepest;
    private readonly double[] firstOver;
    private readonly double[] most;
    private readonly List<FloodDepth>[] told;
    private readonly double telling;
    private double nextTold;

    public FloodMarks(FloodPart part, FloodSystem system, FloodOptions options, double[] held)
    {
        (this.part, this.system, telling) = (part, system, options.Telling.TotalSeconds);
        (firstWet, full, deepest) = (Never(part.Count), Never(part.Count), new double[part.Count]);
        (firstOver, most) = (Never(part.BoxFrom.Length), new double[part.BoxFrom.Length]);
        told = [.. Enumerable.Range(0, part.Count).Select(_ => new List<FloodDepth>())];
        for (var i = 0; i < part.Count; i++)
        {
            if (held[i] >= FloodStepper.FirstWetHeld(part, i)) firstWet[i] = 0;
            if (part.StartCovered[i] >= part.Area[i]) full[i] = 0;
            deepest[i] = system.Pond(i, held[i]);
        }

        for (var b = 0; b < firstOver.Length; b++)
        {
            if (Over(b, held[part.BoxFrom[b]]) > 0) firstOver[b] = 0;
        }

        Tell(0, i => held[i]);
    }

    /// <summary>Looks at one step; the ground covered is still that of its start.</summary>
    public void Between(double from, double to, double[] before, FloodFlows first, double[] after, FloodFlows last)
    {
        var step = new Step(from, to, before, first, after, last);
        for (var i = 0; i < part.Count; i++)
        {
            if (double.IsNaN(firstWet[i]) && after[i] >= FloodStepper.FirstWetHeld(part, i)) firstWet[i] = Came(step, i, FloodStepper.FirstWetHeld(part, i));
            if (double.IsNaN(full[i]) && after[i] >= part.Full[i]) full[i] = Came(step, i, part.Full[i]);
            deepest[i] = Math.Max(deepest[i], system.Pond(i, after[i]));
        }

        for (var b = 0; b < firstOver.Length; b++)
        {
            most[b] = Math.Max(most[b], last.Box[b]);
            if (double.IsNaN(firstOver[b]) && Over(b, after[part.BoxFrom[b]]) > 0) firstOver[b] = WentOver(step, b);
        }

        while (telling > 0 && nextTold <= to) Tell(step);
    }

    public FloodStory Story(int check, double held) => new(part.Names[check], At(firstWet[check]), At(full[check]),
        WaterDepth.FromMeters(system.Pond(check, held)), Fraction.FromShare(system.CoveredAt(check, held) / part.Area[check]))
    {
        Depths = [.. told[check]],
        Deepest = WaterDepth.FromMeters(deepest[check]),
    };

    public BoxStory BoxStory(int box, string name, double passed) =>
        new(name, At(firstOver[box]), Volume.FromCubicMeters(passed), FlowRate.FromCubicMetersPerSecond(most[box]));

    private static double[] Never(int count)
    {
        var never = new double[count];
        Array.Fill(never, double.NaN);
        return never;
    }

    private static TimeSpan? At(double seconds) => double.IsNaN(seconds) ? null : TimeSpan.FromSeconds(seconds);

    private double Over(int box, double held) => part.Ground[part.BoxFrom[box]] + system.Pond(part.BoxFrom[box], held) - part.Crest[box];

    private void Tell(double at, Func<int, double> held)
    {
        nextTold = at + telling;
        if (telling <= 0) return;
        for (var i = 0; i < part.Count; i++)
        {
            var now = held(i);
            told[i].Add(new FloodDepth(TimeSpan.FromSeconds(at), WaterDepth.FromMeters(system.Pond(i, now)), Fraction.FromShare(system.CoveredAt(i, now) / part.Area[i])));
        }
    }

    private void Tell(Step step)
    {
        var share = (nextTold - step.From) / (step.To - step.From);
        Tell(nextTold, i => step.Held(i, share));
    }

    // Searched for apart from the walk over all checks, which goes on without a thing to clean up.
    private static double Came(Step step, int check, double level) => Find(step, s => step.Held(check, s) - level);

    private double WentOver(Step step, int box) => Find(step, s => Over(box, step.Held(part.BoxFrom[box], s)));

    // Below zero at the start, not at the end.
    private static double Find(Step step, Func<double, double> value)
    {
        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < 40; i++)
        {
            var middle = (low + high) / 2;
            if (value(middle) < 0) low = middle;
            else high = middle;
        }

        return step.From + (high * (step.To - step.From));
    }

    /// <summary>One step: what is held at its two ends, and how fast it grows there.</summary>
    private readonly record struct Step(double From, double To, double[] Before, FloodFlows First, double[] After, FloodFlows Last)
    {
        // Hermite's cubic: values and rates at both ends.
        public double Held(int check, double share)
        {
            double s = share, t = 1 - share, seconds = To - From;
            return (t * t * (1 + (2 * s)) * Before[check]) + (s * s * (1 + (2 * t)) * After[check]) + (s * t * seconds * ((t * First.Net[check]) - (s * Last.Net[check])));
        }
    }
}
