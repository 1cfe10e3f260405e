namespace Watersown.Schedule.Replan;

/// <summary>A price that a choice hangs on.</summary>
public enum FlipPrice
{
    /// <summary>Dollars an acre and squared day of water in the head check.</summary>
    HeadAge,

    /// <summary>Dollars an acre and day of delay.</summary>
    Delay,
}

/// <summary>The price at which another plan becomes the cheapest, the other price left as it is.</summary>
/// <param name="Price">Which price.</param>
/// <param name="At">The break-even: both plans cost the same there.</param>
/// <param name="Above">The other plan is cheapest above it; otherwise below it.</param>
/// <param name="To">The plan that becomes the cheapest.</param>
public sealed record Flip(FlipPrice Price, Money At, bool Above, ReplanPlan To)
{
    /// <summary>The same, not rounded.</summary>
    [PlainNumber("dollars; exact, for working on")]
    public required decimal Exact { get; init; }

    public required Working Working { get; init; }
}

/// <summary>What would change the choice.</summary>
public static class Flips
{
    /// <summary>
    /// For each price, the nearest value above and below at which the cheapest plan changes. Costs are straight lines in
    /// either price, so each break-even is a quotient of differences and exact.
    /// </summary>
    [Source(nameof(Sources.Arithmetic), "difference of what does not hang on the price ÷ difference of what does")]
    public static ImmutableArray<Flip> Of(MorningReplan replan, ReplanPrices prices)
    {
        ArgumentNullException.ThrowIfNull(replan);
        var ranked = replan.Ranked(prices);
        if (ranked.IsEmpty) return [];
        return [.. new[] { FlipPrice.HeadAge, FlipPrice.Delay }.SelectMany(price => Nearest(replan.Plans, ranked[0].Plan, prices, price))];
    }

    private static IEnumerable<Flip> Nearest(ImmutableArray<ReplanPlan> plans, ReplanPlan best, ReplanPrices prices, FlipPrice price)
    {
        var here = price == FlipPrice.HeadAge ? prices.HeadAge.Amount : prices.Delay.Amount;
        // Another with a flatter line overtakes above, one with a steeper line below.
        var crossings = plans.Where(p => Slope(p, price) != Slope(best, price))
            .Select(p => (Plan: p, At: (Fixed(p, prices, price) - Fixed(best, prices, price)) / (Slope(best, price) - Slope(p, price)), Above: Slope(p, price) < Slope(best, price)))
            .ToList();
        foreach (var (side, near) in new[] { (true, crossings.Where(c => c.Above).OrderBy(c => c.At)), (false, crossings.Where(c => !c.Above).OrderByDescending(c => c.At)) })
        {
            foreach (var (plan, at, _) in near.Take(1))
            {
                if (at < 0 || (side ? at < here : at > here)) continue;
                yield return new Flip(price, Money.FromDollars(Math.Round(at, 2)), side, plan) { Exact = at, Working = ReplanWorking.BreakEven(best, plan, prices, price, at) };
            }
        }
    }

    internal static decimal Slope(ReplanPlan plan, FlipPrice price) => price == FlipPrice.HeadAge ? plan.WaterAge : plan.AcreDays;

    internal static decimal Fixed(ReplanPlan plan, ReplanPrices prices, FlipPrice price) =>
        plan.SeedCost.Amount + (price == FlipPrice.HeadAge ? plan.AcreDays * prices.Delay.Amount : plan.WaterAge * prices.HeadAge.Amount);
}
