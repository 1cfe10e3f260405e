using Watersown.Schedule;

namespace Watersown.Season.Plans;

/// <summary>What became of a step between two plans.</summary>
public enum StepChange
{
    /// <summary>It starts at another time.</summary>
    Moved,

    /// <summary>It starts when it did, with other seed, or another amount, or from elsewhere.</summary>
    Altered,

    /// <summary>Only the newer plan has it.</summary>
    Added,

    /// <summary>Only the older plan has it, and its time had not come yet.</summary>
    Dropped,

    /// <summary>Only the older plan has it, and its time had come when the newer was made.</summary>
    Passed,
}

/// <summary>One step that two plans do not have alike.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Kind">Which step.</param>
/// <param name="Older">As the older plan has it; none where only the newer does.</param>
/// <param name="Newer">As the newer plan has it; none where only the older does.</param>
/// <param name="Change">What became of it.</param>
public sealed record StepDifference(string Field, PlanTaskKind Kind, PlanTask? Older, PlanTask? Newer, StepChange Change)
{
    /// <summary>How much later the newer plan has it; earlier below zero.</summary>
    public TimeSpan? Later => Newer?.Start - Older?.Start;
}

/// <summary>Which part of what a plan costs.</summary>
public enum CostPart
{
    Delay,
    HeadAge,
    IdleWater,
    SeedLost,
    Ferry,
    Unsown,
    Total,
}

/// <summary>One part of the cost in two plans.</summary>
public sealed record CostDifference(CostPart Part, Money Older, Money Newer)
{
    /// <summary>How much more the newer plan costs; less below zero.</summary>
    public Money More => Newer - Older;

    /// <summary>How much less the newer plan costs; more below zero.</summary>
    public Money Less => Older - Newer;

    /// <summary>Not a dollar apart.</summary>
    public bool IsSame => Math.Abs(More.Amount) < 0.5m;

    public bool IsMore => More.Amount > 0;
}

/// <summary>A decision that two plans do not have alike.</summary>
/// <param name="Older">As the older plan has it; none where only the newer does.</param>
/// <param name="Newer">As the newer plan has it; none where only the older does.</param>
public sealed record DecisionDifference(Decision? Older, Decision? Newer)
{
    /// <summary>Its last safe moment had come when the newer plan was made.</summary>
    public bool Passed { get; init; }

    public Decision Either => Newer ?? Older!;
}

/// <summary>Two plans of one season side by side: only what is not alike. The plans themselves are never changed.</summary>
/// <param name="Older">The one made first.</param>
/// <param name="Newer">The one made later.</param>
public sealed record PlanComparison(SeasonPlan Older, SeasonPlan Newer)
{
    /// <summary>Steps that moved, came or went, by the time they stand at.</summary>
    public required ImmutableArray<StepDifference> Steps { get; init; }

    /// <summary>Steps that both have alike.</summary>
    public required int StepsAlike { get; init; }

    /// <summary>All parts, the sum last.</summary>
    public required ImmutableArray<CostDifference> Costs { get; init; }

    public required ImmutableArray<DecisionDifference> Decisions { get; init; }

    /// <summary>Compares two plans of the same season, whichever is given first.</summary>
    public static PlanComparison Of(SeasonPlan one, SeasonPlan other)
    {
        var (older, newer) = one.MadeAt < other.MadeAt || (one.MadeAt == other.MadeAt && one.Number <= other.Number) ? (one, other) : (other, one);
        ImmutableArray<(PlanTask? Older, PlanTask? Newer)> pairs = [.. Pairs(older.Tasks, newer.Tasks, t => (t.Field.ToUpperInvariant(), t.Kind, t.Implement), t => t.Start)];
        ImmutableArray<StepDifference> steps = [.. pairs.Select(p => Difference(p.Older, p.Newer, newer.MadeAt)).OfType<StepDifference>()];
        return new PlanComparison(older, newer)
        {
            Steps = [.. steps.OrderBy(s => (s.Newer ?? s.Older!).Start).ThenBy(s => s.Field, StringComparer.Ordinal).ThenBy(s => s.Kind)],
            StepsAlike = pairs.Length - steps.Length,
            Costs = CostsOf(older.Cost, newer.Cost),
            Decisions = DecisionsOf(older, newer),
        };
    }

    private static StepDifference? Difference(PlanTask? older, PlanTask? newer, DateTimeOffset made)
    {
        var task = newer ?? older!;
        StepChange? change = (older, newer) switch
        {
            (null, _) => StepChange.Added,
            ({ } gone, null) => gone.Start <= made ? StepChange.Passed : StepChange.Dropped,
            ({ } was, { } now) when (now.Start - was.Start).Duration() > PlanLedger.Same => StepChange.Moved,
            ({ } was, { } now) when !Alike(was, now) => StepChange.Altered,
            _ => null,
        };
        return change is { } said ? new StepDifference(task.Field, task.Kind, older, newer, said) : null;
    }

    // A pound or a hundredth of a cfs is how the plan is written, not a change.
    private static bool Alike(PlanTask was, PlanTask now) =>
        was.Batch == now.Batch && was.Resource == now.Resource && was.Trailers == now.Trailers && was.Loads == now.Loads
        && (long)Math.Round(was.Dry?.Pounds ?? 0) == (long)Math.Round(now.Dry?.Pounds ?? 0)
        && (long)Math.Round((was.Flow?.CubicFeetPerSecond ?? 0) * 10) == (long)Math.Round((now.Flow?.CubicFeetPerSecond ?? 0) * 10);

    private static ImmutableArray<CostDifference> CostsOf(PlanCost older, PlanCost newer) =>
    [
        new(CostPart.Delay, older.Delay, newer.Delay), new(CostPart.HeadAge, older.HeadAge, newer.HeadAge), new(CostPart.IdleWater, older.IdleWater, newer.IdleWater),
        new(CostPart.SeedLost, older.SeedLost, newer.SeedLost), new(CostPart.Ferry, older.Ferry, newer.Ferry), new(CostPart.Unsown, older.Unsown, newer.Unsown),
        new(CostPart.Total, older.Total, newer.Total),
    ];

    private static ImmutableArray<DecisionDifference> DecisionsOf(SeasonPlan older, SeasonPlan newer)
    {
        // Said in the same words for the same moment it is the same decision, whichever fields stand behind it.
        var same = older.Decisions.Select(Said).Intersect(newer.Decisions.Select(Said)).ToHashSet();
        ImmutableArray<Decision> Others(SeasonPlan plan) => [.. plan.Decisions.Where(d => !same.Contains(Said(d)))];
        return
        [
            .. Pairs(Others(older), Others(newer), d => (d.Kind, string.Join(',', d.Fields)), d => d.By)
                .Where(p => p.Older is null || p.Newer is null || (p.Newer.By - p.Older.By).Duration() > PlanLedger.Same || p.Newer.Who != p.Older.Who)
                .Select(p => new DecisionDifference(p.Older, p.Newer) { Passed = p is { Newer: null, Older: { } gone } && gone.By <= newer.MadeAt })
                .OrderBy(d => d.Either.By).ThenBy(d => d.Either.Kind, StringComparer.Ordinal),
        ];
    }

    private static (DateTimeOffset, string, string) Said(Decision decision) => (decision.By, decision.What, decision.Who);

    // A field may be sown in parts: the first of one plan is held against the first of the other.
    private static IEnumerable<(T? Older, T? Newer)> Pairs<T, TKey>(ImmutableArray<T> older, ImmutableArray<T> newer, Func<T, TKey> key, Func<T, DateTimeOffset> order)
        where T : class
        where TKey : notnull
    {
        var (was, now) = (older.OrderBy(order).ToLookup(key), newer.OrderBy(order).ToLookup(key));
        foreach (var what in was.Select(g => g.Key).Union(now.Select(g => g.Key)))
        {
            var (left, right) = (was[what].ToList(), now[what].ToList());
            for (var i = 0; i < Math.Max(left.Count, right.Count); i++) yield return (left.ElementAtOrDefault(i), right.ElementAtOrDefault(i));
        }
    }
}
