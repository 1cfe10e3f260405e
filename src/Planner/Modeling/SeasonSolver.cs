using System.Diagnostics;
using Google.OrTools.Sat;
using Watersown.Schedule;
using Watersown.Planner.Instances;

namespace Watersown.Planner.Modeling;

/// <summary>Runs the solver on the season model from a known plan, within a budget, and tells of every better plan and bound.</summary>
internal static class SeasonSolver
{
    public sealed record Result(Solution Best, long Bound);

    /// <summary>The best plan found within the budget, and the cost below which no plan can be.</summary>
    /// <param name="instance">The season.</param>
    /// <param name="known">A valid plan to start from.</param>
    /// <param name="options">Workers, seed, repeatability, goal.</param>
    /// <param name="budget">Time for the search, model building included.</param>
    /// <param name="onBetter">Told of each better plan (with the bound) and each better bound (with no plan).</param>
    /// <param name="stop">Ends the search early; the best plan by then is given.</param>
    public static Result Improve(Instance instance, Solution known, PlanOptions options, TimeSpan budget, Action<Solution?, long> onBetter, CancellationToken stop)
    {
        var watch = Stopwatch.StartNew();
        var model = SeasonModel.Build(instance);
        Hints.Give(instance, model, known);
        using var solver = new CpSolver();
        solver.StringParameters = Parameters(options, budget - watch.Elapsed);
        using var watcher = new Watcher(instance, model, onBetter);
        solver.SetBestBoundCallback(watcher.OnBound);
        using var _ = stop.Register(solver.StopSearch);
        var status = solver.Solve(model.Model, watcher);
        if (status == CpSolverStatus.ModelInvalid) throw new UnreachableException("The season model is not valid: " + model.Model.Validate());
        // A known plan satisfies the model, so this would be a fault of the model; at five in the morning the known plan still stands.
        Debug.Assert(status != CpSolverStatus.Infeasible, "The season model forbids a valid plan.");
        // Stopped before it had a plan of its own, the solver's bound is not yet a bound.
        var bound = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? (long)Math.Floor(solver.BestObjectiveBound) + model.Constant : 0;
        return new Result(watcher.Best ?? known, Math.Max(0, bound));
    }

    private static string Parameters(PlanOptions options, TimeSpan left)
    {
        var seconds = Math.Max(0.1, left.TotalSeconds);
        return FormattableString.Invariant($"num_workers:{options.Workers} random_seed:{options.Seed} relative_gap_limit:{options.GoodEnough.Share} ")
            + (options.Repeatable
                ? FormattableString.Invariant($"interleave_search:true max_deterministic_time:{seconds}")
                : FormattableString.Invariant($"max_time_in_seconds:{seconds}"));
    }

    private sealed class Watcher(Instance instance, SeasonModel model, Action<Solution?, long> onBetter) : CpSolverSolutionCallback
    {
        private readonly Lock door = new();
        private long bestCost = long.MaxValue;

        public Solution? Best { get; private set; }

        public override void OnSolutionCallback()
        {
            var found = Reading.Of(instance, model, Value);
            lock (door)
            {
                var cost = SolutionCost.Of(instance, found).Total;
                if (cost >= bestCost) return;
                (bestCost, Best) = (cost, found);
                onBetter(found, (long)Math.Floor(BestObjectiveBound()) + model.Constant);
            }
        }

        public void OnBound(double bound)
        {
            lock (door) onBetter(null, (long)Math.Floor(bound) + model.Constant);
        }
    }
}
