using System.Runtime.Intrinsics;
using Lanes = System.Runtime.Intrinsics.Vector512<float>;

namespace Watersown.Water.Flood;

/// <summary>
/// Keeps what happened when in sixteen fields, as <see cref="FloodMarks"/> does in one: what has not happened yet waits for a level that
/// is compared for all fields at once; once it has, the level is out of reach.
/// </summary>
internal sealed class FloodLaneMarks
{
    private readonly FloodLanes lanes;
    private readonly Happening wet;
    private readonly Happening full;
    private readonly Happening over;
    private readonly Lanes[] deepest;
    private readonly Lanes[] most;

    public FloodLaneMarks(FloodLanes lanes)
    {
        this.lanes = lanes;
        (wet, full, over) = (new Happening(lanes.Rows), new Happening(lanes.Rows), new Happening(lanes.Rows));
        (deepest, most) = (new Lanes[lanes.Rows], new Lanes[lanes.Rows]);
    }

    public TimeSpan? FirstWet(int check, int lane) => wet.At(check, lane);

    public TimeSpan? Full(int check, int lane) => full.At(check, lane);

    public TimeSpan? FirstOver(int check, int lane) => over.At(check, lane);

    public double Deepest(int check, int lane) => deepest[check][lane];

    public double Most(int check, int lane) => most[check][lane];

    public void Start(Lanes[] held)
    {
        for (var i = 0; i < lanes.Rows; i++)
        {
            ref var check = ref lanes.Checks[i];
            var all = Lanes.One / check.PerFull;
            full.Wait(i, all);
            wet.Wait(i, all * Vector512.Create((float)FloodStepper.FirstWetShare));
            over.Wait(i, Lanes.Zero);
            deepest[i] = check.Pond(held[i], out _);
            most[i] = Lanes.Zero;
            for (var lane = 0; lane < FloodLanes.Count; lane++)
            {
                if (held[i][lane] >= wet.Level(i)[lane]) wet.Happen(i, lane, 0);
                if (check.Covered[lane] >= 1) full.Happen(i, lane, 0);
                if (deepest[i][lane] > check.Boards[lane]) over.Happen(i, lane, 0);
            }
        }
    }

    /// <summary>Looks at one step; the ground covered is still that of its start.</summary>
    public void Between(double from, double to, int active, Lanes[] before, LaneRates[] first, Lanes[] after, LaneRates[] last)
    {
        for (var i = 0; i < active; i++)
        {
            ref var check = ref lanes.Checks[i];
            var pond = check.Pond(after[i], out _);
            deepest[i] = Vector512.Max(deepest[i], pond);
            most[i] = Vector512.Max(most[i], last[i].Box);
            var step = new LaneStep(from, to, before[i], first[i].Net, after[i], last[i].Net);
            if (Vector512.GreaterThanOrEqualAny(after[i], wet.Level(i))) wet.Find(i, step, after[i], wet.Level(i), default);
            if (Vector512.GreaterThanOrEqualAny(after[i], full.Level(i))) full.Find(i, step, after[i], full.Level(i), default);
            if (Vector512.GreaterThanAny(pond, check.Boards + over.Level(i))) over.Find(i, step, pond, check.Boards + over.Level(i), check);
        }
    }

    /// <summary>One kind of thing that happens once to every check of sixteen fields.</summary>
    private sealed class Happening(int rows)
    {
        private readonly Lanes[] level = new Lanes[rows];
        private readonly double[] at = new double[rows * FloodLanes.Count];

        public Lanes Level(int check) => level[check];

        public TimeSpan? At(int check, int lane) => at[(check * FloodLanes.Count) + lane] is var seconds && double.IsNaN(seconds) ? null : TimeSpan.FromSeconds(seconds);

        public void Wait(int check, Lanes until)
        {
            level[check] = until;
            Array.Fill(at, double.NaN, check * FloodLanes.Count, FloodLanes.Count);
        }

        public void Happen(int check, int lane, double seconds)
        {
            at[(check * FloodLanes.Count) + lane] = seconds;
            level[check] = level[check].WithElement(lane, float.PositiveInfinity);
        }

        /// <summary>Finds the moment in every field in which the step came to its level.</summary>
        public void Find(int check, in LaneStep step, Lanes after, Lanes until, LaneCheck ground)
        {
            for (var lane = 0; lane < FloodLanes.Count; lane++)
            {
                if (after[lane] >= until[lane]) Happen(check, lane, step.Find(lane, until[lane], new LaneGround(ground, lane)));
            }
        }
    }
}
