using System.Diagnostics;
using Watersown.Schedule;
using Watersown.Planner.Decoding;
using Watersown.Planner.Instances;
using Watersown.Planner.Modeling;

namespace Watersown.Planner;

/// <summary>The whole search: a first valid plan at once, better orders for a moment, then the solver until the budget is spent.</summary>
internal sealed class Search(Instance instance, PlanOptions options, Action<PlanProgress, Solution?> progress)
{
    // Tries of the ordering search for each second of a repeatable budget.
    private const int TriesPerSecond = 60;

    private readonly Stopwatch watch = Stopwatch.StartNew();
    private readonly Lock door = new();
    private Solution? best;
    private long bestCost = long.MaxValue;
    private long bound = QuickBound.Of(instance);

    public TimeSpan Elapsed => watch.Elapsed;

    public (Solution Best, long Bound) Run(CancellationToken stop)
    {
        var local = options.Budget * options.LocalShare.Share;
        int? tries = options.Repeatable ? Math.Max(1, (int)(options.Budget.TotalSeconds * TriesPerSecond)) : null;
        var first = true;
        Ordering.Search(instance, options.Seed, local, tries, (plan, cost) =>
        {
            Better(plan, cost, first ? "first" : "ordering");
            first = false;
        }, stop);
        var left = options.Repeatable ? options.Budget : options.Budget - watch.Elapsed;
        if (left > TimeSpan.FromMilliseconds(100) && !stop.IsCancellationRequested && instance.Fields.Length > 0)
        {
            var result = SeasonSolver.Improve(instance, best!, options, left, OnSolver, stop);
            Raise(result.Bound);
        }

        return (best!, Math.Min(bound, bestCost));
    }

    private void OnSolver(Solution? plan, long newBound)
    {
        Raise(newBound);
        if (plan is not null) Better(plan, SolutionCost.Of(instance, plan).Total, "solver");
    }

    private void Better(Solution plan, long cost, string by)
    {
        lock (door)
        {
            if (cost >= bestCost) return;
            (best, bestCost) = (plan, cost);
            Tell(by, plan);
        }
    }

    private void Raise(long newBound)
    {
        lock (door)
        {
            if (newBound <= bound) return;
            bound = newBound;
            Tell("bound", plan: null);
        }
    }

    private void Tell(string by, Solution? plan) =>
        progress(new PlanProgress(watch.Elapsed, Money.FromDollars(bestCost / 1000m), Money.FromDollars(Math.Min(bound, bestCost) / 1000m), by), plan);
}
