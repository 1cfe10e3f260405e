namespace Watersown.Schedule;

/// <summary>How far a plan is proved, with its working.</summary>
public static class PlanProof
{
    /// <summary>What the plan costs by part, what no plan can cost less than, and how far it may be from the best.</summary>
    [Source(nameof(Sources.Arithmetic), "sum of the parts; (cost − bound) ÷ cost")]
    public static Working Of(SeasonPlan plan)
    {
        var cost = plan.Cost;
        return Working.Empty
            .Given("D", "sowing later", Dollars(cost.Delay), "$", "plan", plan.MadeAt)
            .Given("H", "head checks wet long", Dollars(cost.HeadAge), "$", "plan", plan.MadeAt)
            .Given("W", "ordered water that nothing takes", Dollars(cost.IdleWater), "$", "plan", plan.MadeAt)
            .Given("S", "seed lost", Dollars(cost.SeedLost), "$", "plan", plan.MadeAt)
            .Given("F", "flying", Dollars(cost.Ferry), "$", "plan", plan.MadeAt)
            .Given("U", "acres not sown", Dollars(cost.Unsown), "$", "plan", plan.MadeAt)
            .Step("C", "the plan costs", Dollars(cost.Total), "$", "D + H + W + S + F + U", Sources.Arithmetic)
            .Given("B", "no plan under the same rules costs less", Dollars(plan.Bound), "$", "search of the plan, proved", plan.MadeAt)
            .Step("G", "from the best at most", plan.Gap.Percent, "%", "(C − B) ÷ C", Sources.Arithmetic);
    }

    private static double Dollars(Money money) => (double)money.Amount;
}
