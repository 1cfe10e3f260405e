namespace Watersown.Quantities;

/// <summary>Water units as extension services print them.</summary>
public sealed class PrintedConversionsReference
{
    // Exact from 1 gal = 231 in³, 1 ac = 43,560 ft², 1 ft = 0.3048 m: 448.831 gpm, 1.983471 ac-ft/day, 0.0283168 m³/s.
    [Fact]
    public void One_cfs()
    {
        var flow = FlowRate.FromCubicFeetPerSecond(1);
        Assert.Equal(448.831, flow.GallonsPerMinute, 0.001);
        Assert.Equal(1.983471, flow.AcreFeetPerDay, 1e-6);
        Assert.Equal(0.028316847, flow.CubicMetersPerSecond, 1e-9);
    }

    // University of Missouri Extension G1681, 1993, and University of California Cooperative Extension, Pub. IG6-96, read: 325,851 gal.
    [Fact]
    public void One_acre_foot()
    {
        var volume = Area.FromAcres(1) * WaterDepth.FromFeet(1);
        Assert.Equal(325_851, volume.Gallons, 0.5);
        Assert.Equal(1233.48184, volume.CubicMeters, 1e-5);
    }

    // University of Missouri Extension G1681, 1993, read: 450 gpm are an acre-inch an hour and 2 ac-ft a day; good to 0.8 %.
    [Fact]
    public void The_field_rule_of_450()
    {
        var flow = FlowRate.FromGallonsPerMinute(450);
        Assert.Equal(1, flow.AcreFeetPerDay / 2, 0.009);
        Assert.Equal(24, flow.AcreFeetPerDay * 12, 0.15);
    }

    // Arkansas extension, read: 2,000 gpm at 10, 15 and 20 gpm/ac serve 200, 133 and 100 ac; 30 ac-in are 814,620 gal. Derived: 1 gpm/ac is 0.05303 in/day.
    [Fact]
    public void Flow_to_an_acre()
    {
        Assert.Equal(0.05303, (FlowRate.FromGallonsPerMinute(1) * TimeSpan.FromDays(1)).CubicMeters / Area.FromAcres(1).SquareMeters / 0.0254, 1e-5);
        Assert.Equal(814_620, (Area.FromAcres(1) * WaterDepth.FromInches(30)).Gallons, 10.0);
        Assert.Equal([200.0, 133.0, 100.0], new[] { 10.0, 15, 20 }.Select(each => Math.Round(FlowRate.FromGallonsPerMinute(2000) / FlowRate.FromGallonsPerMinute(each))));
    }

    // NIST Handbook 44, from memory: the international acre is 4,046.8564224 m².
    [Fact]
    public void One_acre() => Assert.Equal(4046.8564224, Area.FromAcres(1).SquareMeters, 1e-7);

    // Linquist et al., Irrigation Science 33:375-385, 2015, read in mm: 862, 1,839 and 269 are 2.83, 6.03 and 0.88 ft.
    [Theory]
    [InlineData(862, 2.83)]
    [InlineData(1839, 6.03)]
    [InlineData(269, 0.88)]
    public void A_season_in_feet(double millimeters, double feet) => Assert.Equal(feet, WaterDepth.FromMillimeters(millimeters).Feet, 0.005);
}
