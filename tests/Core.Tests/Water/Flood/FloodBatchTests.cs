using Watersown.Hydraulics;

namespace Watersown.Water.Flood;

public sealed class FloodBatchTests
{
    private static readonly TimeSpan Span = TimeSpan.FromHours(96);

    // The whole farm as one field, by the farm's own sum: 51.4 cfs, 0.584 ft to fill, 0.0258 ft a day lost: 29.9 days, and 16.6 by the plain sum.
    [Fact]
    public void The_whole_farm_takes_the_days_of_the_closed_form()
    {
        var job = new FloodJob(Area.FromAcres(2898), Area.Zero, WaterDepth.FromFeet(0.584), DepthRate.FromFeetPerDay(0.0258));
        var supply = FlowRate.FromCubicFeetPerSecond(51.4);
        var network = new FloodNetwork
        {
            Checks = [new FloodCheck("farm", job.Dry, job.Fill * 0.5, job.Fill * 0.5) { Percolation = job.Loss }],
            Inlets = [new FloodInlet("all", 0, [new FlowStep(TimeSpan.Zero, supply)])],
        };
        var full = FloodBatch.Run([network], TimeSpan.FromDays(40))[0].AllFull!.Value;
        Assert.Equal(29.9, full.TotalDays, 0.1);
        Assert.Equal(1, full / Ponding.FillTime(job, supply)!.Value, 1e-3);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_general_solver_comes_to_the_same_depths_over_free_and_drowned_weirs(bool drowned)
    {
        var network = drowned ? Drowned() : FloodingTests.Row(6, DepthRate.FromInchesPerDay(0.3), 8, 12) with { Air = [new FloodAir(TimeSpan.Zero, DepthRate.FromInchesPerDay(0.1), DepthRate.Zero)] };
        var (general, run) = (GeneralFlood.Depths(network, Span, 15), FloodBatch.Run([network], Span)[0]);
        for (var i = 0; i < general.Length; i++) Assert.Equal(general[i] * 1000, run.Checks[i].Depth.Millimeters, 0.01);
        if (drowned) Assert.True(run.Checks[1].Depth - WaterDepth.FromMeters(0.03) > network.Boxes[0].Boards, "the case has no drowned box");
        else Assert.True(run.Checks[5].Depth > WaterDepth.Zero, "water never came to the last check");
    }

    [Fact]
    public void An_eighth_of_the_error_changes_nothing_that_prints()
    {
        ImmutableArray<FloodFuture> futures = [.. Enumerable.Range(0, 16).Select(i => new FloodFuture { Flow = 0.9 + (0.013 * i), Loss = 0.7 + (0.04 * i) })];
        var network = FloodingTests.Row(10, DepthRate.FromInchesPerDay(0.35), 4);
        var coarse = FloodBatch.Run(network, futures, TimeSpan.FromDays(25));
        var fine = FloodBatch.Run(network, futures, TimeSpan.FromDays(25), new FloodOptions { StepError = WaterDepth.FromMeters(5e-6 / 8) });
        foreach (var (a, b) in coarse.Zip(fine).SelectMany(p => p.First.Checks.Zip(p.Second.Checks)))
        {
            Assert.Equal(b.Full!.Value.TotalMinutes, a.Full!.Value.TotalMinutes, 0.5);
            Assert.Equal(b.Depth.Millimeters, a.Depth.Millimeters, 0.01);
        }
    }

    [Fact]
    public void What_is_no_row_runs_one_by_one()
    {
        var row = FloodingTests.Row(3, DepthRate.FromInchesPerDay(0.2), 4, 6);
        var ditched = row with { Boxes = [row.Boxes[0], row.Boxes[1], row.Boxes[2] with { Ditch = 0 }], Ditches = [new FloodDitch("return", 0, FlowRate.FromCubicFeetPerSecond(1))] };
        var leaking = row with { Levees = [new FloodLevee(0, 1, Length.FromFeet(900), Length.FromFeet(6), DepthRate.FromFeetPerDay(3))] };
        var quiet = new FloodOptions { Telling = TimeSpan.Zero };
        var runs = FloodBatch.Run([ditched, row, leaking], Span);
        Assert.Equal(Flooding.Run(ditched, Span, quiet).Checks.Select(c => c with { Depths = [] }), runs[0].Checks.Select(c => c with { Depths = [] }));
        Assert.Equal(Flooding.Run(leaking, Span, quiet).Checks.Select(c => c with { Depths = [] }), runs[2].Checks.Select(c => c with { Depths = [] }));
        var half = FloodBatch.Run(ditched, [new FloodFuture { Flow = 0.5 }], Span)[0];
        Assert.Equal(runs[0].Balance.In.CubicMeters / 2, half.Balance.In.CubicMeters, 1e-6);
    }

    [Fact]
    public void Fields_of_one_network_and_of_many_sizes_lie_side_by_side()
    {
        ImmutableArray<FloodNetwork> networks = [.. Enumerable.Range(1, 19).Select(n => FloodingTests.Row(n, DepthRate.FromInchesPerDay(0.02 * n), 3, 12 - (n * 0.4)))];
        foreach (var (run, network) in FloodBatch.Run(networks, Span).Zip(networks)) FloodBatchProperties.Same(Flooding.Run(network, Span), run, 0.01);
    }

    private static FloodNetwork Drowned() => new()
    {
        Checks = [.. Enumerable.Range(0, 6).Select(i => new FloodCheck($"ck {i + 1}", Area.FromHectares(1.5 + (0.3 * i)), WaterDepth.FromMeters(0.1), WaterDepth.FromMeters(0.05)) { Ground = WaterDepth.FromMeters(-0.03 * i), Percolation = DepthRate.FromMillimetersPerDay(2), Covered = Fraction.One, Depth = WaterDepth.FromMeters(0.05) })],
        Boxes = [.. Enumerable.Range(0, 6).Select(i => new FloodBox($"box {i + 1}", i, i < 5 ? i + 1 : null, Length.FromMeters(1.2), WaterDepth.FromMeters(0.05)) { Kind = i % 2 == 0 ? WeirKind.Contracted : WeirKind.Suppressed })],
        Inlets = [new FloodInlet("source", 0, [new FlowStep(TimeSpan.Zero, FlowRate.FromCubicMetersPerSecond(0.1)), new FlowStep(TimeSpan.FromHours(24), FlowRate.FromCubicMetersPerSecond(0.25)), new FlowStep(TimeSpan.FromHours(60), FlowRate.FromCubicMetersPerSecond(0.15))])],
        Air = [new FloodAir(TimeSpan.Zero, DepthRate.FromMillimetersPerDay(6), DepthRate.Zero)],
    };
}
