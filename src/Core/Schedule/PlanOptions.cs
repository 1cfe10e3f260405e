namespace Watersown.Schedule;

/// <summary>How long and how to search for a season plan.</summary>
public sealed record PlanOptions
{
    /// <summary>Time to search; the best plan found by then is given.</summary>
    public TimeSpan Budget { get; init; } = TimeSpan.FromSeconds(20);

    /// <summary>Seed of every random choice; recorded with the plan.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>
    /// Give the same plan for the same farm and seed on every run: work is counted instead of time, and the budget becomes
    /// a budget of work. Slower for the same quality.
    /// </summary>
    public bool Repeatable { get; init; }

    /// <summary>Search threads; as many as the machine has cores is best.</summary>
    public int Workers { get; init; } = 2;

    /// <summary>Share of the budget spent on ordering fields by local search before the solver takes over.</summary>
    public Fraction LocalShare { get; init; } = Fraction.FromPercent(8);

    /// <summary>Stop early when the proved gap is at or below this.</summary>
    public Fraction GoodEnough { get; init; } = Fraction.FromPercent(0.1);
}

/// <summary>How a search is getting on, published whenever a better plan or a better bound is found.</summary>
/// <param name="Elapsed">Since the search began.</param>
/// <param name="Cost">Of the best plan so far.</param>
/// <param name="Bound">No plan can cost less.</param>
/// <param name="By">Which part of the search found it: first, ordering, solver.</param>
public sealed record PlanProgress(TimeSpan Elapsed, Money Cost, Money Bound, string By)
{
    /// <summary>How far the plan may be from the best, over its own cost.</summary>
    public Fraction Gap => Cost.Amount <= 0 ? Fraction.Zero : Fraction.FromShare(Math.Max(0, (double)((Cost.Amount - Bound.Amount) / Cost.Amount)));
}
