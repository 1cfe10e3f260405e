using CsCheck;
using Watersown.Hydraulics;

namespace Watersown.Water.Flood;

public sealed class FloodingProperties
{
    private static readonly Gen<FloodCheck> AnyCheck =
        from acres in Gen.Double[3, 40]
        from take in Gen.Double[0, 6]
        from front in Gen.Double[0.5, 4]
        from ground in Gen.Double[-3, 0]
        from seep in Gen.Double[0, 0.4]
        from covered in Gen.Double[0, 1]
        from depth in Gen.Double[0, 5]
        from soaks in Gen.Bool
        select new FloodCheck("ck", Area.FromAcres(acres), WaterDepth.FromInches(take), WaterDepth.FromInches(front))
        {
            Ground = WaterDepth.FromFeet(ground),
            Percolation = DepthRate.FromInchesPerDay(seep),
            Covered = Fraction.FromShare(covered),
            Depth = WaterDepth.FromInches(depth),
            Soaking = soaks ? new Soaking(DepthRate.FromMillimetersPerDay(7.2), WaterDepth.FromMillimeters(60)) : null,
        };

    private static readonly Gen<FloodNetwork> AnyNetwork = Any(Gen.Double[1, 12]);

    /// <summary>Checks with ditches, levees and boards that move, over boxes as wide as told.</summary>
    internal static Gen<FloodNetwork> Any(Gen<double> feet) =>
        from checks in AnyCheck.Array[2, 12]
        from width in feet
        from boards in Gen.Double[0, 6]
        from flow in Gen.Double[0, 15]
        from later in Gen.Double[0, 15]
        from cap in Gen.Double[0, 8]
        from rain in Gen.Double[0, 2]
        from back in Gen.Int[0, 11]
        select new FloodNetwork
        {
            Checks = [.. checks],
            Boxes = [.. Enumerable.Range(0, checks.Length).Select(i => new FloodBox($"box {i}", i, i + 1 < checks.Length && i % 4 != 3 ? i + 1 : null, Length.FromFeet(width), WaterDepth.FromInches(boards)) { Ditch = i % 4 == 3 ? 0 : null, Kind = i % 2 == 0 ? WeirKind.Contracted : WeirKind.Suppressed })],
            Levees = [new FloodLevee(0, 1, Length.FromFeet(900), Length.FromFeet(6), DepthRate.FromFeetPerDay(3)), new FloodLevee(1, null, Length.FromFeet(900), Length.FromFeet(6), DepthRate.FromFeetPerDay(3))],
            Inlets = [new FloodInlet("a", 0, [new FlowStep(TimeSpan.Zero, FlowRate.FromCubicFeetPerSecond(flow)), new FlowStep(TimeSpan.FromHours(31), FlowRate.FromCubicFeetPerSecond(later))])],
            Ditches = [new FloodDitch("back", back % checks.Length, FlowRate.FromCubicFeetPerSecond(cap))],
            Air = [new FloodAir(TimeSpan.Zero, DepthRate.FromInchesPerDay(0.3), DepthRate.Zero), new FloodAir(TimeSpan.FromHours(50), DepthRate.FromInchesPerDay(0.1), DepthRate.FromInchesPerDay(rain))],
            Moves = [new BoardMove(TimeSpan.FromHours(40), 0, WaterDepth.FromInches(boards + 1))],
        };

    [Fact]
    public void Water_in_is_water_stored_or_lost() => AnyNetwork.Sample(network =>
    {
        var balance = Flooding.Run(network, TimeSpan.FromDays(6)).Balance;
        var turned = balance.In + balance.Rain + Volume.FromCubicMeters(network.Checks.Sum(c => c.Area.SquareMeters * 0.3));
        Assert.True(Math.Abs(balance.Residual / turned) < 1e-12, $"{balance.Residual.CubicMeters} of {turned.CubicMeters} m³");
    }, iter: 25);

    [Fact]
    public void More_water_leaves_no_check_dry_or_shallower() => AnyNetwork.Sample(any =>
    {
        // Ground that was covered once drinks and loses more later, rightly: so nothing is drunk or lost here.
        var network = any with { Checks = [.. any.Checks.Select(c => c with { TakeUp = WaterDepth.Zero, Soaking = null, Percolation = DepthRate.Zero })], Air = [] };
        var more = network with { Inlets = [network.Inlets[0] with { Flow = [.. network.Inlets[0].Flow.Select(f => f with { Flow = f.Flow + FlowRate.FromCubicFeetPerSecond(2) })] }] };
        var (less, run) = (Flooding.Run(network, TimeSpan.FromDays(4)), Flooding.Run(more, TimeSpan.FromDays(4)));
        foreach (var (a, b) in less.Checks.Zip(run.Checks))
        {
            if (a.FirstWet is not null) Assert.NotNull(b.FirstWet);
            if (a.Full is not null) Assert.NotNull(b.Full);
            Assert.True(b.Depth.Millimeters >= a.Depth.Millimeters - 1, $"{a.Depth.Millimeters} mm, then {b.Depth.Millimeters} mm");
        }
    }, iter: 12);

    [Fact]
    public void What_shares_nothing_runs_as_if_alone() => Gen.Select(AnyNetwork, AnyNetwork).Sample((a, b) =>
    {
        var alone = Flooding.Run(a, TimeSpan.FromDays(3));
        var both = Flooding.Run(Beside(a, b), TimeSpan.FromDays(3));
        Assert.Equal(alone.Checks.Select(c => c with { Depths = [] }), both.Checks.Take(alone.Checks.Length).Select(c => c with { Depths = [] }));
    }, iter: 5);

    // The same laws, taken by a plain fixed step with powers, as anybody would write them first.
    [Fact]
    public void A_plain_fixed_step_comes_to_the_same_depths() => Gen.Select(Gen.Double[2, 12], Gen.Double[0.5, 8], Gen.Double[-0.2, 1]).Sample((cfs, feet, drop) =>
    {
        var row = FloodingTests.Row(4, DepthRate.FromInchesPerDay(0.3), feet, cfs);
        var network = row with { Checks = [.. row.Checks.Select((c, i) => c with { Ground = WaterDepth.FromFeet(-i * Math.Max(0, drop)) })] };
        var run = Flooding.Run(network, TimeSpan.FromHours(96));
        var plain = PlainFlood.Depths(network, 96 * 3600, 60);
        for (var i = 0; i < 4; i++) Assert.Equal(plain[i] * 1000, run.Checks[i].Depth.Millimeters, 0.05);
    }, iter: 5);

    private static FloodNetwork Beside(FloodNetwork a, FloodNetwork b)
    {
        var n = a.Checks.Length;
        return a with
        {
            Checks = [.. a.Checks, .. b.Checks],
            Boxes = [.. a.Boxes, .. b.Boxes.Select(x => x with { From = x.From + n, To = x.To + n, Ditch = x.Ditch + 1 })],
            Levees = [.. a.Levees, .. b.Levees.Select(x => x with { From = x.From + n, To = x.To + n })],
            Inlets = [.. a.Inlets, .. b.Inlets.Select(x => x with { To = x.To + n, Source = "other" })],
            Ditches = [.. a.Ditches, .. b.Ditches.Select(x => x with { To = x.To + n })],
            Air = a.Air,
        };
    }
}
