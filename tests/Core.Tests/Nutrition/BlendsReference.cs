namespace Watersown.Nutrition;

public sealed class BlendsReference
{
    // University handout, Four steps in fertilizer calculations: product = nutrient / grade.
    [Theory]
    [InlineData(5, 35, 14.3, 0.1)]
    [InlineData(15, 21, 71, 0.5)]
    [InlineData(11.25, 31, 36.3, 0.1)]
    [InlineData(3.75, 46, 8.2, 0.1)]
    [InlineData(17.5, 35, 50, 1e-9)]
    public void A_single_product_goes_on_at_nutrient_over_grade(double nitrogen, double grade, double pounds, double within)
    {
        var outcome = Ask.For("blend", ("targets", Datum.Row(("n", nitrogen), ("p2o5", 0), ("k2o", 0))), ("products", Datum.ListOf([Some.Row("straight", grade, 0, 0, 0.3)])));
        Assert.Equal(pounds, Assert.Single(outcome.Rows("products")).Number("lb_ac"), within);
        Assert.Equal(nitrogen, ((Datum.Table)outcome.Answer("supplied")).Number("n"), 1e-9);
    }

    // The handout's compound plus straight: compound = P2O5 / grade, the nitrogen left from the straight product. Worked by hand:
    // 40 / 0.20 = 200 lb of 16-20-0 brings 32 lb N; (60 - 32) / 0.46 = 60.87 lb of urea; 200 × 0.28 + 60.87 × 0.30 = $74.26.
    [Fact]
    public void A_compound_and_a_straight_product_meet_two_needs()
    {
        var outcome = Ask.For("blend",
            ("targets", Datum.Row(("n", 60), ("p2o5", 40), ("k2o", 0))),
            ("products", Datum.ListOf([Some.Row("urea", 46, 0, 0, 0.30), Some.Row("16-20-0", 16, 20, 0, 0.28)])));
        var parts = outcome.Rows("products");
        Assert.Equal("urea, 16-20-0", string.Join(", ", parts.Select(p => ((Datum.Text)p["name"]!).Value)));
        Assert.Equal(60.87, parts[0].Number("lb_ac"), 0.01);
        Assert.Equal(200, parts[1].Number("lb_ac"), 1e-9);
        Assert.Equal(74.26, outcome.Number("cost_ac"), 0.01);
    }

    // Worked by hand: the compound alone brings 80 lb N where 60 is wanted, and any straight product would only add cost.
    [Fact]
    public void More_than_asked_for_may_be_cheapest_and_is_said()
    {
        var outcome = Ask.For("blend",
            ("targets", Datum.Row(("n", 60), ("p2o5", 100), ("k2o", 0))),
            ("products", Datum.ListOf([Some.Row("urea", 46, 0, 0, 0.30), Some.Row("16-20-0", 16, 20, 0, 0.28)])));
        Assert.Equal("16-20-0", ((Datum.Text)Assert.Single(outcome.Rows("products"))["name"]!).Value);
        Assert.Equal(80, ((Datum.Table)outcome.Answer("supplied")).Number("n"), 1e-9);
        Assert.Contains(outcome.Value.Cautions, c => c.Contains("more than the 60 asked for", StringComparison.Ordinal));
    }

    // Worked by hand: with three needs and three single-nutrient products each is nutrient / grade; 46, 45 and 62 % of 100 lb.
    [Fact]
    public void Three_needs_take_three_products_and_each_pound_has_its_price()
    {
        var blend = Blends.Cheapest(Some.Rates(46, 45, 62), [Some.Product("U", 46, 0, 0, 0.23), Some.Product("T", 0, 45, 0, 0.45), Some.Product("K", 0, 0, 62, 0.31)]).Value;
        Assert.All(blend.Parts, p => Assert.Equal(100, p.OnAnAcre.Pounds, 1e-9));
        Assert.Equal(99, (double)blend.CostPerAcre.Amount, 1e-9);
        Assert.Equal([0.5, 1.0, 0.5], blend.NextPound.Select(p => Math.Round((double)p.PerPound.Amount, 9)));
    }

    [Fact]
    public void Wanting_nothing_costs_nothing()
    {
        var blend = Blends.Cheapest(Some.Rates(0, 0, 0), [Some.Product("U", 46, 0, 0, 0.23)]).Value;
        Assert.Empty(blend.Parts);
        Assert.Equal(Money.Zero, blend.CostPerAcre);
    }
}
