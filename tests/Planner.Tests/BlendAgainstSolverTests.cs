using CsCheck;
using Google.OrTools.LinearSolver;
using Watersown.Nutrition;

namespace Watersown;

/// <summary>The cheapest blend against a general linear solver.</summary>
public sealed class BlendAgainstSolverTests
{
    private static readonly Gen<(double N, double P, double K, double Price)> Offer = Gen.Select(Gen.Int[0, 46], Gen.Int[0, 46], Gen.Int[0, 60], Gen.Int[5, 90]).Select((n, p, k, c) => (n / 100.0, p / 100.0, k / 100.0, c / 100.0));

    // The solver stops within 1e-7 of feasible and of the best; costs here are at most some thousands of dollars.
    [Fact]
    public void No_mix_that_a_general_solver_finds_is_cheaper_and_ours_is_no_cheaper_than_can_be() => Gen.Select(Offer.Array[1, 9], Gen.Int[0, 150], Gen.Int[0, 60], Gen.Int[0, 60]).Sample((offers, n, p, k) =>
    {
        var blend = Blends.Cheapest(
            new NutrientRates(NutrientRate.FromPoundsPerAcre(n), NutrientRate.FromPoundsPerAcre(p), NutrientRate.FromPoundsPerAcre(k)),
            [.. offers.Select((o, i) => new Product("product " + i, Money.FromDollars((decimal)o.Price)) { Nitrogen = Fraction.FromShare(o.N), PhosphorusPentoxide = Fraction.FromShare(o.P), PotassiumOxide = Fraction.FromShare(o.K) })]);
        var best = Solve(offers, [n, p, k]);
        Assert.Equal(best is not null, blend.HasValue);
        if (best is { } cost) Assert.Equal(cost, (double)blend.Value.CostPerAcre.Amount, 1e-5 * Math.Max(1, cost));
    }, iter: 300);

    private static double? Solve((double N, double P, double K, double Price)[] offers, double[] targets)
    {
        using var solver = Solver.CreateSolver("GLOP");
        var x = offers.Select((_, i) => solver.MakeNumVar(0, double.PositiveInfinity, "x" + i)).ToArray();
        for (var row = 0; row < targets.Length; row++)
        {
            using var constraint = solver.MakeConstraint(targets[row], double.PositiveInfinity);
            for (var i = 0; i < x.Length; i++) constraint.SetCoefficient(x[i], row switch { 0 => offers[i].N, 1 => offers[i].P, _ => offers[i].K });
        }

        using var objective = solver.Objective();
        for (var i = 0; i < x.Length; i++) objective.SetCoefficient(x[i], offers[i].Price);
        objective.SetMinimization();
        return solver.Solve() == Solver.ResultStatus.OPTIMAL ? objective.Value() : null;
    }
}
