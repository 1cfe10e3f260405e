using Watersown.Hydraulics;

namespace Watersown.Water.Flood;

public sealed class FloodingTests
{
    private static readonly DepthRate Loss = DepthRate.FromInchesPerDay(0.35);

    // Volume balance in closed form: t = (V/m) ln((S − m A0)/(S − m A1)), worked in Ponding.
    [Theory]
    [InlineData(118, 0.60, 0.32, 12)]
    [InlineData(309, 0.57, 0.288, 9)]
    [InlineData(40, 0.75, 0.44, 1)]
    public void One_check_fills_as_the_closed_form_says(double acres, double feet, double inchesPerDay, double cfs)
    {
        var job = new FloodJob(Area.FromAcres(acres), Area.Zero, WaterDepth.FromFeet(feet), DepthRate.FromInchesPerDay(inchesPerDay));
        var network = Single(job, FlowRate.FromCubicFeetPerSecond(cfs));
        var closed = Ponding.FillTime(job, FlowRate.FromCubicFeetPerSecond(cfs))!.Value;
        var run = Flooding.Run(network, closed * 1.2);
        Assert.Equal(1, run.Checks[0].Full!.Value / closed, 1e-3);
    }

    [Fact]
    public void A_well_that_cannot_hold_its_block_stops_where_holding_takes_it_all()
    {
        var job = new FloodJob(Area.FromAcres(309), Area.Zero, WaterDepth.FromFeet(0.57), DepthRate.FromInchesPerDay(0.288));
        var supply = FlowRate.FromCubicFeetPerSecond(3.2);
        var run = Flooding.Run(Single(job, supply), TimeSpan.FromDays(400));
        Assert.Null(run.AllFull);
        Assert.Equal(Ponding.StallArea(supply, job.Loss).Acres, 309 * run.Checks[0].Covered.Share, 1.0);
    }

    // Four 20-acre checks, 2 in of flood and 1.4 in of soil: with no loss each takes 6.86 h at 10 cfs (arithmetic, A (d + S) / Q).
    [Fact]
    public void Checks_in_a_row_fill_one_after_the_other()
    {
        var run = Flooding.Run(Row(4, DepthRate.Zero, 200_000), TimeSpan.FromHours(40));
        for (var i = 0; i < 4; i++) Assert.Equal(20 * 3.4 * (i + 1) / 9.91736, run.Checks[i].Full!.Value.TotalHours, 0.05);
        Assert.True(run.Checks.Zip(run.Checks.Skip(1)).All(p => p.First.Full < p.Second.Full && p.First.FirstWet < p.Second.FirstWet));
    }

    // t_i = A (d + S) / (Q − l ΣA): 7.06, 14.35, 21.87, 29.64 h, losing for all the time that a check fills; the truth is a little sooner.
    [Fact]
    public void The_planning_rule_is_a_little_late()
    {
        double[] rule = [7.06, 14.35, 21.87, 29.64];
        var run = Flooding.Run(Row(4, Loss, 200_000), TimeSpan.FromHours(40));
        for (var i = 0; i < 4; i++) Assert.InRange(run.Checks[i].Full!.Value.TotalHours, rule[i] * 0.98, rule[i] * 1.002);
    }

    // 20 acres over a 4-ft sill from 4 in to 1 in: t = 2A / (3.33 L) (H1^−0.5 − H0^−0.5) = 62.9 h, integrated by hand.
    [Fact]
    public void A_pond_runs_out_over_a_free_sill()
    {
        var network = new FloodNetwork
        {
            Checks = [new FloodCheck("ck", Area.FromAcres(20), WaterDepth.Zero, WaterDepth.FromInches(1)) { Covered = Fraction.FromShare(1), Depth = WaterDepth.FromInches(4) }],
            Boxes = [new FloodBox("drain", 0, null, Length.FromFeet(4), WaterDepth.Zero) { Kind = WeirKind.Suppressed }],
        };
        var run = Flooding.Run(network, TimeSpan.FromHours(62.9));
        Assert.Equal(1.0, run.Checks[0].Depth.Inches, 0.002);
    }

    // 5 in to 2 in at 0.35 in a day: 8.57 days (arithmetic).
    [Fact]
    public void A_pond_goes_down_by_its_loss()
    {
        var network = new FloodNetwork
        {
            Checks = [new FloodCheck("ck", Area.FromAcres(20), WaterDepth.Zero, WaterDepth.FromInches(1)) { Covered = Fraction.FromShare(1), Depth = WaterDepth.FromInches(5), Percolation = DepthRate.FromInchesPerDay(0.05) }],
            Air = [new FloodAir(TimeSpan.Zero, DepthRate.FromInchesPerDay(0.30), DepthRate.Zero)],
        };
        var run = Flooding.Run(network, TimeSpan.FromDays(3 / 0.35));
        Assert.Equal(2.0, run.Checks[0].Depth.Inches, 1e-6);
    }

    // Head over a 4-ft contracted box by Francis: 1 cfs 2.15 in, 3 cfs 4.50 in, 8 cfs 8.76 in (inverse of the published formula).
    [Theory]
    [InlineData(1, 2.15)]
    [InlineData(3, 4.50)]
    [InlineData(8, 8.76)]
    public void A_check_that_passes_water_on_stands_over_its_boards(double cfs, double inches)
    {
        var run = Flooding.Run(Row(2, DepthRate.Zero, 4, cfs), TimeSpan.FromDays(60));
        Assert.Equal(2 + inches, run.Checks[0].Depth.Inches, 0.01);
        Assert.Equal(cfs, run.Boxes[0].Most.CubicFeetPerSecond, 0.01);
    }

    [Fact]
    public void A_box_drowned_from_below_holds_the_upper_check_higher()
    {
        var free = Row(2, DepthRate.Zero, 4, 2) with { };
        var level = free with { Checks = [free.Checks[0], free.Checks[1] with { Ground = WaterDepth.Zero }] };
        Assert.True(Flooding.Run(level, TimeSpan.FromDays(60)).Checks[0].Depth.Inches > Flooding.Run(free, TimeSpan.FromDays(60)).Checks[0].Depth.Inches + 0.5);
    }

    // Boards as wide as a field, and the water below risen over them: two ponds joined by next to nothing. They level, in steps of
    // half a minute and not of a second.
    [Fact]
    public void Ponds_over_boards_as_wide_as_a_field_level_without_steps_of_a_second()
    {
        var row = Row(3, DepthRate.FromInchesPerDay(0.3), 50_000, 8);
        var network = row with { Checks = [.. row.Checks.Select((c, i) => c with { Ground = WaterDepth.FromFeet(-0.2 * i) })], Boxes = [row.Boxes[0], row.Boxes[1]] };
        var run = Flooding.Run(network, TimeSpan.FromDays(4));
        Assert.InRange(run.Steps, 1, 15_000);
        var surface = run.Checks.Select((c, i) => (c.Depth + WaterDepth.FromFeet(-0.2 * i)).Millimeters).ToList();
        Assert.True(run.Checks[2].Depth > WaterDepth.FromFeet(0.2) + WaterDepth.FromInches(2), "the lowest pond never rose over the boards");
        Assert.Equal(surface[1], surface[2], 1.0);
        Assert.True(surface[0] >= surface[1]);
    }

    [Fact]
    public void Half_the_step_changes_nothing_that_prints()
    {
        var network = Row(10, Loss, 4);
        var coarse = Flooding.Run(network, TimeSpan.FromDays(25));
        var fine = Flooding.Run(network, TimeSpan.FromDays(25), new FloodOptions { StepError = WaterDepth.FromMeters(5e-6 / 8) });
        foreach (var (a, b) in coarse.Checks.Zip(fine.Checks))
        {
            Assert.Equal(b.Full!.Value.TotalMinutes, a.Full!.Value.TotalMinutes, 0.5);
            Assert.Equal(b.Depth.Millimeters, a.Depth.Millimeters, 0.02);
        }
    }

    [Fact]
    public void A_ditch_lifts_what_its_pump_can_and_lets_the_rest_go()
    {
        var network = Row(2, DepthRate.Zero, 4, 5);
        network = network with
        {
            Boxes = [network.Boxes[0], network.Boxes[1] with { Ditch = 0 }],
            Ditches = [new FloodDitch("return", 0, FlowRate.FromCubicFeetPerSecond(2))],
        };
        var (early, run) = (Flooding.Run(network, TimeSpan.FromDays(30)), Flooding.Run(network, TimeSpan.FromDays(40)));
        // 5 in, 2 lifted back: 7 over the first box, 7 over the drain, 5 away.
        Assert.Equal(7, run.Boxes[0].Most.CubicFeetPerSecond, 0.01);
        Assert.Equal(50 * 1.983471, (run.Balance.Left - early.Balance.Left).AcreFeet, 0.01);
    }

    [Fact]
    public void Inlets_of_a_short_source_get_less_in_proportion()
    {
        FlowStep[] asked = [new(TimeSpan.Zero, FlowRate.FromCubicFeetPerSecond(6)), new(TimeSpan.FromHours(5), FlowRate.FromCubicFeetPerSecond(2))];
        var network = Row(2, DepthRate.Zero, 4) with
        {
            Inlets = [new FloodInlet("NT-1", 0, [asked[0]]), new FloodInlet("nt-1", 1, [.. asked])],
            Caps = ImmutableSortedDictionary.Create<string, FlowRate>(StringComparer.OrdinalIgnoreCase).Add("NT-1", FlowRate.FromCubicFeetPerSecond(9)),
        };
        var shares = FloodShares.Of(network);
        Assert.Equal([4.5, 6.0], shares[0].Flow.Select(f => f.Flow.CubicFeetPerSecond), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal([4.5, 2.0], shares[1].Flow.Select(f => f.Flow.CubicFeetPerSecond), (a, b) => Math.Abs(a - b) < 1e-9);
    }

    internal static FloodNetwork Row(int count, DepthRate loss, double feet, double cfs = 10) => new()
    {
        Checks = [.. Enumerable.Range(0, count).Select(i => new FloodCheck($"ck {i + 1}", Area.FromAcres(20), WaterDepth.FromInches(1.4), WaterDepth.FromInches(2)) { Ground = WaterDepth.FromFeet(-i), Percolation = loss })],
        Boxes = [.. Enumerable.Range(0, count).Select(i => new FloodBox($"box {i + 1}", i, i + 1 < count ? i + 1 : null, Length.FromFeet(feet), WaterDepth.FromInches(2)))],
        Inlets = [new FloodInlet("source", 0, [new FlowStep(TimeSpan.Zero, FlowRate.FromCubicFeetPerSecond(cfs))])],
    };

    private static FloodNetwork Single(FloodJob job, FlowRate supply) => new()
    {
        Checks = [new FloodCheck("field", job.Dry, job.Fill * 0.5, job.Fill * 0.5) { Percolation = job.Loss }],
        Inlets = [new FloodInlet("source", 0, [new FlowStep(TimeSpan.Zero, supply)])],
    };
}
