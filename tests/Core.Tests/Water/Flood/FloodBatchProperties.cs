using CsCheck;

namespace Watersown.Water.Flood;

public sealed class FloodBatchProperties
{
    private static readonly FloodOptions Fine = new() { StepError = WaterDepth.FromMeters(1e-8) };
    // A fifth of the usual error, so that a hundredth of a millimeter holds for every field there can be; the usual one is held to it by the tests.
    private static readonly FloodOptions Closer = new() { StepError = WaterDepth.FromMeters(1e-6) };
    private static readonly TimeSpan Span = TimeSpan.FromDays(4);

    [Fact]
    public void Side_by_side_tells_the_depths_of_one_by_one() => SomeCascade.Any.Array[1, 20].Sample(networks =>
    {
        foreach (var (together, network) in FloodBatch.Run([.. networks], Span, Closer).Zip(networks)) Same(Flooding.Run(network, Span, Fine), together, 0.02);
    }, iter: 12);

    [Fact]
    public void Every_future_is_the_network_changed_by_hand() => Gen.Select(SomeCascade.Any, SomeCascade.Future.Array[17]).Sample((network, futures) =>
    {
        foreach (var (together, future) in FloodBatch.Run(network, [.. futures], Span, Closer).Zip(futures)) Same(Flooding.Run(Changed(network, future), Span, Fine), together, 0.02);
    }, iter: 6);

    [Fact]
    public void Water_in_is_water_stored_or_lost_in_every_lane() => Gen.Select(SomeCascade.Any, SomeCascade.Future.Array[20]).Sample((network, futures) =>
    {
        foreach (var run in FloodBatch.Run(network, [.. futures], TimeSpan.FromDays(9)))
        {
            var balance = run.Balance;
            var turned = balance.In + balance.Rain + Volume.FromCubicMeters(network.Checks.Sum(c => c.Area.SquareMeters * 0.3));
            Assert.True(Math.Abs(balance.Residual / turned) < 1e-12, $"{balance.Residual.CubicMeters} of {turned.CubicMeters} m³");
            Assert.True(balance.Evaporated.CubicMeters >= -1e-9 && balance.Percolated.CubicMeters >= 0);
        }
    }, iter: 20);

    // One step for all: the order of the sixteen changes nothing, to the last digit.
    [Fact]
    public void It_does_not_matter_who_stands_beside_whom() => Gen.Select(SomeCascade.Any, SomeCascade.Future.Array[16]).Sample((network, futures) =>
    {
        var (run, turned) = (FloodBatch.Run(network, [.. futures], Span), FloodBatch.Run(network, [.. futures.Reverse()], Span));
        foreach (var (a, b) in run.Zip(turned.Reverse())) Assert.Equal(a.Checks, b.Checks);
    }, iter: 10);

    // V dA/dt = S − m A in closed form, worked in Ponding: one check is exactly that, whatever its future.
    [Fact]
    public void One_check_fills_as_the_closed_form_says() => Gen.Select(Gen.Double[20, 600], Gen.Double[0.3, 0.9], Gen.Double[0.05, 0.5], Gen.Double[2, 40], SomeCascade.Future.Array[16]).Sample((acres, feet, inches, cfs, futures) =>
    {
        var network = new FloodNetwork
        {
            Checks = [new FloodCheck("field", Area.FromAcres(acres), WaterDepth.FromFeet(feet / 2), WaterDepth.FromFeet(feet / 2)) { Percolation = DepthRate.FromInchesPerDay(inches) }],
            Inlets = [new FloodInlet("source", 0, [new FlowStep(TimeSpan.Zero, FlowRate.FromCubicFeetPerSecond(cfs))])],
        };
        var runs = FloodBatch.Run(network, [.. futures], TimeSpan.FromDays(60));
        foreach (var (run, future) in runs.Zip(futures))
        {
            var job = new FloodJob(Area.FromAcres(acres), Area.Zero, WaterDepth.FromFeet((feet / 2 * future.TakeUp) + (feet / 2)), DepthRate.FromInchesPerDay(inches * future.Loss));
            if (Ponding.FillTime(job, FlowRate.FromCubicFeetPerSecond(cfs * future.Flow)) is { TotalDays: < 59 } closed) Assert.Equal(1, run.AllFull!.Value / closed, 1e-3);
            else Assert.True(run.AllFull is null || run.AllFull.Value.TotalDays > 58.9);
        }
    }, iter: 20);

    [Fact]
    public void A_general_solver_comes_to_the_same_depths() => SomeCascade.Dry.Sample(any =>
    {
        // Rising only: one flow, no rain, no boards moved.
        var network = any with { Inlets = [any.Inlets[0] with { Flow = [any.Inlets[0].Flow[0]] }], Air = [any.Air[0]], Moves = [] };
        var (general, run) = (GeneralFlood.Depths(network, TimeSpan.FromHours(48), 20), FloodBatch.Run([network], TimeSpan.FromHours(48), Closer)[0]);
        for (var i = 0; i < general.Length; i++) Assert.Equal(general[i] * 1000, run.Checks[i].Depth.Millimeters, 0.01);
    }, iter: 4);

    internal static void Same(FloodRun one, FloodRun other, double millimeters)
    {
        foreach (var (a, b) in one.Checks.Zip(other.Checks))
        {
            Assert.Equal(a.Depth.Millimeters, b.Depth.Millimeters, millimeters);
            Assert.Equal(a.Covered.Share, b.Covered.Share, 1e-3);
            SameMoment(a, a.FirstWet, b.FirstWet);
            SameMoment(a, a.Full, b.Full);
        }

        foreach (var (a, b) in one.Boxes.Zip(other.Boxes)) Assert.Equal(a.Passed.CubicMeters, b.Passed.CubicMeters, 1 + (Math.Abs(a.Passed.CubicMeters) * 1e-3));
        Assert.Equal(one.Balance.In.CubicMeters, other.Balance.In.CubicMeters, 1e-6);
        Assert.Equal(one.Balance.Left.CubicMeters, other.Balance.Left.CubicMeters, 1 + (one.Balance.Left.CubicMeters * 1e-3));
        Assert.Equal(one.Balance.Evaporated.CubicMeters, other.Balance.Evaporated.CubicMeters, 1 + (one.Balance.Evaporated.CubicMeters * 1e-3));
    }

    // A fiftieth of a millimeter at the rise of that hour, and five minutes: where a check fills creeping, its last ground is nearly level. One of two may just not get there: the ground covered is compared above.
    private static void SameMoment(FloodStory one, TimeSpan? a, TimeSpan? b)
    {
        if (a is not { } x || b is not { } y || (int)x.TotalHours + 1 >= one.Depths.Length) return;
        var hour = (int)x.TotalHours;
        var rise = Math.Abs((one.Depths[hour + 1].Depth - one.Depths[hour].Depth).Millimeters);
        Assert.Equal(x.TotalMinutes, y.TotalMinutes, 5 + (60 * 0.02 / Math.Max(rise, 1e-6)));
    }

    private static FloodNetwork Changed(FloodNetwork network, FloodFuture future) => network with
    {
        Checks = [.. network.Checks.Select(c => c with { TakeUp = c.TakeUp * future.TakeUp, Percolation = c.Percolation * future.Loss })],
        Boxes = [.. network.Boxes.Select(b => b with { Boards = b.Boards + future.Boards })],
        Inlets = [.. network.Inlets.Select(i => i with { Flow = [.. i.Flow.Select(f => f with { Flow = f.Flow * future.Flow })] })],
        Air = [.. network.Air.Select(a => a with { Evaporation = a.Evaporation * future.Loss })],
        Moves = [.. network.Moves.Select(m => m with { Boards = m.Boards + future.Boards })],
    };
}
