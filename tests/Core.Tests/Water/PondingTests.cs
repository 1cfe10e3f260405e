namespace Watersown.Water;

public sealed class PondingTests
{
    // Volume balance in closed form, worked by hand.
    [Theory]
    [InlineData(14, 1.41)]
    [InlineData(20, 0.82)]
    public void A_field_two_thirds_wet_fills_as_its_gate_allows(double gate, double days)
    {
        var others = FlowRate.FromAcreFeetPerDay((270 * 0.26 / 12) + (96 * 0.32 / 12));
        var loss = DepthRate.FromInchesPerDay(0.32);
        var job = new FloodJob(Area.FromAcres(118.0 / 3), Area.FromAcres(118 * 2.0 / 3), WaterDepth.FromFeet(0.60), loss);
        var time = Ponding.FillTime(job, FlowRate.FromCubicFeetPerSecond(gate) - others);
        Assert.Equal(days, time!.Value.TotalDays, 0.01);
    }

    // University of Missouri Extension G1681, 1993, read: 60 ac, 2 in deep, 900 gpm: 60 h by its rule of 450 gpm to an acre-inch an hour, which is
    // 0.26 % high. Derived: 100 ac × 5 in / 10 cfs = 2.1007 days.
    [Theory]
    [InlineData(60, 2, 900, 60, 0.35)]
    [InlineData(100, 5, 4488.31, 50.417, 0.002)]
    public void With_nothing_lost_it_is_acres_times_depth_over_flow(double acres, double inches, double gpm, double hours, double within) =>
        Assert.Equal(hours, Ponding.FillTime(new FloodJob(Area.FromAcres(acres), Area.Zero, WaterDepth.FromInches(inches), DepthRate.Zero), FlowRate.FromGallonsPerMinute(gpm))!.Value.TotalHours, within);

    [Fact]
    public void A_well_that_cannot_hold_its_block_never_fills_it_and_says_where_it_stops()
    {
        var loss = DepthRate.FromInchesPerDay(0.288);
        var supply = FlowRate.FromCubicFeetPerSecond(3.2);
        var job = new FloodJob(Area.FromAcres(309), Area.Zero, WaterDepth.FromFeet(0.57), loss);
        Assert.Null(Ponding.FillTime(job, supply));
        Assert.Equal(264.5, Ponding.StallArea(supply, loss).Acres, 0.5);
    }

    [Fact]
    public void Stored_and_lost_water_come_to_what_was_given()
    {
        var job = new FloodJob(Area.FromAcres(118), Area.Zero, WaterDepth.FromFeet(0.6), DepthRate.FromInchesPerDay(0.32));
        var supply = FlowRate.FromCubicFeetPerSecond(10);
        var time = Ponding.FillTime(job, supply)!.Value;
        double covered = 0, lost = 0, step = time.TotalSeconds / 200_000;
        for (var i = 0; i < 200_000; i++)
        {
            var losing = covered * job.Loss.MetersPerSecond;
            lost += losing * step;
            covered += (supply.CubicMetersPerSecond - losing) / job.Fill.Meters * step;
        }

        Assert.Equal(job.Dry.SquareMeters, covered, job.Dry.SquareMeters * 1e-4);
        Assert.Equal(Ponding.Taken(supply, time).CubicMeters, (job.Dry * job.Fill).CubicMeters + lost, 20.0);
    }
}
