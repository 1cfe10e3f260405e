namespace Watersown.Schedule.Replan;

/// <summary>The stretch of a price that is offered for trying, and where a price lies on it.</summary>
public static class PriceScale
{
    /// <summary>The dearest that is offered: three times the default water age; twice a sack an acre a day.</summary>
    [Source(nameof(Sources.FarmDefault), "12 dollars an acre and squared day; 40 dollars an acre and day")]
    public static Money Most(FlipPrice price) => Money.FromDollars(price == FlipPrice.HeadAge ? 12m : 40m);

    /// <summary>How far along the stretch a price lies; its ends where it lies beyond.</summary>
    [Source(nameof(Sources.Arithmetic), "price ÷ dearest")]
    public static Fraction At(FlipPrice price, Money money) => Fraction.FromShare(Math.Clamp((double)(money.Amount / Most(price).Amount), 0, 1));
}
