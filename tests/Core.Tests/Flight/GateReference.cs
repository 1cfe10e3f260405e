namespace Watersown.Flight;

/// <summary>Calibration against published figures and definitions.</summary>
public sealed class GateReference
{
    // US Army TM 5-3740-218-13P, acreage chart, factor 0.0020202 (read): 120 mph × 50 ft. Others derived from 43,560/88 = 495.
    [Theory]
    [InlineData(120, 50, 12.1212)]
    [InlineData(140, 70, 19.798)]
    [InlineData(120, 60, 14.5455)]
    public void Acres_a_minute_are_speed_times_swath_over_495(double mph, double feet, double acres)
    {
        var answer = Ask.For("land-rate", ("speed_mph", mph), ("swath_ft", feet));
        Assert.Equal(acres, answer.Number("ac_per_min"), 0.001);
        Assert.Equal(mph * feet * 0.0020202, answer.Number("ac_per_min"), 0.001);
    }

    // Derived: 120 mph × 60 ft is 5.8863 ha/min; 190 km/h × 18 m is 342 ha/h.
    [Fact]
    public void The_same_in_metric()
    {
        Assert.Equal(5.8863 * 60, Ask.For("land-rate", ("speed_mph", 120), ("swath_ft", 60)).Number("ha_per_h"), 0.01);
        Assert.Equal(342, LandRate.Of(Speed.FromKilometersPerHour(190), Length.FromMeters(18)).HectaresPerHour, 1e-9);
    }

    // Derived: 150 lb dry × 0.88 / 0.70 = 188.571 lb soaked/ac at 120 mph and 60 ft.
    [Fact]
    public void Soaked_seed_through_the_gate_is_rate_times_land()
    {
        var answer = Ask.For("gate-flow", ("rate_wet_lb_ac", 188.571), ("speed_mph", 120), ("swath_ft", 60));
        Assert.Equal(2742.86, answer.Number("lb_per_min"), 0.1);
        Assert.Equal(20.736, answer.Number("kg_per_s"), 0.001);
    }

    // Derived: 190 kg/ha, 190 km/h, 18 m: 1,083 kg/min.
    [Fact]
    public void The_gate_in_metric() =>
        Assert.Equal(1083, GateFlow.Of(SoakedRate.FromKilogramsPerHectare(190), Speed.FromKilometersPerHour(190), Length.FromMeters(18)).KilogramsPerSecond * 60, 0.1);

    // University of Florida IFAS, Dry chemical applicator calibration, table 1 (read): 20 lb on 435 × 10 ft, printed 200 lb/ac.
    // eXtension, Calibrating a Fire Ant Bait Spreader, 2007 (read): 2 - 1.8125 lb on 200 × 23 ft, printed 1.77 lb/ac.
    // Derived: 5 passes of 2,640 × 60 ft that use 3,500 lb are 18.182 ac at 192.5 lb/ac.
    [Theory]
    [InlineData(20, 1, 435, 10, 200, 0.5)]
    [InlineData(0.1875, 1, 200, 23, 1.77, 0.01)]
    [InlineData(3500, 5, 2640, 60, 192.5, 0.001)]
    public void Weight_used_over_land_covered_is_the_rate(double used, int passes, double length, double swath, double rate, double tolerance) =>
        Assert.Equal(rate, Ask.For("weigh-out", ("used_wet_lb", used), ("passes", passes), ("pass_ft", length), ("swath_ft", swath)).Number("rate_wet_lb_ac"), tolerance);

    // Derived: 2,640 × 60 ft is 3.6364 ac.
    [Fact]
    public void A_half_mile_pass_of_sixty_feet_covers_three_and_two_thirds_acres() =>
        Assert.Equal(3.6364, Ask.For("weigh-out", ("used_wet_lb", 1), ("passes", 1), ("pass_ft", 2640), ("swath_ft", 60)).Number("area_ac"), 0.0001);

    // California Rice Research Board, Planting by air (read): a 400 gal hopper and about 2,000 lb; ratio derived.
    [Fact]
    public void Two_thousand_pounds_in_400_gallons_weigh_37_pounds_a_cubic_foot()
    {
        var volume = Volume.FromGallons(400);
        Assert.Equal(37.40, 2000 / volume.CubicFeet, 0.01);
        Assert.Equal(2000, Hopper.ByVolume(volume, Fraction.One, SoakedSeed.FromPounds(37.40), Volume.FromCubicFeet(1)).Pounds, 0.5);
    }

    // Derived from 231 in³ a gallon: a 500 gal hopper at 36, 38, 40, 42 and 45 lb/ft³, full and nine tenths full.
    [Theory]
    [InlineData(36, 2406, 2166)]
    [InlineData(38, 2540, 2286)]
    [InlineData(40, 2674, 2406)]
    [InlineData(42, 2807, 2527)]
    [InlineData(45, 3008, 2707)]
    public void What_a_500_gallon_hopper_holds(double bulk, double full, double nineTenths)
    {
        Assert.Equal(full, Ask.For("hopper", ("hopper_gal", 500), ("bulk_wet_lb_ft3", bulk), ("fill_pct", 100)).Number("load_wet_lb"), 0.6);
        Assert.Equal(nineTenths, Ask.For("hopper", ("hopper_gal", 500), ("bulk_wet_lb_ft3", bulk), ("fill_pct", 90)).Number("load_wet_lb"), 0.6);
    }
}
