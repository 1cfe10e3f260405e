using System.Runtime.Intrinsics;
using Lanes = System.Runtime.Intrinsics.Vector512<float>;

namespace Watersown.Water.Flood;

/// <summary>
/// Carries sixteen fields through time with the steps of <see cref="FloodStepper"/>, one step for all, as long as the field with the
/// largest error allows. Rates are in single precision; what they move is taken from one check and given to the next in
/// double precision, the same number twice, so that every field's water adds up. Checks below all water are left out.
/// </summary>
internal sealed class FloodLaneStepper
{
    private readonly FloodOptions options;
    private readonly LaneCheck[] checks;
    private readonly Lanes[] wetted;
    private readonly Lanes[] passed;
    private LaneRates[] first;
    private readonly LaneRates[] second;
    private readonly LaneRates[] third;
    private LaneRates[] last;
    private Wide[] after;
    private Wide[] held;
    private Lanes[] depth;
    private Lanes[] depthAfter;
    private int active;
    private double now;
    private double step;

    public FloodLaneStepper(FloodLanes lanes, FloodOptions options)
    {
        (Fields, this.options, checks) = (lanes, options, lanes.Checks);
        var rows = Fields.Rows;
        (first, second, third, last) = (new LaneRates[rows + 1], new LaneRates[rows + 1], new LaneRates[rows + 1], new LaneRates[rows + 1]);
        (held, after, depth, depthAfter) = (new Wide[rows], new Wide[rows], new Lanes[rows + 1], new Lanes[rows + 1]);
        (wetted, passed) = (new Lanes[rows], new Lanes[rows]);
        Passed = new Wide[rows];
        Marks = new FloodLaneMarks(lanes);
    }

    public FloodLanes Fields { get; }

    public FloodLaneMarks Marks { get; }

    /// <summary>Held now, m³; behind a field's last check what has left it.</summary>
    public Wide[] Held => held;

    /// <summary>Held now, spread over each check, m.</summary>
    public Lanes[] Depth => depth;

    /// <summary>Over the boards below each check so far, m³.</summary>
    public Wide[] Passed { get; }

    public Wide In { get; private set; }

    public Wide Rain { get; private set; }

    public Wide Lost { get; private set; }

    /// <summary>The part of it that the ground took.</summary>
    public Wide Seeped { get; private set; }

    public int Steps { get; private set; }

    /// <summary>Runs the lanes from their start.</summary>
    public void Run(double end)
    {
        Start();
        var (next, changes) = (0, Fields.Changes);
        while (now < end)
        {
            while (next < changes.Count && changes[next].Change.At <= now) Fields.Apply(changes[next].Lane, changes[next++].Change);
            Reach();
            Stretch(next < changes.Count ? Math.Min(end, changes[next].Change.At) : end);
        }
    }

    private void Start()
    {
        foreach (var rates in (LaneRates[][])[first, second, third, last]) Array.Clear(rates);
        Array.Clear(depthAfter);
        Array.Clear(after);
        Array.Clear(Passed);
        (now, step, active, Steps) = (0, 60, 0, 0);
        (In, Rain, Lost, Seeped) = (default, default, default, default);
        Fields.Held.CopyTo(held, 0);
        for (var i = 0; i < held.Length; i++) depth[i] = held[i].Narrow() * checks[i].PerArea;
        Marks.Start(depth);
    }

    // Down to the check that may get wet next, and the box below it.
    private void Reach()
    {
        var least = active;
        for (var i = held.Length - 1; i >= least; i--)
        {
            if (!held[i].IsZero || !checks[i].Poured.IsZero)
            {
                active = Math.Max(active, Math.Min(i + 2, Fields.Rows));
                return;
            }
        }
    }

    // Nothing changes from outside until its end.
    private void Stretch(double end)
    {
        Rates(depth, first, 0, first);
        step = Math.Min(step, 600);
        while (now < end)
        {
            var rest = end - now;
            var seconds = Math.Min(Math.Min(step, options.StepMost.TotalSeconds), rest);
            // A stub at the end costs as much as a step.
            if (rest - seconds < 0.1 * seconds) seconds = rest;
            var error = Try(seconds) / options.StepError.Meters;
            if (error > 1 && seconds > 0.01)
            {
                step = seconds * Math.Max(0.2, 0.85 * Math.Cbrt(1 / error));
                continue;
            }

            Take(seconds, seconds == rest ? end : now + seconds);
            step = seconds * Math.Clamp(0.85 * Math.Cbrt(1 / Math.Max(error, 1e-6)), 0.3, 4);
        }
    }

    // Rates after some seconds at a slope.
    private void Rates(Lanes[] at, LaneRates[] slope, float seconds, LaneRates[] rates)
    {
        var time = Vector512.Create(seconds);
        var pond = checks[0].Pond(at[0] + (slope[0].Net * time), out var wet);
        var comes = Lanes.Zero;
        for (var i = 0; i < active; i++)
        {
            ref var check = ref checks[i];
            var below = checks[i + 1].Pond(at[i + 1] + (slope[i + 1].Net * time), out var wetBelow);
            var goes = LaneFlow.At(pond - check.Boards, below - check.BoardsBelow, in check.Box);
            rates[i] = new LaneRates(check.Given + ((comes - goes) * check.PerArea) - (check.Loss * wet), goes, wet);
            (comes, pond, wet) = (goes, below, wetBelow);
        }
    }

    // Leaves the state after the step, and its rates in the last place; tells the worst error, m over a whole check.
    private double Try(double seconds)
    {
        var time = Vector512.Create((float)seconds);
        Rates(depth, first, (float)(seconds * 0.5), second);
        Rates(depth, second, (float)(seconds * 0.75), third);
        Move(seconds);
        Rates(depthAfter, first, 0, last);
        var worst = Lanes.Zero;
        for (var i = 0; i < active; i++)
        {
            var error = (first[i].Net * (-5f / 72)) + (second[i].Net * (1f / 12)) + (third[i].Net * (1f / 9)) - (last[i].Net * (1f / 8));
            worst = Vector512.MaxNative(worst, Vector512.Abs(error));
        }

        worst *= time;
        var most = 0f;
        for (var lane = 0; lane < FloodLanes.Count; lane++) most = Math.Max(most, worst[lane]);
        return most;
    }

    private void Move(double seconds)
    {
        float a = (float)(seconds * (2.0 / 9)), b = (float)(seconds / 3), c = (float)(seconds * (4.0 / 9));
        var time = Wide.Of(seconds);
        var comes = default(Wide);
        for (var i = 0; i < active; i++)
        {
            ref var check = ref checks[i];
            ref readonly LaneRates x = ref first[i], y = ref second[i], z = ref third[i];
            passed[i] = (x.Box * a) + (y.Box * b) + (z.Box * c);
            wetted[i] = (x.Wet * a) + (y.Wet * b) + (z.Wet * c);
            var goes = Wide.Of(passed[i]);
            after[i] = held[i] + comes - goes + (check.Poured * time) - (check.Losing * Wide.Of(wetted[i]));
            depthAfter[i] = after[i].Narrow() * check.PerArea;
            comes = goes;
        }

        if (active >= held.Length) return;
        after[active] = held[active] + comes;
        depthAfter[active] = after[active].Narrow() * checks[active].PerArea;
    }

    private void Take(double seconds, double then)
    {
        var time = Wide.Of(seconds);
        (In, Rain) = (In + (Fields.In * time), Rain + (Fields.Rain * time));
        var (lost, seeped) = (Lost, Seeped);
        for (var i = 0; i < active; i++)
        {
            var wet = Wide.Of(wetted[i]);
            lost += checks[i].Losing * wet;
            seeped += checks[i].Seeping * wet;
            Passed[i] += Wide.Of(passed[i]);
        }

        (Lost, Seeped) = (lost, seeped);
        Marks.Between(now, then, active, depth, first, depthAfter, last);
        for (var i = 0; i < active; i++) checks[i].Covered = checks[i].CoveredAt(depthAfter[i]);
        (held, after) = (after, held);
        (depth, depthAfter) = (depthAfter, depth);
        // The last rates are the next step's first: the ground covered is the same.
        (first, last) = (last, first);
        now = then;
        Steps++;
        Reach();
    }
}
