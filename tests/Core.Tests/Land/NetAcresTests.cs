using CsCheck;

namespace Watersown.Land;

public sealed class NetAcresTests
{
    // Worked by hand from the rule: 150.42 × (1 − 0.028 − 0.004 × 7); 40 × (1 − 0.028 − 0.004 × 3 − 0.01); common practice, no source.
    [Theory]
    [InlineData(150.42, 7, 142.0)]
    [InlineData(40.0, 3, 38.0)]
    [InlineData(152.08, 3, 146.0)]
    public void Net_is_gross_less_what_levees_and_edges_take(double gross, int checks, double net) =>
        Assert.Equal(net, NetAcres.Estimate(Area.FromAcres(gross), checks).Acres, 0.01);

    [Fact]
    public void More_checks_never_leave_more_land() =>
        Gen.Select(Gen.Double[1, 400], Gen.Int[1, 399]).Sample((gross, checks) =>
        {
            var (few, more) = (NetAcres.Estimate(Area.FromAcres(gross), checks), NetAcres.Estimate(Area.FromAcres(gross), checks + 1));
            return more <= few && more.Acres > 0.87 * gross;
        });

    [Fact]
    public void A_field_without_a_check_is_a_bug() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => NetAcres.Estimate(Area.FromAcres(100), 0));
}
