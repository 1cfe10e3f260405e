using Watersown.Planner;
using Watersown.Records.Land;
using Watersown.Schedule;

namespace Watersown.Bench;

/// <summary>Cost and bound over time, against the farm's own long run.</summary>
internal static class Quality
{
    private static readonly int[] Marks = [1, 2, 5, 10, 20, 60, 120, 240];

    public static void Measure(string farm, int seconds)
    {
        var state = OpenFarm.Run(farm).Value;
        var trail = new List<PlanProgress>();
        var plan = SeasonPlanner.Plan(state, new PlanOptions { Budget = TimeSpan.FromSeconds(seconds) }, trail.Add);
        var best = plan.Cost.Total.Amount;
        Console.WriteLine($"quality baseline, the farm's own {seconds} s run: ${best:0} bound ${plan.Bound.Amount:0} gap {plan.Gap.Percent:0.0} %");
        foreach (var mark in Marks.Where(m => m <= seconds))
        {
            var at = trail.LastOrDefault(p => p.Elapsed.TotalSeconds <= mark);
            if (at is not null) Console.WriteLine($"quality {mark,4} s: ${at.Cost.Amount:0} ({(at.Cost.Amount - best) / best:P2} over the baseline), bound ${at.Bound.Amount:0}, gap {at.Gap.Percent:0.0} %");
        }
    }
}
