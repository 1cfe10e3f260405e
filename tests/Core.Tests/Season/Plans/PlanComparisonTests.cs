using Watersown.Schedule;

namespace Watersown.Season.Plans;

public sealed class PlanComparisonTests
{
    private static readonly SeasonPlan Old = PlannedMorning.Plan();

    private static readonly SeasonPlan Same = Old with { Number = Old.Number + 1, MadeAt = Old.MadeAt.AddHours(2) };

    [Fact]
    public void Two_plans_alike_differ_in_nothing()
    {
        var both = PlanComparison.Of(Same, Old);
        Assert.Equal((Old.Number, Same.Number), (both.Older.Number, both.Newer.Number));
        Assert.Empty(both.Steps);
        Assert.Empty(both.Decisions);
        Assert.Equal(Old.Tasks.Length, both.StepsAlike);
        Assert.All(both.Costs, c => Assert.True(c.IsSame));
    }

    [Fact]
    public void A_step_that_moved_says_by_how_much_and_a_quarter_of_an_hour_is_the_same_hour()
    {
        var both = PlanComparison.Of(Old, Same with { Tasks = [.. Same.Tasks.Select(t => t is { Field: "S2", Kind: PlanTaskKind.Sow } ? Shift(t, TimeSpan.FromDays(-1)) : t is { Field: "N3", Kind: PlanTaskKind.Sow } ? Shift(t, TimeSpan.FromMinutes(15)) : t)] });
        var moved = Assert.Single(both.Steps);
        Assert.Equal(("S2", PlanTaskKind.Sow, StepChange.Moved, TimeSpan.FromDays(-1)), (moved.Field, moved.Kind, moved.Change, moved.Later!.Value));
        Assert.Equal(Old.Tasks.Length - 1, both.StepsAlike);
    }

    [Fact]
    public void A_step_gone_is_dropped_or_its_time_had_come()
    {
        var last = Old.Tasks.MaxBy(t => t.Start)!;
        var first = Old.Tasks.MinBy(t => t.Start)!;
        var both = PlanComparison.Of(Old, Same with { MadeAt = first.Start > Same.MadeAt ? first.Start : Same.MadeAt, Tasks = [.. Same.Tasks.Where(t => t != last && t != first)] });
        Assert.Equal([StepChange.Passed, StepChange.Dropped], both.Steps.Select(s => s.Change));
        var back = PlanComparison.Of(Old with { Tasks = [.. Old.Tasks.Where(t => t != last)] }, Same);
        Assert.Equal(StepChange.Added, Assert.Single(back.Steps).Change);
    }

    [Fact]
    public void The_same_hour_with_other_seed_is_told_and_an_ounce_is_not()
    {
        SeasonPlan With(double pounds) => Same with { Tasks = [.. Same.Tasks.Select(t => t is { Field: "S2", Kind: PlanTaskKind.Sow } ? t with { Dry = DrySeed.FromPounds(t.Dry!.Value.Pounds + pounds) } : t)] };
        Assert.Equal(StepChange.Altered, Assert.Single(PlanComparison.Of(Old, With(900)).Steps).Change);
        Assert.Empty(PlanComparison.Of(Old, With(0.01)).Steps);
    }

    [Fact]
    public void Costs_are_held_part_against_part_and_their_differences_come_to_the_sum()
    {
        var cost = Old.Cost with { Delay = Old.Cost.Delay + new Money(100), SeedLost = new Money(786), Ferry = new Money(0) };
        var both = PlanComparison.Of(Old, Same with { Cost = cost });
        Assert.Equal(100, both.Costs.Single(c => c.Part == CostPart.Delay).More.Amount);
        Assert.Equal(both.Costs.Single(c => c.Part == CostPart.Total).More.Amount, both.Costs.Where(c => c.Part != CostPart.Total).Sum(c => c.More.Amount));
    }

    [Fact]
    public void A_decision_with_another_last_safe_moment_is_shown()
    {
        var decision = Old.Decisions[0];
        var both = PlanComparison.Of(Old, Same with { Decisions = [.. Same.Decisions.Skip(1), decision with { By = decision.By.AddHours(5) }] });
        var moved = Assert.Single(both.Decisions);
        Assert.Equal(TimeSpan.FromHours(5), moved.Newer!.By - moved.Older!.By);
    }

    private static PlanTask Shift(PlanTask task, TimeSpan by) => task with { Start = task.Start + by, End = task.End + by };
}
