using Watersown.Water.Flood;

namespace Watersown.Water.Learning;

public sealed class FloodFitTests
{
    private static readonly DepthRate Air = DepthRate.FromInchesPerDay(0.22);

    // One bell curve of 15 % and another of 7 %, both of a logarithm: 1 / √(1/0.15² + 1/0.07²) = 6.343 % (precisions add).
    [Fact]
    public void A_reading_at_the_gate_and_the_order_add_up_as_bell_curves_do()
    {
        var fit = FloodFit.Of(Case(new FloodSighting(SightingKind.Flow, TimeSpan.Zero)));
        Assert.Equal(1, fit.Inflow.Middle, 1e-6);
        Assert.Equal(0.06343, Math.Log(fit.Inflow.High / fit.Inflow.Middle) / 1.644854, 1e-4);
    }

    // Nothing seen: the closed form of the whole field at the farm's figures. 118 ac, 0.60 ft, 0.32 in a day, 14 cfs: 64.94 h (Ponding).
    [Fact]
    public void Before_anything_is_seen_it_is_the_closed_form()
    {
        var fit = FloodFit.Of(Case());
        var closed = Ponding.FillTime(new FloodJob(Area.FromAcres(118), Area.Zero, WaterDepth.FromFeet(0.6), DepthRate.FromInchesPerDay(0.32)), FlowRate.FromCubicFeetPerSecond(14))!.Value;
        Assert.Equal(closed.TotalHours, fit.Full.Middle!.Value.TotalHours, 1e-4);
        Assert.Equal(0.6, fit.Fill.Middle.Feet, 1e-9);
        Assert.True(fit.Full.Low < closed && closed < fit.Full.High);
        // 18 % of 5.2 in and 35 % of 2 in, independent: √((0.18 × 5.2)² + (0.35 × 2)²) / 7.2 = 16.2 %.
        Assert.Equal(0.1623, Math.Log(fit.Fill.High / fit.Fill.Middle) / 1.644854, 1e-3);
    }

    // 30 in a tenth of the fill: by A12 both ends scale, so checks that come 20 % early say 20 % less water.
    [Fact]
    public void Water_that_comes_early_says_that_the_ground_takes_less()
    {
        var slow = FloodFit.Of(Case());
        var early = FloodFit.Of(Case([.. Enumerable.Range(1, 5).Select(c => new FloodSighting(SightingKind.Wet, slow.Checks[c].FirstWet.Middle!.Value * 0.8) { Check = c }), new FloodSighting(SightingKind.Flow, TimeSpan.Zero)]));
        Assert.InRange(early.Fill.Middle.Feet, 0.48, 0.56);
        Assert.Equal(0.8, early.Full.Middle!.Value / slow.Full.Middle!.Value, 0.02);
        Assert.True(early.Fill.High < WaterDepth.FromFeet(0.6));
    }

    // 1.6 in in four days with no water coming is 0.40 in a day: 0.18 of it into the ground.
    [Fact]
    public void A_pond_that_falls_while_no_water_comes_tells_the_seepage()
    {
        FloodSighting Fell(int i) => new(SightingKind.Drop, TimeSpan.FromDays(10 + i)) { Check = i, Depth = WaterDepth.FromInches(1.6), Over = TimeSpan.FromDays(4) };
        var one = FloodFit.Of(Case(Fell(0))).Seepage;
        var five = FloodFit.Of(Case([.. Enumerable.Range(0, 5).Select(Fell)])).Seepage;
        Assert.True(one.Middle > DepthRate.FromInchesPerDay(0.10));
        Assert.InRange(five.Middle.InchesPerDay, 0.15, 0.185);
        Assert.True(five.High / five.Low < one.High / one.Low);
    }

    [Fact]
    public void Still_dry_says_only_that_it_is_not_there_yet()
    {
        var plain = FloodFit.Of(Case());
        FloodFitted At(double share) => FloodFit.Of(Case(new FloodSighting(SightingKind.StillDry, plain.Checks[3].FirstWet.Middle!.Value * share) { Check = 3 }));
        Assert.Equal(plain.Full.Middle!.Value.TotalHours, At(0.5).Full.Middle!.Value.TotalHours, 1e-6);
        Assert.True(At(1.3).Full.Middle > plain.Full.Middle * 1.05);
    }

    // S = m A: 3.2 cfs hold 228 ac at 0.334 in a day; 309 ac are never covered.
    [Fact]
    public void A_flow_that_cannot_hold_the_field_is_told_to_be_never()
    {
        var fit = FloodFit.Of(Case(cfs: 3.2, acres: 309));
        Assert.Null(fit.Full.Middle);
        Assert.Null(fit.Full.High);
        Assert.NotNull(fit.Checks[0].Full.Middle);
    }

    // 4.2 cfs against 4.03 to hold 300 ac: a little more loss and it never ends.
    [Fact]
    public void Close_to_a_stall_the_later_end_is_never()
    {
        var fit = FloodFit.Of(Case(cfs: 4.2, acres: 300));
        Assert.NotNull(fit.Full.Middle);
        Assert.Null(fit.Full.High);
    }

    [Fact]
    public void Water_seen_where_the_farm_says_it_never_comes_is_believed()
    {
        // As it goes with 4.3 cfs, where 3.2 are ordered.
        var truth = FloodFit.Of(Case(cfs: 4.3, acres: 309));
        var fit = FloodFit.Of(Case([.. Enumerable.Range(1, 5).Select(c => new FloodSighting(SightingKind.Wet, truth.Checks[c].FirstWet.Middle!.Value) { Check = c })], cfs: 3.2, acres: 309));
        Assert.True(fit.Inflow.Middle > 1.1);
        Assert.DoesNotContain(fit.Verdicts, v => v.Disagrees);
        Assert.NotNull(fit.Checks[5].FirstWet.Middle);
    }

    private static FloodCase Case(params FloodSighting[] seen) => Case(seen, 14, 118);

    private static FloodCase Case(double cfs, double acres) => Case([], cfs, acres);

    private static FloodCase Case(FloodSighting[] seen, double cfs, double acres) => new()
    {
        Network = new FloodNetwork
        {
            Checks = [.. Enumerable.Range(0, 6).Select(i => new FloodCheck("ck", Area.FromAcres(acres / 6), WaterDepth.Zero, WaterDepth.FromInches(2)))],
            Inlets = [new FloodInlet("s", 0, [new FlowStep(TimeSpan.Zero, FlowRate.FromCubicFeetPerSecond(cfs))])],
        },
        Before = FloodFigures.OfFarm(WaterDepth.FromFeet(0.60), DepthRate.FromInchesPerDay(0.10), WaterDepth.FromInches(2)),
        Evaporation = Air,
        InflowSpread = LearningSpreads.Order,
        StartSpread = TimeSpan.FromHours(1),
        Sightings = [.. seen],
    };
}
