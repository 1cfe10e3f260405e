using Watersown.Planner.Decoding;
using Watersown.Planner.Instances;
using Watersown.Schedule;

namespace Watersown.Planner;

/// <summary>Plans a season from the farm as it stands: what should happen, when, by when it must be decided, and how far that is proved.</summary>
public static class SeasonPlanner
{
    /// <summary>
    /// The best plan found within the budget. A valid plan stands within milliseconds and only gets better; every plan is
    /// possible by the farm's own figures, and what cannot be done is said as a conflict instead of failing.
    /// </summary>
    /// <param name="state">The farm as it stands.</param>
    /// <param name="options">Budget, seed, repeatability.</param>
    /// <param name="progress">Told of each better plan and each better bound, from the searching threads, one at a time.</param>
    /// <param name="stop">Ends the search early with the best plan so far.</param>
    public static SeasonPlan Plan(SeasonState state, PlanOptions options, Action<PlanProgress>? progress = null, CancellationToken stop = default)
    {
        var instance = InstanceBuilder.Build(state);
        var search = new Search(instance, options, (told, _) => progress?.Invoke(told));
        var (found, bound) = search.Run(stop);
        var best = LateSoak.Apply(instance, LateAqua.Apply(instance, found));
        var plan = new PlanWriter(instance, best, bound, search.Elapsed).Write();
        plan = plan with { Conflicts = [.. Impossibles(instance, best), .. Conflicts.Of(plan)] };
        return plan with { Decisions = Decisions.Of(plan) };
    }

    private static IEnumerable<Conflict> Impossibles(Instance instance, Solution solution)
    {
        foreach (var field in instance.Fields.Where(f => !solution.Fields[f.Index].Sown))
        {
            var name = instance.State.Farm.Field(field.Code).Name;
            yield return new Conflict([field.Code], field.Impossible is { } why
                ? $"{name} ({field.Code}) is not sown in this plan: {why}."
                : FormattableString.Invariant($"{name} ({field.Code}), {field.Acres:0.#} ac, is not sown by {instance.State.Horizon:d MMM}: ground, water, seed and air do not meet on it in time."),
                "Look at the steps before it, add water or hours, or look further ahead.")
            { Kind = field.Impossible is null ? "date" : "water" };
        }
    }
}
