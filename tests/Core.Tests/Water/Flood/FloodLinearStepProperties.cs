using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using Watersown.Hydraulics;

namespace Watersown.Water.Flood;

public sealed class FloodLinearStepProperties
{
    // From a box to a thin sheet over boards as wide as a county.
    private static readonly Gen<FloodNetwork> anyWide = FloodingProperties.Any(Gen.Double[2, 5].Select(d => Math.Pow(10, d)));

    [Fact]
    public void Water_in_is_water_stored_or_lost() => anyWide.Select(Firm).Sample(network =>
    {
        var balance = Flooding.Run(network, TimeSpan.FromDays(6)).Balance;
        var turned = balance.In + balance.Rain + Volume.FromCubicMeters(network.Checks.Sum(c => c.Area.SquareMeters * 0.3));
        Assert.True(Math.Abs(balance.Residual / turned) < 1e-12, $"{balance.Residual.CubicMeters} of {turned.CubicMeters} m³");
    }, iter: 25);

    // Where soil goes on drinking, if only a hair in a thousand years, all steps are plain ones. All ground is wet: what a wave of
    // seconds wets for good hangs on where steps end, of whatever kind they are.
    [Fact]
    public void Plain_steps_come_to_the_same_depths() => anyWide.Select(Firm).Sample(any =>
    {
        var network = any with { Checks = [.. any.Checks.Select(c => c with { Covered = Fraction.One })] };
        var plain = network with { Checks = [.. network.Checks.Select(c => c with { Soaking = new Soaking(DepthRate.FromMillimetersPerDay(1e-9), WaterDepth.FromMillimeters(1e-3)) })] };
        var fine = new FloodOptions { StepError = WaterDepth.FromMeters(1e-6) };
        var (a, b) = (Flooding.Run(network, TimeSpan.FromDays(3), fine), Flooding.Run(plain, TimeSpan.FromDays(3), fine));
        foreach (var (x, y) in a.Checks.Zip(b.Checks)) Assert.Equal(y.Depth.Millimeters, x.Depth.Millimeters, 0.02);
        Assert.Equal(b.Balance.Left.CubicMeters, a.Balance.Left.CubicMeters, network.Checks.Sum(c => c.Area.SquareMeters) * 2e-5);
    }, iter: 12);

    // What a meter more of water above or below lets run, against the law asked twice a hair apart.
    [Fact]
    public void Slopes_of_a_box_are_those_of_its_law() => Gen.Select(Gen.Double[0.5, 20_000], Gen.Int[0, 2], Gen.Double[-0.05, 0.4], Gen.Double[-0.05, 0.4], Gen.Bool).Sample((width, kind, above, apart, still) =>
    {
        var law = new BoxFlow(width, (WeirKind)kind, 40_000);
        var below = still ? above + (apart / 100) : above + apart;
        const double Hair = 1e-8;
        var (up, down) = law.Slopes(above, below);
        // Not where the law has an edge: there each side has its own slope.
        if (Edge(law, above, below)) return;
        var scale = Math.Abs(up) + Math.Abs(down) + 1e-3;
        Assert.Equal((law.At(above + Hair, below) - law.At(above - Hair, below)) / (2 * Hair), up, scale * 1e-3);
        Assert.Equal((law.At(above, below + Hair) - law.At(above, below - Hair)) / (2 * Hair), down, scale * 1e-3);
    }, iter: 400);

    // Rows, trees and whatever else may be joined: the elimination of another library finds the same.
    [Fact]
    public void A_matrix_of_joined_checks_is_solved_as_a_full_one() => Gen.Select(Gen.Int[1, 14], Gen.Select(Gen.Int[0, 13], Gen.Int[0, 13], Gen.Double[0, 1000]).Array[0, 25], Gen.Double[-1, 1].Array[14]).Sample((count, joints, wanted) =>
    {
        var inside = joints.Where(j => j.Item1 < count && j.Item2 < count && j.Item1 != j.Item2).ToList();
        var matrix = new FloodMatrix(count, inside.Select(j => (j.Item1, j.Item2)));
        var full = Matrix<double>.Build.DenseIdentity(count);
        matrix.Clear();
        foreach (var (from, to, flow) in inside)
        {
            matrix.Add(from, flow);
            matrix.Add(matrix.Place(to, from), -flow);
            full[from, from] += flow;
            full[to, from] -= flow;
        }

        matrix.Eliminate();
        var x = wanted[..count];
        var solved = full.Solve(Vector<double>.Build.Dense(wanted[..count]));
        matrix.Solve(x);
        for (var i = 0; i < count; i++) Assert.Equal(solved[i], x[i], 1e-7);
    }, iter: 200);

    private static FloodNetwork Firm(FloodNetwork network) => network with { Checks = [.. network.Checks.Select(c => c with { Soaking = null })] };

    private static bool Edge(BoxFlow law, double above, double below)
    {
        var (head, tail) = (Math.Max(above, below), Math.Min(above, below));
        var apart = head - tail;
        var limit = (tail <= 0 ? head : apart) * law.Leveling;
        return Math.Abs(head) < 1e-5 || Math.Abs(tail) < 1e-5 || apart < 1e-5 || Math.Abs(apart - BoxFlow.Still) < 1e-6 || Math.Abs(head - BoxFlow.Still) < 1e-6
            || Math.Abs(head - law.Most) < 1e-6 || Math.Abs(Math.Abs(law.At(above, below)) - limit) < limit * 1e-3 && Math.Abs(law.At(above, below)) < limit;
    }
}
