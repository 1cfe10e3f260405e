namespace Watersown.Water;

public sealed class PondSaltTests
{
    private static readonly DepthRate Air = DepthRate.FromMillimetersPerDay(7.6);
    private static readonly DepthRate Ground = DepthRate.FromMillimetersPerDay(1.8);

    // 0.6 dS/m from 5 in to 2 in at 0.30 and 0.05 in a day: 1.316 (salt balance by hand).
    [Fact]
    public void A_held_pond_grows_salty_as_it_goes_down() =>
        Assert.Equal(1.316, PondSalt.Held(0.6, WaterDepth.FromInches(5), WaterDepth.FromInches(2), DepthRate.FromInchesPerDay(0.30), DepthRate.FromInchesPerDay(0.05)), 0.001);

    // Inflow of 0.6 dS/m, 125 mm kept level: 0.6, 1.092, 1.489, 2.066 after 0, 15, 30, 60 days; 3.133 in the end (salt balance by hand).
    [Theory]
    [InlineData(0, 0.6)]
    [InlineData(15, 1.092)]
    [InlineData(30, 1.489)]
    [InlineData(60, 2.066)]
    [InlineData(20000, 3.133)]
    public void A_pond_kept_level_grows_salty_to_an_end(double days, double salt) =>
        Assert.Equal(salt, PondSalt.KeptLevel(0.6, 0.6, WaterDepth.FromMillimeters(125), Air, Ground, TimeSpan.FromDays(days)), 0.001);

    [Fact]
    public void Where_nothing_percolates_all_salt_stays() =>
        Assert.Equal(0.6 + (0.6 * 7.6 * 30 / 125), PondSalt.KeptLevel(0.6, 0.6, WaterDepth.FromMillimeters(125), Air, DepthRate.Zero, TimeSpan.FromDays(30)), 1e-9);

    // FAO-29, Table 4, rice, from memory: 90, 75 and 50 % at 3.8, 5.1 and 7.2 dS/m.
    [Theory]
    [InlineData(3.0, 100)]
    [InlineData(3.8, 90)]
    [InlineData(5.1, 75)]
    [InlineData(7.2, 50)]
    [InlineData(40, 0)]
    public void Salt_takes_yield(double soil, double percent) => Assert.Equal(percent, PondSalt.YieldLeft(soil).Percent, 1.0);
}
