using Watersown.Water.Flood;

namespace Watersown.Water.Learning;

/// <summary>
/// The closed form check by check: each check keeps what comes until it is covered, then passes on what is over. Between two
/// happenings every check's ground follows V dA/dt = S − m A exactly, so nothing is stepped through and a run takes
/// microseconds. Boxes hold nothing back: boards are let down while a field fills, and V is what it takes with them.
/// Where less comes than is lost, the pond falls and the ground stays wet.
/// </summary>
internal sealed class FloodAdvance
{
    private readonly double[] area;
    private readonly bool[] wetAtStart;
    private readonly (double At, int Check, double Flow)[] changes;
    private readonly (double At, int Check)[] samples;
    private readonly double horizon;
    private readonly double[] held;
    private readonly double[] covered;
    private readonly double[] inlet;
    private readonly double[] comes;
    private double takeUp;
    private double fill;
    private double loss;

    /// <summary>A field.</summary>
    /// <param name="network">Checks from the head, their inlets, and which are covered.</param>
    /// <param name="samples">Moments in order and the check whose depth is asked; below zero the whole field.</param>
    /// <param name="horizon">Longer than this, s, is never.</param>
    public FloodAdvance(FloodNetwork network, (double At, int Check)[] samples, double horizon)
    {
        (this.samples, this.horizon) = (samples, horizon);
        area = [.. network.Checks.Select(c => c.Area.SquareMeters)];
        wetAtStart = [.. network.Checks.Select(c => c.Covered.Share >= 1)];
        changes = [.. network.Inlets.SelectMany(i => i.Flow.Select(f => (f.From.TotalSeconds, i.To, f.Flow.CubicMetersPerSecond))).OrderBy(c => c.TotalSeconds)];
        (held, covered, inlet, comes) = (new double[area.Length], new double[area.Length], new double[area.Length], new double[area.Length]);
        (FirstWet, Full, Depths) = (new double[area.Length], new double[area.Length], new double[samples.Length]);
    }

    /// <summary>s; infinite where never, zero where it was so at the start.</summary>
    public double[] FirstWet { get; }

    /// <summary>s; infinite where never, zero where it was so at the start.</summary>
    public double[] Full { get; }

    /// <summary>Of the samples, m.</summary>
    public double[] Depths { get; }

    /// <summary>Runs it.</summary>
    /// <param name="take">Drunk by ground as it gets wet, m.</param>
    /// <param name="front">Pond at which ground is covered, m.</param>
    /// <param name="lost">From covered ground, m/s.</param>
    /// <param name="gain">What comes over what was told to come.</param>
    public void Run(double take, double front, double lost, double gain)
    {
        (takeUp, fill, loss) = (take, take + front, lost);
        Reset();
        var (now, nextChange, nextSample) = (0.0, 0, 0);
        for (var turn = 0; turn < 100 + (8 * area.Length) + changes.Length + samples.Length; turn++)
        {
            while (nextChange < changes.Length && changes[nextChange].At <= now)
            {
                inlet[changes[nextChange].Check] = changes[nextChange].Flow * gain;
                nextChange++;
            }

            while (nextSample < samples.Length && samples[nextSample].At <= now)
            {
                Depths[nextSample] = DepthNow(samples[nextSample].Check, front);
                nextSample++;
            }

            Spread();
            Wetten(now);
            var next = Math.Min(nextChange < changes.Length ? changes[nextChange].At : double.PositiveInfinity, nextSample < samples.Length ? samples[nextSample].At : double.PositiveInfinity);
            var ending = -1;
            for (var i = 0; i < area.Length; i++)
            {
                if (now + ToNext(i) is var at && at < next) (next, ending) = (at, i);
            }

            if (next > horizon) break;
            for (var i = 0; i < area.Length; i++) Let(i, next - now, ends: i == ending);
            now = next;
            for (var i = 0; i < area.Length; i++)
            {
                if (covered[i] >= area[i] && double.IsPositiveInfinity(Full[i])) Full[i] = now;
            }
        }

        for (; nextSample < samples.Length; nextSample++) Depths[nextSample] = DepthNow(samples[nextSample].Check, front);
    }

    private void Reset()
    {
        Array.Clear(inlet);
        for (var i = 0; i < area.Length; i++)
        {
            (covered[i], held[i]) = wetAtStart[i] ? (area[i], fill * area[i]) : (0, 0);
            FirstWet[i] = Full[i] = wetAtStart[i] ? 0 : double.PositiveInfinity;
        }
    }

    private bool Passes(int i) => covered[i] >= area[i] && held[i] >= fill * area[i] && comes[i] >= loss * area[i];

    // From the head to the tail; what runs over the last check while others are dry is let in at the head instead.
    private void Spread()
    {
        if (Down(0) is var over && over > 0 && Array.Exists(Full, double.IsPositiveInfinity)) Down(over);
    }

    private double Down(double more)
    {
        var passed = more;
        for (var i = 0; i < area.Length; i++)
        {
            comes[i] = inlet[i] + passed;
            passed = Passes(i) ? comes[i] - (loss * area[i]) : 0;
        }

        return passed;
    }

    private void Wetten(double now)
    {
        for (var i = 0; i < area.Length; i++)
        {
            if (comes[i] > 0 && double.IsPositiveInfinity(FirstWet[i])) FirstWet[i] = now;
        }
    }

    // The front moves: all covered ground has the front's depth, and more comes than it loses.
    private bool Advances(int i) => covered[i] < area[i] && held[i] >= fill * covered[i] && comes[i] > loss * covered[i];

    private double ToNext(int i)
    {
        if (Advances(i))
        {
            // (V / m) ln((S − m A0) / (S − m A1)), true to the last digits where hardly anything is lost.
            var left = comes[i] - (loss * covered[i]);
            var rest = 1 - (loss * (area[i] - covered[i]) / left);
            if (rest <= 0) return double.PositiveInfinity;
            return (area[i] - covered[i]) * fill / left * (rest >= 1 ? 1 : -Math.Log(rest) / (1 - rest));
        }

        var net = comes[i] - (loss * covered[i]);
        if (net > 0) return held[i] >= fill * covered[i] ? double.PositiveInfinity : ((fill * covered[i]) - held[i]) / net;
        return net < 0 && held[i] > takeUp * covered[i] ? (held[i] - (takeUp * covered[i])) / -net : double.PositiveInfinity;
    }

    private void Let(int i, double seconds, bool ends)
    {
        if (Passes(i)) return;
        if (Advances(i))
        {
            var x = loss * seconds / fill;
            var slowed = x < 1e-6 ? 1 - (x / 2) : (1 - Math.Exp(-x)) / x;
            covered[i] = ends ? area[i] : Math.Min(area[i], covered[i] + ((comes[i] - (loss * covered[i])) * seconds / fill * slowed));
            held[i] = fill * covered[i];
            return;
        }

        var (net, floor, top) = (comes[i] - (loss * covered[i]), takeUp * covered[i], fill * covered[i]);
        held[i] = ends ? (net > 0 ? top : floor) : Math.Clamp(held[i] + (net * seconds), floor, top);
    }

    private double DepthNow(int check, double front)
    {
        var (pond, ground) = (0.0, 0.0);
        for (var i = check < 0 ? 0 : check; i <= (check < 0 ? area.Length - 1 : check); i++)
        {
            pond += held[i] - (takeUp * covered[i]);
            ground += covered[i];
        }

        // Whoever reads a depth stands in water: where the run has none yet, it is the front's.
        return ground <= 0 ? front : Math.Max(0, pond / ground);
    }
}
