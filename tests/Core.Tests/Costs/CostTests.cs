using CsCheck;

namespace Watersown.Costs;

public sealed class CostTests
{
    // New South Wales DPI, Primefact 1476, table 1: costs of 983, 457, 1,691 and 1,284 at 350 a tonne break even at 2.8, 1.3, 4.8 and 3.7 t/ha.
    // The money is of another country and the weight metric: the ratio is what is checked, a unit of weight for each of land.
    [Theory]
    [InlineData(983, 2.8)]
    [InlineData(457, 1.3)]
    [InlineData(1691, 4.8)]
    [InlineData(1284, 3.7)]
    public void The_published_costs_break_even_at_the_published_yields(double cost, double yield) =>
        Assert.Equal(yield, BreakEven.Of(Money.FromDollars(cost), Money.FromDollars(350m), null, Fraction.One).Value.Yield.HundredweightsPerAcre, 0.05);

    // The same table: 10 t at 350 are 3,500, less 1,691 and 1,284 leave 1,809 and 2,216.
    [Theory]
    [InlineData(1691, 1809)]
    [InlineData(1284, 2216)]
    public void The_published_margins_are_left(double cost, double margin) =>
        Assert.Equal(margin, (double)BreakEven.Of(Money.FromDollars(cost), Money.FromDollars(350m), GrainYield.FromHundredweightsPerAcre(10), Fraction.One).Value.Margin!.Value.Amount, 0.001);

    [Fact]
    public void A_landlords_share_raises_both() => Gen.Select(Gen.Int[1, 5000], Gen.Int[5, 50], Gen.Int[20, 130], Gen.Int[10, 100]).Sample((cost, price, grain, percent) =>
    {
        var yield = GrainYield.FromHundredweightsPerAcre(grain);
        var all = BreakEven.Of(Money.FromDollars((decimal)cost), Money.FromDollars((decimal)price), yield, Fraction.One).Value;
        var part = BreakEven.Of(Money.FromDollars((decimal)cost), Money.FromDollars((decimal)price), yield, Fraction.FromPercent(percent)).Value;
        Assert.Equal(all.Yield.HundredweightsPerAcre * 100 / percent, part.Yield.HundredweightsPerAcre, 1e-6 * part.Yield.HundredweightsPerAcre);
        Assert.True(part.Price >= all.Price);
        Assert.True(part.Margin <= all.Margin);
    });

    [Fact]
    public void The_parts_of_a_bill_are_the_bill_to_the_cent_and_none_is_a_cent_off_its_share() =>
        Gen.Select(Gen.Int[-200_000_00, 200_000_00], Gen.Int[1, 4000].Array[1, 30]).Sample((cents, tenths) =>
        {
            var amount = Money.FromDollars(cents / 100m);
            ImmutableArray<Area> land = [.. tenths.Select(t => Area.FromAcres(t / 10.0))];
            var parts = CostSpreading.By(amount, land);
            Assert.Equal(amount, parts.Aggregate(Money.Zero, (a, b) => a + b));
            var all = land.Sum(a => a.Acres);
            foreach (var (part, area) in parts.Zip(land)) Assert.Equal(cents / 100.0 * area.Acres / all, (double)part.Amount, 0.0100001);
        });

    [Fact]
    public void A_fields_own_plan_stands_before_the_one_for_all_and_bills_fall_where_they_belong()
    {
        var costs = FieldCosts.Of(
            [("N1", Area.FromAcres(100), Mass.FromHundredweights(9000), null), ("N2", Area.FromAcres(50), Mass.FromHundredweights(4500), Mass.FromHundredweights(5000))],
            [new(CostCategory.Seed) { PerAcre = Money.FromDollars(50m) }, new(CostCategory.Seed) { PerAcre = Money.FromDollars(60m), Field = "N2" }, new(CostCategory.Drying) { PerHundredweight = Money.FromDollars(1.5m) }],
            [new(CostCategory.Seed, Money.FromDollars(3000m), []), new(CostCategory.Water, Money.FromDollars(999m), ["N2"])]);
        Assert.Equal(Money.FromDollars(5000m + 13_500m), costs[0].Planned);
        Assert.Equal(Money.FromDollars(3000m + 7500m), costs[1].Planned);
        Assert.Equal(Money.FromDollars(2000m), costs[0].Spent);
        Assert.Equal(Money.FromDollars(1999m), costs[1].Spent);
        Assert.Equal(39.98, (double)costs[1].SpentPerAcre.Amount, 0.001);
        Assert.Equal(0.3998, (double)costs[1].SpentPerHundredweight!.Value.Amount, 0.001);
        Assert.Null(costs[0].SpentPerHundredweight);
    }

    [Fact]
    public void The_reckoning_says_the_same() =>
        Assert.Equal(93.94, Ask.For("break-even", ("cost_ac", 1691), ("price_cwt", 18)).Number("yield_needed_cwt_ac"), 0.01);
}
