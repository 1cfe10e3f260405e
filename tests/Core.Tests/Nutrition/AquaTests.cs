using Watersown.Reckon;

namespace Watersown.Nutrition;

public sealed class AquaTests
{
    // 120 lb N, 20 % N at 7.6 lb/gal: 120 / 1.52 = 78.9 (derived; density common practice, no source).
    // 140 lb N on 121 ac and on 2,900 ac: derived the same way. 1 lb N is 0.66 gal (extension cost studies).
    [Theory]
    [InlineData(120, 1, 78.9, 78.9, 0.1)]
    [InlineData(140, 121, 92.1, 11_145, 0.5)]
    [InlineData(140, 2900, 92.1, 267_105, 0.5)]
    [InlineData(1, 1, 0.66, 0.66, 0.005)]
    public void A_nitrogen_rate_takes_so_many_gallons(double rate, double acres, double perAcre, double all, double within)
    {
        var outcome = Ask.For("aqua", ("n_lb_ac", rate), ("n_pct", 20), ("lb_per_gal", 7.6), ("acres", acres));
        Assert.Equal(perAcre, outcome.Number("gal_ac"), 0.05);
        Assert.Equal(all, outcome.Number("gal"), within);
    }

    // Definition: nitrogen is 14.007 / 17.031 of ammonia; 24.3 % ammonia is the 20 % N of the trade.
    [Fact]
    public void The_trades_aqua_carries_a_pound_and_a_half_of_nitrogen_in_a_gallon() =>
        Assert.Equal(1.52, new AquaGrade(Fraction.FromShare(0.243 * 14.007 / 17.031), Mass.FromPounds(7.6)).NitrogenInGallon.Pounds, 0.004);

    [Fact]
    public void Every_fault_is_told_at_once() =>
        Ask.For("aqua", ("n_lb_ac", -1), ("n_pct", 0), ("lb_per_gal", 0), ("acres", -5)).Refuses(
            (ReckonProblems.TooSmall, "n_lb_ac"), (ReckonProblems.TooSmall, "n_pct"), (ReckonProblems.TooSmall, "lb_per_gal"), (ReckonProblems.TooSmall, "acres"));

    [Fact]
    public void A_grade_that_is_no_aqua_is_questioned()
    {
        var cautions = Ask.For("aqua", ("n_lb_ac", 140), ("n_pct", 32), ("lb_per_gal", 11), ("acres", 10)).Value.Cautions;
        Assert.Contains(cautions, c => c.Contains("20 to 25 % N", StringComparison.Ordinal));
        Assert.Contains(cautions, c => c.Contains("7 to 8 lb", StringComparison.Ordinal));
        Assert.Contains(cautions, c => c.Contains("goggles", StringComparison.Ordinal));
    }

    [Fact]
    public void Aqua_without_nitrogen_never_reaches_the_formula() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Aqua.Needed(NutrientRate.FromPoundsPerAcre(1), Area.FromAcres(1), new AquaGrade(Fraction.Zero, Mass.FromPounds(7.6))));
}
