using Watersown.Seed;

namespace Watersown.Schedule.Sheets;

/// <summary>When seed of the plan was, or will be, drained and how long it lasts.</summary>
public static class SeedTimes
{
    /// <summary>
    /// Last moment to sow the seed of a field: draining done, and then as long as the warmth of that day allows. None where
    /// neither the batch nor the plan says when it is drained.
    /// </summary>
    [Source(nameof(Sources.Arithmetic), "drained + draining time + usable time")]
    public static DateTimeOffset? UseBy(SeasonPlan plan, string field, string? code, SoakBatch? batch)
    {
        var state = plan.State;
        var done = batch?.Drained is { } off
            ? off + state.SoakRules.Drain
            : plan.Tasks.FirstOrDefault(t => t.Kind == PlanTaskKind.Drain && t.Field == field && (code is null || t.Batch == code))?.End;
        return done is { } ready ? ready + DrainedSeed.Usable(state, FarmTime.Day(state, ready)) : null;
    }

    /// <summary>The batch of a step; none for seed that has not been called yet, whatever name the plan gives it.</summary>
    [Source(nameof(Sources.FarmRecord), "by its code")]
    public static SoakBatch? BatchOf(SeasonPlan plan, PlanTask task) => plan.State.Batches.FirstOrDefault(b => b.Code == task.Batch);

    /// <summary>Last moment to sow a batch that is already off the water.</summary>
    [Source(nameof(Sources.Arithmetic), "drained + draining time + usable time")]
    public static DateTimeOffset? UseBy(SeasonState state, SoakBatch batch)
    {
        if (batch.Drained is not { } off) return null;
        var ready = off + state.SoakRules.Drain;
        return ready + DrainedSeed.Usable(state, FarmTime.Day(state, ready));
    }
}
