using Watersown.Land;
using Watersown.Planner.Checking;
using Watersown.Records.Land;
using Watersown.Schedule;

namespace Watersown.Planner;

/// <summary>The invented farm with a source held back: the plan keeps to what is left of it.</summary>
public sealed class HeldBackPlanTests
{
    private static readonly PlanOptions Short = new() { Budget = TimeSpan.FromSeconds(1.5) };

    private static readonly SeasonState Farm = OpenFarm.Run(Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json")).Value;

    private static readonly Lazy<SeasonPlan> Free = new(() => SeasonPlanner.Plan(Farm, Short));

    [Fact]
    public void A_plan_made_without_the_curtailment_breaks_it_and_the_checker_says_so()
    {
        var state = Curtailed();
        Assert.Empty(PlanChecker.Faults(Free.Value));
        Assert.Contains(PlanChecker.Faults(Free.Value with { State = state }), f => f.Contains("is left of it", StringComparison.Ordinal) || f.Contains("cfs wanted", StringComparison.Ordinal));
        Assert.Empty(PlanChecker.Faults(SeasonPlanner.Plan(state, Short)));
    }

    [Fact]
    public void No_order_is_above_what_is_left_and_the_bound_of_a_curtailed_season_is_no_lower()
    {
        var plan = SeasonPlanner.Plan(Curtailed(), Short);
        Assert.All(plan.Orders.Where(o => o.Source == "NT-1" && o.From >= SomeSeason.At(10, 7)), o => Assert.True(o.Flow <= FlowRate.FromCubicFeetPerSecond(6.001)));
        Assert.True(plan.Bound <= plan.Cost.Total);
    }

    [Fact]
    public void A_source_in_turns_is_counted_on_for_its_mean_and_the_plan_says_so()
    {
        var state = With("ST-2", s => s with { Turns = new SourceTurns(SomeSeason.At(9, 7), TimeSpan.FromHours(72), TimeSpan.FromHours(120)) { Flow = FlowRate.FromCubicFeetPerSecond(15) } });
        var plan = SeasonPlanner.Plan(state, Short);
        Assert.Empty(PlanChecker.Faults(plan));
        Assert.Contains(plan.Assumptions, a => a.StartsWith("ST-2 is served in turns, 72 h out of every 120 h", StringComparison.Ordinal));
        Assert.DoesNotContain(plan.Orders, o => o.Source == "ST-2");
    }

    private static SeasonState Curtailed() => With("NT-1", s => s with { Curtailments = [new Curtailment(SomeSeason.At(10, 7)) { Flow = FlowRate.FromCubicFeetPerSecond(6) }] });

    private static SeasonState With(string source, Func<WaterSource, WaterSource> change) =>
        Farm with { Farm = Farm.Farm with { Sources = [.. Farm.Farm.Sources.Select(s => s.Code == source ? change(s) : s)] } };
}
