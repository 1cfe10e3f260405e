using Watersown.Planner;
using Watersown.Schedule;

namespace Watersown.Records.Schedule;

/// <summary>Step: plan the season from the farm as it stands.</summary>
public static class PlanSeason
{
    /// <summary>The plan; there always is one, with its conflicts, once the farm itself could be read.</summary>
    public static SeasonPlan Run(SeasonState state, PlanOptions options, Action<PlanProgress>? progress = null, CancellationToken stop = default) =>
        SeasonPlanner.Plan(state, options, progress, stop);
}
