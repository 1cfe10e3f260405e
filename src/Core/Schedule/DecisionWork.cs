namespace Watersown.Schedule;

/// <summary>The arithmetic behind a decision: its last safe moment, and what it costs to wait.</summary>
public static class DecisionWork
{
    /// <summary>The working that the plan brings along, or else the one behind its cost and hour.</summary>
    [Source(nameof(Sources.Arithmetic), "acres × price a day; dry seed × price; change less notice")]
    public static Working Of(SeasonPlan plan, Decision decision)
    {
        if (!decision.Working.Lines.IsEmpty) return decision.Working;
        return decision.Kind switch
        {
            "call-soak" or "put-in-soak" => Delay(plan, decision),
            "drain" => Seed(plan, decision),
            "order-water" or "cut-water" => Water(plan, decision),
            "list-flight" => Flight(plan, decision),
            _ => Working.Empty,
        };
    }

    private static Working Delay(SeasonPlan plan, Decision decision)
    {
        var prices = plan.State.Prices;
        var working = Acres(plan, decision, out var acres);
        working = prices.Delay == DelayRule.Own
            ? working.Given("r", "a day later, an acre", (double)prices.OwnDelay.Amount, "$/ac", "farm prices")
            : working.Given("g", "price of grain", (double)prices.Grain.Amount, "$/cwt", "farm prices")
                .Step("r", "a day later, an acre", (double)DelayCost.PerAcreDay(prices).Amount, "$/ac", prices.Delay == DelayRule.Trials ? "g × 0.2 cwt an acre a day" : "g × 1 cwt an acre a day", prices.Delay == DelayRule.Trials ? Sources.UcLatePlanting2023.At("5 cwt an acre over May") : Sources.CapitalPressSaying.At("a sack an acre a day"));
        return working.Step("C", "a day later, all of them", (double)(DelayCost.PerAcreDay(prices) * acres).Amount, "$", "A × r", Sources.Arithmetic);
    }

    private static Working Seed(SeasonPlan plan, Decision decision)
    {
        if (plan.Tasks.FirstOrDefault(t => t.Kind == PlanTaskKind.Drain && t.Start == decision.By && decision.Fields.Contains(t.Field, StringComparer.Ordinal)) is not { Dry: { } dry } task) return Working.Empty;
        var soak = plan.Tasks.FirstOrDefault(t => t.Kind == PlanTaskKind.Soak && t.Field == task.Field && t.Batch == task.Batch);
        var price = plan.State.Prices.SoakedSeed;
        var working = Working.Empty
            .Given("D", "dry seed in the batch", dry.Pounds, "lb dry", "batch " + task.Batch)
            .Given("p", "seed, soak and haul", (double)price.Amount, "$/lb dry", "farm prices")
            .Step("C", "lost if it cannot be flown", (double)(price * dry.Pounds).Amount, "$", "D × p", Sources.Arithmetic);
        return soak is null ? working : working
            .Given("s", "in soak", Datum.Moment(soak.Start), string.Empty, "batch " + task.Batch, soak.Start)
            .Given("o", "off the water by the plan", Datum.Moment(task.Start), string.Empty, "plan")
            .Step("u", "under water then", (task.Start - soak.Start).TotalHours, "h", "o − s", Sources.Arithmetic);
    }

    private static Working Water(SeasonPlan plan, Decision decision)
    {
        var up = decision.Kind == "order-water";
        var change = Sheets.WaterSheets.Changes(plan).FirstOrDefault(c => c.SendBy == decision.By && c.After > c.Before == up && decision.What.Contains(" " + c.Source.Code + " ", StringComparison.Ordinal));
        if (change is null) return Working.Empty;
        var over = up ? change.After - change.Before : change.Before - change.After;
        var working = Working.Empty
            .Given("t", "change of flow", Datum.Moment(change.At), string.Empty, "plan")
            .Given("n", "notice that the source wants", change.Source.Notice.TotalHours, "h", "source " + change.Source.Code)
            .Step("b", "say so by", Datum.Moment(change.SendBy), string.Empty, "t − n", Sources.Arithmetic)
            .Given("q", "flow changed by", over.CubicFeetPerSecond, "cfs", "plan")
            .Step("v", "in a day", (over * TimeSpan.FromDays(1)).AcreFeet, "ac-ft", "q × 1 day", Sources.Arithmetic);
        return up ? working : working
            .Given("p", "ordered water that nothing takes", (double)plan.State.Prices.IdleWater.Amount, "$/ac-ft", "farm prices")
            .Step("C", "spilled in a day", (double)(plan.State.Prices.IdleWater * (over * TimeSpan.FromDays(1)).AcreFeet).Amount, "$", "v × p", Sources.Arithmetic);
    }

    private static Working Flight(SeasonPlan plan, Decision decision)
    {
        var working = Acres(plan, decision, out _);
        var flights = plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow && decision.Fields.Contains(t.Field, StringComparer.Ordinal)).OrderBy(t => t.Start).ToImmutableArray();
        return flights.IsEmpty ? working : working
            .Given("f", "first flight", Datum.Moment(flights[0].Start), string.Empty, "plan")
            .Step("b", "list it by", Datum.Moment(decision.By), string.Empty, "16:00 of the day before f, or when the plan was made", Sources.CommonPractice);
    }

    private static Working Acres(SeasonPlan plan, Decision decision, out double acres)
    {
        acres = 0;
        var working = Working.Empty;
        foreach (var field in plan.State.Farm.Fields.Where(f => decision.Fields.Contains(f.Code, StringComparer.Ordinal)))
        {
            acres += field.Net.Acres;
            working = working.Given("a", "net acres of " + field.Name, field.Net.Acres, "ac", "field " + field.Code);
        }

        return working.Step("A", "acres together", acres, "ac", "sum of a", Sources.Arithmetic);
    }
}
