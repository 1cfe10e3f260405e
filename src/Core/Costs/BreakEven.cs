namespace Watersown.Costs;

/// <summary>Where grain just pays what an acre costs.</summary>
/// <param name="Yield">Grain an acre needs at the price.</param>
/// <param name="Price">Price a hundredweight needs at the yield; none where no yield is known.</param>
/// <param name="Margin">Left for an acre at price and yield; none where no yield is known.</param>
public sealed record BreakEven(GrainYield Yield, Money? Price, Money? Margin)
{
    /// <summary>Works it out with its working.</summary>
    /// <param name="perAcre">Cost of an acre.</param>
    /// <param name="price">A hundredweight; above nothing.</param>
    /// <param name="yield">Grain of an acre, where known.</param>
    /// <param name="share">What of the grain is the farm's, after landlords.</param>
    /// <exception cref="ArgumentOutOfRangeException">A price or share not above nothing.</exception>
    [Source(nameof(Sources.NswPlantStand), "table 1: break-even yield = cost / price; gross margin = income - cost")]
    public static Worked<BreakEven> Of(Money perAcre, Money price, GrainYield? yield, Fraction share)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(price.Amount, 0m, nameof(price));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(share.Share, 0, nameof(share));
        double cost = (double)perAcre.Amount, dollars = (double)price.Amount;
        var need = cost / dollars / share.Share;
        var working = Working.Empty
            .Given("C", "cost of an acre", cost, "$/ac", "bills and plans")
            .Given("p", "price", dollars, "$/cwt", "the farm's price")
            .Given("s", "the farm's share of the grain", share.Percent, "%", "leases")
            .Step("Y", "grain an acre needs", need, "cwt/ac", "C / (p s)", Sources.NswPlantStand);
        if (yield is not { HundredweightsPerAcre: > 0 and var grain }) return new(new BreakEven(GrainYield.FromHundredweightsPerAcre(need), null, null), working);
        var least = cost / grain / share.Share;
        var margin = (grain * share.Share * dollars) - cost;
        working = working
            .Given("g", "grain of an acre at 14 %", grain, "cwt/ac", "tickets, or expected")
            .Step("P", "price a hundredweight needs", least, "$/cwt", "C / (g s)", Sources.NswPlantStand)
            .Step("M", "left for an acre", margin, "$/ac", "g s p - C", Sources.NswPlantStand);
        return new(new BreakEven(GrainYield.FromHundredweightsPerAcre(need), Money.FromDollars(least), Money.FromDollars(margin)), working);
    }
}
