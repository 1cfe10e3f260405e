using System.Diagnostics;
using Watersown.Planner;
using Watersown.Planner.Instances;
using Watersown.Planner.Modeling;
using Watersown.Records.Land;
using Watersown.Schedule;

namespace Watersown.Bench;

/// <summary>How soon a valid plan stands, against the time the solver takes only to read and simplify the model.</summary>
internal static class FirstPlan
{
    public static void Measure(string farm)
    {
        var open = Stopwatch.StartNew();
        var state = OpenFarm.Run(farm).Value;
        Console.WriteLine($"first  farm opened in {open.Elapsed.TotalMilliseconds:0} ms");
        for (var run = 0; run < 5; run++)
        {
            var watch = Stopwatch.StartNew();
            TimeSpan? first = null;
            SeasonPlanner.Plan(state, new PlanOptions { Budget = TimeSpan.FromSeconds(0.15), LocalShare = Fraction.One }, _ => first ??= watch.Elapsed);
            Console.WriteLine($"first  run {run}: valid plan after {first!.Value.TotalMilliseconds:0.0} ms");
        }

        var instance = InstanceBuilder.Build(state);
        var known = new Decoding(instance).First;
        var presolve = Stopwatch.StartNew();
        var model = SeasonModel.Build(instance);
        Hints.Give(instance, model, known);
        using var solver = new Google.OrTools.Sat.CpSolver();
        solver.StringParameters = "num_workers:1 stop_after_presolve:true";
        solver.Solve(model.Model);
        Console.WriteLine($"first  baseline, presolve of the model alone: {presolve.Elapsed.TotalMilliseconds:0} ms");
    }

    private sealed class Decoding(Instance instance)
    {
        public Solution First { get; } = Planner.Decoding.Ordering.Search(instance, 1, TimeSpan.Zero, 0, (_, _) => { }, CancellationToken.None);
    }
}
