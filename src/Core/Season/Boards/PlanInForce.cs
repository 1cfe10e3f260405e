using Watersown.Schedule;

namespace Watersown.Season.Boards;

/// <summary>The plan that sheets are made from.</summary>
public static class PlanInForce
{
    /// <summary>
    /// The plan laid on the season as it stands; where there is none yet, one without a step and numbered 0, so that what is
    /// known of fields, water and seed can still be put on paper.
    /// </summary>
    [Source(nameof(Sources.FarmRecord), "the plan, laid on the season as it stands")]
    public static SeasonPlan Of(SeasonBook book, SeasonPlan? plan) => plan is not null ? plan with { State = book.State } : new SeasonPlan
    {
        Number = 0,
        MadeAt = book.State.Now,
        State = book.State,
        Tasks = [],
        Orders = [],
        Cost = new PlanCost(Money.Zero, Money.Zero, Money.Zero, Money.Zero, Money.Zero, Money.Zero),
        Bound = Money.Zero,
        SolveTime = TimeSpan.Zero,
    };
}
