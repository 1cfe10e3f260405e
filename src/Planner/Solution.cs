using Watersown.Planner.Instances;
using Watersown.Schedule;

namespace Watersown.Planner;

/// <summary>A plan in whole numbers, before it is written out in the grower's terms.</summary>
internal sealed record Solution(ImmutableArray<FieldSolution> Fields, ImmutableArray<ImmutableArray<int>> Orders);

/// <summary>One field of a plan in whole numbers.</summary>
internal sealed record FieldSolution
{
    /// <summary>Sown within the plan.</summary>
    public required bool Sown { get; init; }

    /// <summary>Starts of the ground work on the working axis.</summary>
    public ImmutableArray<int> Works { get; init; } = [];

    /// <summary>Ground and water are planned; true for every field that is sown or filling.</summary>
    public required bool Flooded { get; init; }

    /// <summary>First water: below zero where the field is wet already.</summary>
    public int FillStart { get; init; }

    public int FillEnd { get; init; }

    public int Flow { get; init; }

    public int Sow { get; init; }

    public int Plane { get; init; }

    /// <summary>Day of soak of a batch of its own; −1 where an existing batch is used.</summary>
    public int SoakDay { get; init; } = -1;

    public int Batch { get; init; } = -1;
}

/// <summary>What a whole-number plan costs, in thousandths of a dollar, by the farm's prices.</summary>
internal sealed record SolutionCost(long Delay, long HeadAge, long Idle, long SeedLost, long Ferry, long Unsown)
{
    public long Total => Delay + HeadAge + Idle + SeedLost + Ferry + Unsown;

    public static SolutionCost Of(Instance instance, Solution solution)
    {
        long delay = 0, ferry = 0, unsown = 0;
        var headAge = Money.Zero;
        foreach (var field in instance.Fields)
        {
            var planned = solution.Fields[field.Index];
            if (!planned.Sown)
            {
                unsown += field.UnsownCost;
                continue;
            }

            delay += field.DelayCost[instance.Clock.DayOf(planned.Sow)];
            ferry += field.FerryCost[planned.Plane];
            var age = TimeSpan.FromMinutes((planned.Sow - planned.FillStart) * (double)SeasonClock.Minutes);
            headAge += DelayCost.HeadAge(instance.State.Prices, Area.FromAcres(field.Acres), age);
        }

        return new SolutionCost(delay, (long)Math.Round(headAge.Amount * 1000), (long)Math.Round(IdleFlow(instance, solution) * instance.IdleCost), LostSeed(instance, solution), ferry, unsown);
    }

    /// <summary>Ordered flow × steps that no field takes up.</summary>
    private static double IdleFlow(Instance instance, Solution solution)
    {
        double ordered = 0;
        var classes = new HashSet<int>();
        for (var s = 0; s < instance.Sources.Length; s++)
        {
            if (instance.Sources[s].Periods.IsEmpty) continue;
            ordered += instance.Sources[s].Stretches.Sum(x => Math.Min(solution.Orders[s][x.Period], x.Most) * (double)x.Steps);
            foreach (var c in Enumerable.Range(0, instance.Classes.Length).Where(c => instance.Classes[c].Sources.Contains(s))) classes.Add(c);
        }

        var used = classes.Order().Sum(c => instance.Classes[c].BaseHold * (double)instance.Clock.Horizon);
        foreach (var field in instance.Fields.Where(f => classes.Contains(f.Class) && f.Need != WaterNeed.None))
        {
            var planned = solution.Fields[field.Index];
            if (!planned.Flooded) continue;
            used += (planned.Flow - field.HoldNow) * (double)(planned.FillEnd - Math.Max(0, planned.FillStart));
            used += (field.Hold - field.HoldNow) * (double)(instance.Clock.Horizon - planned.FillEnd);
        }

        return Math.Max(0, ordered - used);
    }

    private static long LostSeed(Instance instance, Solution solution)
    {
        double lost = 0;
        for (var b = 0; b < instance.Batches.Length; b++)
        {
            var batch = instance.Batches[b];
            var user = instance.Fields.FirstOrDefault(f => solution.Fields[f.Index] is { Sown: true } planned && planned.Batch == b);
            if (user is not null) lost += Math.Max(0, batch.DryPounds - user.DryPounds) * batch.CostPerPound;
            else if (!batch.CanBeCalledOff) lost += batch.DryPounds * batch.CostPerPound;
        }

        return (long)Math.Round(lost * 1000);
    }
}
