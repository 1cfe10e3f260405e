namespace Watersown.Harvest;

public sealed class HarvestRateTests
{
    // Worked by hand: 95 cwt at 14 % weigh 95 * 86 / 80 = 102.1 cwt at 20 %; two combines of 45 ac fill 9,191 cwt = 18.4 sets of
    // 500 cwt; 15 sets take 73 ac, so 2,900 ac last 39.5 days. Common practice, no source.
    [Fact]
    public void A_dryer_of_fifteen_sets_holds_two_combines_back()
    {
        var rate = HarvestRate.Of(Area.FromAcres(90), GrainYield.FromHundredweightsPerAcre(95), Fraction.FromPercent(20), 15, Mass.FromPounds(50_000), Area.FromAcres(2900)).Value;
        Assert.True(rate.DryerBinds);
        Assert.Equal(18.4, rate.SetsPossible, 0.05);
        Assert.Equal(73, rate.ByDryer.Acres, 0.5);
        Assert.Equal(39.5, rate.Days, 0.05);
        Assert.Equal(rate.ByDryer, rate.InADay);
    }

    [Fact]
    public void With_room_enough_the_combines_decide()
    {
        var rate = HarvestRate.Of(Area.FromAcres(90), GrainYield.FromHundredweightsPerAcre(95), Fraction.FromPercent(20), 20, Mass.FromPounds(50_000), Area.FromAcres(900)).Value;
        Assert.False(rate.DryerBinds);
        Assert.Equal(10, rate.Days, 1e-9);
    }

    [Fact]
    public void The_reckoning_says_the_same()
    {
        var reckoning = HarvestReckonings.All.Single(r => r.Name == "harvest-rate");
        var given = new Datum.Table([
            ("combines", 2), ("each_ac_day", 45), ("yield_cwt_ac", 95), ("moisture_pct", 20), ("sets_day", 15), ("set_lb", 50_000), ("land_ac", 2900)]);
        var told = reckoning.Run(given).Value!;
        Assert.Equal(39.5, ((Datum.Number)told["days"]).Value, 0.05);
    }
}
