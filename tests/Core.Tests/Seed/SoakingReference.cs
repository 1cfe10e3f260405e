namespace Watersown.Seed;

/// <summary>Wet weight against the water balance worked out by hand; rows marked with where they come from.</summary>
public sealed class SoakingReference
{
    // (1 - m0)/(1 - m1), moisture over the whole grain: derived by mass balance, to four decimals.
    [Theory]
    [InlineData(10, 22, 1.1538)]
    [InlineData(10, 25, 1.2000)]
    [InlineData(10, 28, 1.2500)]
    [InlineData(10, 30, 1.2857)]
    [InlineData(10, 32, 1.3235)]
    [InlineData(10, 35, 1.3846)]
    [InlineData(12, 22, 1.1282)]
    [InlineData(12, 25, 1.1733)]
    [InlineData(12, 28, 1.2222)]
    [InlineData(12, 30, 1.2571)]
    [InlineData(12, 32, 1.2941)]
    [InlineData(12, 35, 1.3538)]
    [InlineData(13, 22, 1.1154)]
    [InlineData(13, 25, 1.1600)]
    [InlineData(13, 28, 1.2083)]
    [InlineData(13, 30, 1.2429)]
    [InlineData(13, 32, 1.2794)]
    [InlineData(13, 35, 1.3385)]
    [InlineData(14, 22, 1.1026)]
    [InlineData(14, 25, 1.1467)]
    [InlineData(14, 28, 1.1944)]
    [InlineData(14, 30, 1.2286)]
    [InlineData(14, 32, 1.2647)]
    [InlineData(14, 35, 1.3231)]
    public void The_wet_factor_follows_from_moisture_before_and_after(double before, double after, double factor) =>
        Assert.Equal(factor, Soaking.WetFactor(Fraction.FromPercent(before), Fraction.FromPercent(after)), 0.00005);

    // Common practice of the trade, to two decimals, from 13 %.
    [Theory]
    [InlineData(26, 1.18)]
    [InlineData(28, 1.21)]
    [InlineData(30, 1.24)]
    [InlineData(32, 1.28)]
    [InlineData(34, 1.32)]
    public void The_trade_multiplies_by_these_from_thirteen_percent(double after, double factor) =>
        Assert.Equal(factor, Ask.For("wet-weight", ("dry_lb", 1), ("moisture_before_pct", 13), ("moisture_after_pct", after)).Number("wet_factor"), 0.005);

    // Derived: 150 lb at 12 % drained at 30 % is 150 × 0.88 / 0.70.
    [Fact]
    public void A_dry_rate_of_150_becomes_188_soaked()
    {
        var answer = Ask.For("wet-weight", ("dry_lb", 150), ("moisture_before_pct", 12), ("moisture_after_pct", 30));
        Assert.Equal(188.571, answer.Number("wet_lb"), 0.001);
        Assert.Equal(1.25714, answer.Number("wet_factor"), 0.00001);
        var rate = Soaking.Rate(SeedRate.FromPoundsPerAcre(150), answer.Number("wet_factor"));
        Assert.Equal(188.571, rate.PoundsPerAcre, 0.001);
    }

    // J. Agric. Eng. (India) 50(3), 2014, abstract: 41.67 % and 48.24 to 55 % over dry matter; the other basis derived.
    [Theory]
    [InlineData(41.67, 29.41)]
    [InlineData(48.24, 32.5)]
    [InlineData(55, 35.5)]
    public void Moisture_over_dry_matter_turns_into_moisture_over_the_grain(double dryBasis, double wetBasis) =>
        Assert.Equal(wetBasis, Ask.For("moisture-basis", ("moisture_dry_basis_pct", dryBasis)).Number("moisture_wet_basis_pct"), wetBasis == 29.41 ? 0.01 : 0.05);
}
