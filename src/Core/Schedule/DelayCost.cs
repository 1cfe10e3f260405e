namespace Watersown.Schedule;

/// <summary>What a later sowing costs, by the rule the farm chose. Two published figures differ fivefold; both are offered.</summary>
public static class DelayCost
{
    // 5 cwt an acre between the start and the end of May is about 0.2 cwt an acre a day, as growers carry it in their heads.
    [Source(nameof(Sources.UcLatePlanting2023), "5 cwt an acre over May")]
    private const double TrialCwtPerDay = 0.2;

    [Source(nameof(Sources.CapitalPressSaying), "a sack an acre a day")]
    private const double SayingCwtPerDay = 1.0;

    /// <summary>
    /// Money lost by sowing an acre on a day rather than on the day of planning. What is already late is not counted: no
    /// plan can change it.
    /// </summary>
    [Source(nameof(Sources.UcLatePlanting2023), "0.2 cwt an acre a day from 1 May")]
    [Source(nameof(Sources.CapitalPressSaying), "1 cwt an acre a day after 12 May")]
    public static Money PerAcre(PlanPrices prices, DateOnly planned, DateOnly sown)
    {
        var rate = PerAcreDay(prices);
        var counts = prices.Delay == DelayRule.Saying ? new DateOnly(planned.Year, 5, 12) : new DateOnly(planned.Year, 5, 1);
        var from = planned > counts ? planned : counts;
        return rate * Math.Max(0, sown.DayNumber - from.DayNumber);
    }

    /// <summary>Money an acre a day by the farm's rule.</summary>
    [Source(nameof(Sources.UcLatePlanting2023), "0.2 cwt an acre a day")]
    [Source(nameof(Sources.CapitalPressSaying), "1 cwt an acre a day")]
    public static Money PerAcreDay(PlanPrices prices) => prices.Delay switch
    {
        DelayRule.Trials => prices.Grain * TrialCwtPerDay,
        DelayRule.Saying => prices.Grain * SayingCwtPerDay,
        DelayRule.Own => prices.OwnDelay,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>Price of a head check that was wet too long before sowing: acres × price × (days beyond the free ones)².</summary>
    [Source(nameof(Sources.FarmDefault), "acres × price × (days over 8)²; for ranking plans only")]
    public static Money HeadAge(PlanPrices prices, Area net, TimeSpan age)
    {
        var over = Math.Max(0, (age - prices.HeadAgeFree).TotalDays);
        return prices.HeadAge * (net.Acres * over * over);
    }
}
