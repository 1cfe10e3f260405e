using Watersown.Hydraulics;
using Watersown.Water.Flood;

namespace Watersown.Bench;

/// <summary>
/// The baseline: checks in a row by Runge and Kutta's fourth order, one field, one number at a time, powers for the weirs, nothing
/// allocated on the way. Written from the laws alone, in bare numbers.
/// </summary>
internal sealed class PlainStep
{
    private readonly int n;
    private readonly double[] area, takeUp, full, loss, boards, drop, width, ends, covered, trial;
    private readonly double[][] slopes;
    private readonly (double From, double Flow)[] inflow;

    public PlainStep(FloodNetwork network)
    {
        n = network.Checks.Length;
        area = [.. network.Checks.Select(c => c.Area.SquareMeters)];
        takeUp = [.. network.Checks.Select(c => c.TakeUp.Meters)];
        full = [.. network.Checks.Select(c => c.TakeUp.Meters + c.Front.Meters)];
        loss = [.. network.Checks.Select(c => c.Percolation.MetersPerSecond + network.Air[0].Evaporation.MetersPerSecond)];
        boards = [.. network.Boxes.Select(b => b.Boards.Meters)];
        drop = [.. network.Checks.Select((c, i) => i + 1 < n ? c.Ground.Meters - network.Checks[i + 1].Ground.Meters : 1e6)];
        width = [.. network.Boxes.Select(b => b.Width.Meters)];
        ends = [.. network.Boxes.Select(b => b.Kind == WeirKind.Contracted ? 0.2 : 0)];
        covered = [.. network.Checks.Select(c => c.Covered.Share)];
        trial = new double[n];
        slopes = [new double[n], new double[n], new double[n], new double[n]];
        inflow = [.. network.Inlets[0].Flow.Select(f => (f.From.TotalSeconds, f.Flow.CubicMetersPerSecond))];
        Held = [.. network.Checks.Select((c, i) => covered[i] * (c.TakeUp.Meters + c.Depth.Meters))];
    }

    /// <summary>Held by each check, spread over it, m.</summary>
    public double[] Held { get; }

    /// <summary>Pond of a check, spread over it, m.</summary>
    public double Pond(int i) => Pond(i, Held[i], out _);

    /// <summary>Steps of one length until the end.</summary>
    public void Run(double end, double step)
    {
        var steps = (int)Math.Round(end / step);
        for (var k = 0; k < steps; k++)
        {
            var flow = Array.FindLast(inflow, f => f.From <= (k * step) + 1e-6).Flow;
            Rates(Held, flow, slopes[0]);
            Rates(Moved(slopes[0], step / 2), flow, slopes[1]);
            Rates(Moved(slopes[1], step / 2), flow, slopes[2]);
            Rates(Moved(slopes[2], step), flow, slopes[3]);
            for (var i = 0; i < n; i++)
            {
                Held[i] += step / 6 * (slopes[0][i] + (2 * slopes[1][i]) + (2 * slopes[2][i]) + slopes[3][i]);
                covered[i] = Math.Max(covered[i], Math.Min(1, Held[i] / full[i]));
            }
        }
    }

    /// <summary>Slopes of what is held, m/s.</summary>
    public void Rates(double[] held, double flow, double[] slope)
    {
        var comes = flow;
        var pond = Pond(0, held[0], out var wet);
        for (var i = 0; i < n; i++)
        {
            var (below, wetBelow) = (0.0, 0.0);
            if (i + 1 < n) below = Pond(i + 1, held[i + 1], out wetBelow);
            var goes = Over(i, pond - boards[i], below - drop[i] - boards[i]);
            slope[i] = ((comes - goes) / area[i]) - (loss[i] * wet);
            (comes, pond, wet) = (goes, below, wetBelow);
        }
    }

    private double[] Moved(double[] slope, double step)
    {
        for (var i = 0; i < n; i++) trial[i] = Held[i] + (slope[i] * step);
        return trial;
    }

    private double Pond(int i, double held, out double wet)
    {
        var ground = Math.Max(covered[i], Math.Clamp(held / full[i], 0, 1));
        var pond = Math.Max(0, held - (takeUp[i] * ground));
        wet = Math.Min(ground, pond / 0.001);
        return pond;
    }

    // Francis with Villemonte's drowning, a straight line over the last millimeter.
    private double Over(int i, double above, double below)
    {
        if (above <= 0 && below <= 0) return 0;
        if (below > above) return -Over(i, below, above);
        var free = 3.33 * Math.Sqrt(0.3048) * (width[i] - (ends[i] * above)) * Math.Pow(above, 1.5);
        if (below <= 0) return free;
        var still = Math.Min(0.001, above);
        var (ratio, share) = above - below >= still ? (below / above, 1.0) : ((above - still) / above, (above - below) / still);
        return free * share * Math.Pow(1 - Math.Pow(ratio, 1.5), 0.385);
    }
}
