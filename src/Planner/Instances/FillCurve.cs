using Watersown.Water;

namespace Watersown.Planner.Instances;

/// <summary>
/// Steps that a field takes to fill, against the flow it is given. The true curve falls and flattens; straight lines
/// between points on it lie above it, so a plan made with them is never too hopeful.
/// </summary>
internal sealed class FillCurve
{
    private const int Points = 14;

    private FillCurve(ImmutableArray<(int Flow, int Steps)> points) => this.points = points;

    private readonly ImmutableArray<(int Flow, int Steps)> points;

    public int LeastFlow => points[0].Flow;

    public int MostFlow => points[^1].Flow;

    public int LeastSteps => points[^1].Steps;

    public int MostSteps => points[0].Steps;

    /// <summary>The straight pieces, as (first point, second point).</summary>
    public IEnumerable<((int Flow, int Steps) Left, (int Flow, int Steps) Right)> Pieces
    {
        get
        {
            for (var i = 0; i + 1 < points.Length; i++) yield return (points[i], points[i + 1]);
        }
    }

    /// <summary>Steps to fill at a flow, all pieces obeyed; flow is cut to the curve's range.</summary>
    public int Steps(int flow)
    {
        flow = Math.Min(flow, MostFlow);
        var steps = LeastSteps;
        foreach (var (left, right) in Pieces)
        {
            // steps × (f2 − f1) ≥ s1 × (f2 − f1) + (s2 − s1)(flow − f1)
            long width = right.Flow - left.Flow;
            var need = (left.Steps * width) + ((long)(right.Steps - left.Steps) * (flow - left.Flow));
            steps = Math.Max(steps, (int)Math.Ceiling(need / (double)width));
        }

        return steps;
    }

    /// <summary>The curve of a job up to a largest flow, or nothing where even that flow cannot fill it in time.</summary>
    /// <param name="job">Land, fill and loss of the field.</param>
    /// <param name="most">Largest flow, in hundredths of a cubic foot per second.</param>
    /// <param name="horizon">Longest time that is of use, in steps.</param>
    public static FillCurve? Of(FloodJob job, int most, int horizon)
    {
        if (Steps(job, most) is not { } fastest || fastest > horizon) return null;
        var least = LeastUseful(job, most, horizon);
        var made = ImmutableArray.CreateBuilder<(int, int)>();
        for (var i = 0; i < Points && least < most; i++)
        {
            // Points crowd where the curve bends: near the least flow.
            var share = Math.Pow(i / (double)(Points - 1), 2);
            var flow = least + (int)Math.Round((most - least) * share);
            if (made.Count > 0 && made[^1].Item1 >= flow) continue;
            made.Add((flow, Steps(job, flow)!.Value));
        }

        if (made.Count == 0) made.Add((most, fastest));
        return new FillCurve(made.ToImmutable());
    }

    private static int LeastUseful(FloodJob job, int most, int horizon)
    {
        // Slower than three weeks is never planned: the head check would be lost long before.
        var longest = Math.Min(horizon, 21 * SeasonClock.PerDay);
        int low = 1, high = most;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (Steps(job, middle) is { } steps && steps <= longest) high = middle;
            else low = middle + 1;
        }

        return high;
    }

    private static int? Steps(FloodJob job, int flow) =>
        Ponding.FillTime(job, FlowRate.FromCubicFeetPerSecond(flow / 100.0)) is { } time && time.TotalDays < 10000 ? Math.Max(1, SeasonClock.Steps(time)) : null;
}
