using Watersown.Land;
using Watersown.Planner.Checking;
using Watersown.Records.Land;
using Watersown.Schedule;

namespace Watersown.Planner;

/// <summary>The invented farm with its two wells led together: the plan counts on what the joint brings and on no more.</summary>
public sealed class JoinedDitchesPlanTests
{
    private static readonly SeasonState Farm = OpenFarm.Run(Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json")).Value;

    [Fact]
    public void A_plan_on_joined_wells_holds_and_no_longer_says_that_the_small_well_stops_alone()
    {
        var joined = Farm with { Farm = Farm.Farm with { Fields = Ditches.Laid(Farm.Farm, new Dictionary<DitchJoint, bool> { [DitchJoint.Of("W-1", "W-2")] = true }) } };
        Assert.Contains("W-1", joined.Farm.Field("H6").Sources);
        var plan = SeasonPlanner.Plan(joined, new PlanOptions { Budget = TimeSpan.FromSeconds(1.5) });
        Assert.Empty(PlanChecker.Faults(plan));
        Assert.True(plan.Bound <= plan.Cost.Total);
        Assert.DoesNotContain(plan.Conflicts, c => c.What.Contains("263 of 309 ac", StringComparison.Ordinal));
        // By the grower's sum both wells give 7.4 cfs and the block takes 7.44: it is short joined, too.
        Assert.Contains(plan.Conflicts, c => c.What.Contains("7.44", StringComparison.Ordinal));
    }
}
