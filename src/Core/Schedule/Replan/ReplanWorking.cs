namespace Watersown.Schedule.Replan;

/// <summary>The sums behind a plan for the coming mornings.</summary>
internal static class ReplanWorking
{
    public static Working Cost(ReplanCase from, ReplanPlan plan, ReplanPrices prices)
    {
        var working = Working.Empty
            .Given("L", "seed lost", plan.SeedLost.Pounds, "lb dry", "batches less what is sown of them")
            .Given("p", "seed, soak and haul", (double)from.State.Prices.SoakedSeed.Amount, "$/lb dry", "farm prices");
        working = plan.Sowings.Aggregate(working, (w, s) => Line(from, w, s));
        return working
            .Step("D", "delay", (double)plan.AcreDays, "ac × d", "sum of acres × days from today", Sources.Arithmetic)
            .Step("W", "water age", (double)plan.WaterAge, "ac × d²", "sum of acres × (age − free days)², where above", Sources.FarmDefault)
            .Given("d", "a day's delay", (double)prices.Delay.Amount, "$/ac/d", "set here")
            .Given("k", "water age", (double)prices.HeadAge.Amount, "$/ac/d²", "set here")
            .Step("C", "cost of the plan", (double)plan.Cost(prices).Amount, "$", "L p + d D + k W", Sources.Arithmetic);
    }

    public static Working BreakEven(ReplanPlan best, ReplanPlan other, ReplanPrices prices, FlipPrice price, decimal at)
    {
        var working = Working.Empty
            .Given("S1", "seed lost by the plan that is best now", (double)best.SeedCost.Amount, "$", "that plan")
            .Given("S2", "seed lost by the other", (double)other.SeedCost.Amount, "$", "that plan")
            .Given("D1", "delay of the plan that is best now", (double)best.AcreDays, "ac × d", "that plan")
            .Given("D2", "delay of the other", (double)other.AcreDays, "ac × d", "that plan")
            .Given("W1", "water age of the plan that is best now", (double)best.WaterAge, "ac × d²", "that plan")
            .Given("W2", "water age of the other", (double)other.WaterAge, "ac × d²", "that plan");
        return price == FlipPrice.HeadAge
            ? working.Given("d", "a day's delay", (double)prices.Delay.Amount, "$/ac/d", "set here")
                .Step("k*", "water age price at which both cost the same", (double)at, "$/ac/d²", "((S1 − S2) + d (D1 − D2)) / (W2 − W1)", Sources.Arithmetic)
            : working.Given("k", "water age", (double)prices.HeadAge.Amount, "$/ac/d²", "set here")
                .Step("d*", "price of a day's delay at which both cost the same", (double)at, "$/ac/d", "((S1 − S2) + k (W1 − W2)) / (D2 − D1)", Sources.Arithmetic);
    }

    private static Working Line(ReplanCase from, Working working, PlannedSowing sowing)
    {
        var code = sowing.Field.Code;
        var days = sowing.Day.DayNumber - from.Today.DayNumber;
        working = working.Given("A " + code, "acres sown", sowing.Land.Acres, "ac", "field " + code).Given("t " + code, "days from today", days, "d", "this plan");
        return sowing.Field.WaterAge(sowing.Day) is { } age
            ? working.Given("a " + code, "water age at sowing", age, "d", "first water in the head check", sowing.Field.Season.FirstWater)
            : working;
    }
}
