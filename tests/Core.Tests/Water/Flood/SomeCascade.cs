using CsCheck;
using Watersown.Hydraulics;

namespace Watersown.Water.Flood;

/// <summary>Fields nobody has seen: checks in a row, dry, half wet or wet, boxes free or drowned.</summary>
internal static class SomeCascade
{
    public static Gen<FloodNetwork> Any { get; } = From(Gen.Double[0, 1]);

    public static Gen<FloodNetwork> Dry { get; } = From(Gen.Const(0.0));

    public static Gen<FloodFuture> Future { get; } =
        from flow in Gen.Double[0.6, 1.4]
        from loss in Gen.Double[0.5, 2]
        from takeUp in Gen.Double[0.7, 1.3]
        from boards in Gen.Double[0, 1]
        select new FloodFuture { Flow = flow, Loss = loss, TakeUp = takeUp, Boards = WaterDepth.FromInches(boards) };

    private static Gen<FloodNetwork> From(Gen<double> covered) =>
        from checks in Check(covered).Array[1, 9]
        from boxes in Box.Array[9]
        from drains in Gen.Bool
        from drop in Gen.Double[-0.02, 0.3]
        from flow in Gen.Double[0, 15]
        from later in Gen.Double[0, 15]
        from evaporation in Gen.Double[0, 0.35]
        from rain in Gen.Double[0, 1]
        from move in Gen.Int[0, 8]
        let between = drains ? checks.Length : checks.Length - 1
        select new FloodNetwork
        {
            Checks = [.. checks.Select((c, i) => c with { Ground = WaterDepth.FromFeet(-i * Math.Max(0, drop)) })],
            Boxes = [.. boxes.Take(between).Select((b, i) => b with { Name = $"box {i}", From = i, To = i + 1 < checks.Length ? i + 1 : null })],
            Inlets = [new FloodInlet("a", 0, [new FlowStep(TimeSpan.Zero, FlowRate.FromCubicFeetPerSecond(flow)), new FlowStep(TimeSpan.FromHours(31), FlowRate.FromCubicFeetPerSecond(later))]), new FloodInlet("b", checks.Length / 2, [new FlowStep(TimeSpan.FromHours(20), FlowRate.FromCubicFeetPerSecond(later / 3))])],
            Air = [new FloodAir(TimeSpan.Zero, DepthRate.FromInchesPerDay(evaporation), DepthRate.Zero), new FloodAir(TimeSpan.FromHours(50), DepthRate.FromInchesPerDay(evaporation / 2), DepthRate.FromInchesPerDay(rain))],
            Moves = move < between ? [new BoardMove(TimeSpan.FromHours(40), move, WaterDepth.FromInches(3))] : [],
        };

    private static Gen<FloodBox> Box { get; } =
        from width in Gen.Double[1, 12]
        from boards in Gen.Double[0, 6]
        from kind in Gen.Int[0, 2]
        select new FloodBox("box", 0, null, Length.FromFeet(width), WaterDepth.FromInches(boards)) { Kind = (WeirKind)kind };

    private static Gen<FloodCheck> Check(Gen<double> wet) =>
        from acres in Gen.Double[3, 40]
        from take in Gen.Double[0, 6]
        from front in Gen.Double[0.5, 4]
        from seep in Gen.Double[0, 0.4]
        from covered in wet
        from depth in Gen.Double[0, 5]
        select new FloodCheck("ck", Area.FromAcres(acres), WaterDepth.FromInches(take), WaterDepth.FromInches(front))
        {
            Percolation = DepthRate.FromInchesPerDay(seep),
            Covered = Fraction.FromShare(covered),
            Depth = WaterDepth.FromInches(depth),
        };
}
