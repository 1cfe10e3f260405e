using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>
/// Where the gate was likely open, on a track that does not say: over the field, straight along a heading of the job, at its
/// height and speed. A guess, and told as one.
/// </summary>
internal sealed class GateGuess
{
    // A step that a trembling receiver turns aside is judged by this much of the way about it.
    private const double Window = 40;
    private const double Aside = 50;

    // So much of crooked way does not end a run that goes on as before.
    private const double Bridge = 20;

    private const double LeastSpeed = 0.5;
    private const double MostSpeed = 1.6;
    private const double HigherBy = 25;

    private readonly ImmutableArray<FlownFix> fixes;
    private readonly SwathGround ground;
    private readonly double[] way;
    private readonly ImmutableArray<double> axes;
    private readonly (double Least, double Most) speeds;
    private readonly double highest;

    public GateGuess(ImmutableArray<FlownFix> fixes, SwathGround ground)
    {
        (this.fixes, this.ground) = (fixes, ground);
        way = new double[fixes.Length];
        for (var i = 1; i < fixes.Length; i++) way[i] = way[i - 1] + Step(i);
        var over = OverField();
        axes = Headings.Axes(over.Select(i => (Headings.Of(fixes[i - 1].At, fixes[i].At), Step(i))));
        var along = over.Where(i => axes.Any(a => Headings.Apart(a, Headings.Of(fixes[i - 1].At, fixes[i].At)) <= Headings.Along)).ToList();
        var usual = At(along.Select(Speed).Where(double.IsFinite), 0.5);
        speeds = double.IsNaN(usual) ? (0, double.PositiveInfinity) : (LeastSpeed * usual, MostSpeed * usual);
        // Work is low: the lower quarter is not lifted by ferries over the field.
        highest = At(along.Select(i => (double)fixes[i].Height).Where(double.IsFinite), 0.25) + HigherBy;
    }

    public ImmutableArray<FlownRun> Runs()
    {
        var runs = new RunBuilder();
        var (crooked, direction, on) = (0.0, double.NaN, false);
        for (var i = 1; i < fixes.Length; i++)
        {
            var step = Step(i);
            if (fixes[i].Break != TrackBreak.None) (crooked, on) = (0, false);
            else if (step == 0) continue;
            else if (!IsWork(i)) crooked += step;
            else
            {
                var now = Headings.Of(fixes[i - 1].At, fixes[i].At);
                on &= crooked <= Bridge && Math.Abs(Math.IEEERemainder(now - direction, 360)) < 90;
                on = Sow(runs, i, on);
                (crooked, direction) = (0, now);
            }

            if (!on) runs.Close();
        }

        return [.. runs.Runs.Where(r => r.Length >= ground.Swath / 2)];
    }

    // Whether the gate is still open at the end of the step.
    private bool Sow(RunBuilder runs, int i, bool on)
    {
        var (from, to) = (fixes[i - 1], fixes[i]);
        var open = false;
        foreach (var (start, end) in ground.Sown(from.At, to.At))
        {
            if (start > 0 || !on) runs.Close();
            runs.To(EdgeBands.Between(from.At, to.At, start), from.Seconds + (start * (to.Seconds - from.Seconds)));
            runs.To(EdgeBands.Between(from.At, to.At, end), from.Seconds + (end * (to.Seconds - from.Seconds)));
            open = end >= 1;
        }

        return open;
    }

    private bool IsWork(int i)
    {
        if (fixes[i].Height > highest) return false;
        var speed = Speed(i);
        if (speed < speeds.Least || speed > speeds.Most) return false;
        var direction = Headings.Of(fixes[i - 1].At, fixes[i].At);
        foreach (var axis in axes)
        {
            var apart = Headings.Apart(axis, direction);
            if (apart <= Headings.Along || (apart <= Aside && StraightAbout(i, axis))) return true;
        }

        return false;
    }

    private bool StraightAbout(int i, double axis)
    {
        var (before, after) = (i - 1, i);
        while (before > 0 && fixes[before].Break == TrackBreak.None && way[i] - way[before] < Window) before--;
        while (after + 1 < fixes.Length && fixes[after + 1].Break == TrackBreak.None && way[after] - way[i - 1] < Window) after++;
        return Goes(before, after) || Goes(before, i) || Goes(i - 1, after);

        bool Goes(int from, int to) => way[to] - way[from] >= Window && Headings.Apart(axis, Headings.Of(fixes[from].At, fixes[to].At)) <= Headings.Along;
    }

    private List<int> OverField()
    {
        var over = new List<int>();
        for (var i = 1; i < fixes.Length; i++)
        {
            if (fixes[i].Break == TrackBreak.None && Step(i) is > 0 and var step && ground.Over(fixes[i - 1].At, fixes[i].At) > step / 2) over.Add(i);
        }

        return over;
    }

    private double Step(int i) => Turn.Hypot(fixes[i].At.East - fixes[i - 1].At.East, fixes[i].At.North - fixes[i - 1].At.North);

    // By the clock; the receiver's own word where there is none.
    private double Speed(int i) => fixes[i].Seconds > fixes[i - 1].Seconds ? Step(i) / (fixes[i].Seconds - fixes[i - 1].Seconds) : fixes[i].Speed;

    private static double At(IEnumerable<double> values, double share)
    {
        var sorted = values.ToArray();
        Array.Sort(sorted);
        return sorted.Length == 0 ? double.NaN : sorted[(int)(share * (sorted.Length - 1))];
    }
}
