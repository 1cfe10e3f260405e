using CsCheck;
using Watersown.Planner.Checking;
using Watersown.Planner.Decoding;
using Watersown.Planner.Instances;
using Watersown.Schedule;

namespace Watersown.Planner;

public sealed class SeasonPlannerProperties
{
    private static readonly PlanOptions Short = new() { Budget = TimeSpan.FromSeconds(0.6), LocalShare = Fraction.FromPercent(20) };

    [Fact]
    public void Any_farm_gets_a_plan_that_breaks_no_rule() =>
        SomeSeason.Any.Sample(state => Assert.Empty(PlanChecker.Faults(SeasonPlanner.Plan(state, Short))), iter: 40, threads: 1);

    [Fact]
    public void Every_list_made_plan_breaks_no_rule_either() =>
        SomeSeason.Any.Sample(state =>
        {
            var instance = InstanceBuilder.Build(state);
            var order = instance.Fields.Select(f => f.Index).Reverse().ToImmutableArray();
            var genes = new Genes(order, [.. instance.JointCaps.Select(j => j.Sources.Select(_ => 1.0 / j.Sources.Length).ToImmutableArray())], 0.5);
            var plan = new PlanWriter(instance, new Decoder(instance).Decode(genes), 0, TimeSpan.Zero).Write();
            Assert.Empty(PlanChecker.Faults(plan));
        }, iter: 300, threads: 1);

    [Fact]
    public void No_plan_costs_less_than_the_bound_it_prints() =>
        SomeSeason.Any.Sample(state =>
        {
            var plan = SeasonPlanner.Plan(state, Short);
            Assert.True(plan.Bound <= plan.Cost.Total, $"bound {plan.Bound.Amount} cost {plan.Cost.Total.Amount}");
        }, iter: 10, threads: 1);
}
