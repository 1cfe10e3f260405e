using Watersown.Schedule;
using Watersown.Season.Ground;

namespace Watersown.Season;

public sealed class FieldClocksTests
{
    [Fact]
    public void Four_lanes_lie_on_one_scale_and_what_nobody_has_said_is_a_span_of_its_own()
    {
        foreach (var field in PlannedMorning.State().Fields)
        {
            var clocks = FieldClocks.Of(PlannedMorning.State(), PlannedMorning.Plan(), field.Code);
            Assert.True(clocks.From < clocks.Now && clocks.Now < clocks.Until);
            foreach (var lane in Enum.GetValues<ClockLane>())
            {
                Assert.NotEmpty(clocks.In(lane));
                Assert.All(clocks.In(lane), s => Assert.True(s.From >= clocks.From && s.Until <= clocks.Until && s.From < s.Until));
                Assert.True(clocks.In(lane).All(s => s.State != ClockState.Unknown) || clocks.In(lane).Count() == 1);
            }
        }
    }

    [Fact]
    public void Without_a_plan_only_what_was_told_is_drawn()
    {
        var clocks = FieldClocks.Of(PlannedMorning.State(), null, "N4");
        Assert.All(clocks.In(ClockLane.Air), s => Assert.Equal(ClockState.Unknown, s.State));
        var water = Assert.Single(clocks.In(ClockLane.Water));
        Assert.Equal((ClockState.Filling, true, clocks.Now), (water.State, water.Told, water.Until));
        Assert.Null(clocks.Sow);
    }

    [Fact]
    public void Water_that_is_still_to_come_is_the_plans_and_begins_now()
    {
        var plan = PlannedMorning.Plan();
        var clocks = FieldClocks.Of(plan.State, plan, "N4");
        var fill = plan.Task("N4", PlanTaskKind.Fill)!;
        var coming = Assert.Single(clocks.In(ClockLane.Water), s => s is { State: ClockState.Filling, Told: false });
        Assert.Equal((clocks.Now, fill.End), (coming.From, coming.Until));
        Assert.Equal(plan.Task("N4", PlanTaskKind.Sow)!.Start, clocks.Sow);
    }

    [Fact]
    public void Drained_seed_is_spent_when_its_time_is_over()
    {
        var clocks = FieldClocks.Of(PlannedMorning.State(), null, "R4");
        var seed = clocks.In(ClockLane.Seed).ToList();
        Assert.Contains(seed, s => s.State == ClockState.Spent && s.From == PlannedMorning.At(8, 6) && s.Batch == "B-07a");
        Assert.Equal(seed.Single(s => s.State == ClockState.Drained).Until, seed.Single(s => s.State == ClockState.Spent).From);
    }

    [Fact]
    public void A_sown_field_waits_for_no_seed() => Assert.All(
        PlannedMorning.State().Fields.Where(f => f.Stage == FieldStage.Sown),
        f => Assert.Equal(ClockState.Unknown, FieldClocks.Of(PlannedMorning.State(), null, f.Code).In(ClockLane.Seed).Single().State));
}
