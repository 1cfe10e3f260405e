using CsCheck;
using Watersown.Water.Flood;

namespace Watersown.Water.Learning;

public sealed class FloodAdvanceTests
{
    private const double Never = 400 * 86400.0;
    private static readonly double Cfs = FlowRate.FromCubicFeetPerSecond(1).CubicMetersPerSecond;

    // Ponding's closed form over the first k checks is when the k-th is covered.
    [Fact]
    public void Every_check_is_covered_when_the_closed_form_of_all_ground_down_to_it_says() =>
        (from acres in Gen.Double[3, 40].Array[1, 9]
         from feet in Gen.Double[0.3, 1.2]
         from lost in Gen.Double[0, 0.6]
         from cfs in Gen.Double[0.5, 20]
         select (acres, feet, lost, cfs)).Sample(t =>
        {
            var (fill, loss) = (WaterDepth.FromFeet(t.feet), DepthRate.FromInchesPerDay(t.lost));
            var run = Run(Field(t.acres, cfs: t.cfs), fill, loss);
            for (var k = 0; k < t.acres.Length; k++)
            {
                var closed = Ponding.FillTime(new FloodJob(Area.FromAcres(t.acres[..(k + 1)].Sum()), Area.Zero, fill, loss), FlowRate.FromCubicFeetPerSecond(t.cfs));
                if (closed is null || closed.Value.TotalSeconds > Never) Assert.Equal(double.PositiveInfinity, run.Full[k]);
                else Assert.Equal(1, run.Full[k] / closed.Value.TotalSeconds, 1e-6);
            }
        });

    // Boxes of 20,000 ft hold nothing back: the stepped flood of the same checks, within two in a hundred.
    [Fact]
    public void It_is_the_stepped_flood_where_boxes_hold_nothing_back()
    {
        var network = Field([20, 12, 30, 25], cfs: 10);
        var (fill, loss) = (WaterDepth.FromInches(7.2), DepthRate.FromInchesPerDay(0.32));
        var stepped = Flooding.Run(
            network with
            {
                Checks = [.. network.Checks.Select(c => c with { TakeUp = fill - WaterDepth.FromInches(2), Front = WaterDepth.FromInches(2), Percolation = loss })],
                Boxes = [.. Enumerable.Range(0, 3).Select(i => new FloodBox("box", i, i + 1, Length.FromFeet(20_000), WaterDepth.FromInches(2)))],
            },
            TimeSpan.FromDays(12));
        var run = Run(network, fill, loss);
        for (var i = 0; i < 4; i++) Assert.Equal(1, run.Full[i] / stepped.Checks[i].Full!.Value.TotalSeconds, 0.02);
    }

    // 24 h without water over 20 covered acres at 0.24 in a day: 0.24 × 20 ac-in to be made up at 9.91736 ac-in an hour and cfs.
    [Fact]
    public void What_was_lost_while_no_water_came_is_made_up_first()
    {
        FloodNetwork Field(bool stops) => FloodAdvanceTests.Field([20, 20], 10) with
        {
            Inlets = [new FloodInlet("s", 0, stops ? [Step(0, 10), Step(hours: 20 * 6 / 9.91736, 0), Step((20 * 6 / 9.91736) + 24, 10)] : [Step(0, 10)])],
        };
        var (without, with) = (Run(Field(false), WaterDepth.FromInches(6), DepthRate.FromInchesPerDay(1e-9)), Run(Field(true), WaterDepth.FromInches(6), DepthRate.FromInchesPerDay(1e-9)));
        Assert.Equal(without.Full[1] + (24 * 3600), with.Full[1], 5.0);
        var loses = DepthRate.FromInchesPerDay(0.24);
        var (dry, stopped) = (Run(Field(false), WaterDepth.FromInches(6), loses), Run(Field(true), WaterDepth.FromInches(6), loses));
        Assert.Equal(24 + (0.24 * 20 / 9.91736), (stopped.Full[1] - dry.Full[1]) / 3600, 0.05);
    }

    [Fact]
    public void Water_of_a_second_inlet_that_its_ground_needs_no_more_goes_to_the_rest()
    {
        var network = Field([30, 30, 5, 5], 0) with { Inlets = [new FloodInlet("s", 0, [Step(0, 5)]), new FloodInlet("s", 2, [Step(0, 5)])] };
        var (fill, loss) = (WaterDepth.FromFeet(0.6), DepthRate.FromInchesPerDay(0.3));
        var run = Run(network, fill, loss);
        Assert.True(run.Full[3] < run.Full[0]);
        Assert.Equal(0, run.FirstWet[2]);
        // Nothing is lost by letting it in at two places but what ground loses that is wet sooner: the closed form, within a hundredth.
        var closed = Ponding.FillTime(new FloodJob(Area.FromAcres(70), Area.Zero, fill, loss), FlowRate.FromCubicFeetPerSecond(10))!.Value;
        Assert.Equal(1, run.Full.Max() / closed.TotalSeconds, 0.01);
    }

    [Fact]
    public void A_pond_falls_by_its_loss_and_never_below_the_ground()
    {
        var network = Field([20], 0) with { Checks = [Check(20) with { Covered = Fraction.One }], Inlets = [] };
        var advance = new FloodAdvance(network, [(2 * 86400, 0), (40 * 86400.0, -1)], Never);
        advance.Run(WaterDepth.FromInches(5).Meters, WaterDepth.FromInches(2).Meters, DepthRate.FromInchesPerDay(0.3).MetersPerSecond, 1);
        Assert.Equal(1.4, WaterDepth.FromMeters(advance.Depths[0]).Inches, 1e-9);
        Assert.Equal(0, advance.Depths[1]);
    }

    private static FloodCheck Check(double acres) => new("ck", Area.FromAcres(acres), WaterDepth.Zero, WaterDepth.FromInches(2));

    private static FlowStep Step(double hours, double cfs) => new(TimeSpan.FromHours(hours), FlowRate.FromCubicMetersPerSecond(cfs * Cfs));

    private static FloodNetwork Field(double[] acres, double cfs) => new() { Checks = [.. acres.Select(Check)], Inlets = [new FloodInlet("s", 0, [Step(0, cfs)])] };

    private static FloodAdvance Run(FloodNetwork network, WaterDepth fill, DepthRate loss)
    {
        var advance = new FloodAdvance(network, [], Never);
        advance.Run(fill.Meters - 0.0508, 0.0508, loss.MetersPerSecond, 1);
        return advance;
    }
}
