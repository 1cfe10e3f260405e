using Watersown.Schedule.Sheets;

namespace Watersown.Schedule;

public sealed class PlanChangesTests
{
    private static readonly SeasonPlan Plan = PlannedMorning.Plan();

    [Fact]
    public void A_plan_does_not_differ_from_itself() => Assert.Empty(PlanChanges.Between(Plan, Plan, PlannedMorning.Now));

    [Fact]
    public void A_flight_a_day_later_moves_and_what_has_not_moved_is_left_out()
    {
        var change = Assert.Single(PlanChanges.Between(Plan, Sowing("S2", t => Moved(t, TimeSpan.FromDays(1))), PlannedMorning.Now));
        Assert.Equal(("S2", PlanTaskKind.Sow, TimeSpan.FromDays(1), false, false), (change.Field, change.Task, change.Later, change.OtherSeed, change.OtherMeans));
        Assert.Empty(PlanChanges.Between(Plan, Sowing("S2", t => Moved(t, TimeSpan.FromMinutes(15))), PlannedMorning.Now));
    }

    [Fact]
    public void Other_seed_at_the_same_hour_is_a_change()
    {
        var change = Assert.Single(PlanChanges.Between(Plan, Sowing("N3", t => t with { Batch = "B-08" }), PlannedMorning.Now));
        Assert.True(change.OtherSeed);
        Assert.True(Assert.Single(PlanChanges.Between(Plan, Sowing("N3", t => t with { Resource = "Blue" }), PlannedMorning.Now)).OtherMeans);
    }

    [Fact]
    public void A_step_can_be_new_or_dropped_and_the_parts_of_a_field_are_paired_in_order()
    {
        var without = Plan with { Tasks = [.. Plan.Tasks.Where(t => t is not { Field: "H6", Kind: PlanTaskKind.Sow } || t.Start.Day != 26)] };
        var changes = PlanChanges.Between(Plan, without, PlannedMorning.Now);
        Assert.Equal([true, false], changes.Select(c => c.After is not null));
        Assert.Null(Assert.Single(PlanChanges.Between(Plan with { Tasks = [.. Plan.Tasks.Where(t => t.Field != "S2" || t.Kind != PlanTaskKind.Sow)] }, Plan, PlannedMorning.Now)).Before);
    }

    [Fact]
    public void What_is_over_cannot_change() =>
        Assert.Empty(PlanChanges.Between(Plan, Sowing("S2", t => Moved(t, TimeSpan.FromHours(1))), PlannedMorning.At(9, 9)));

    [Fact]
    public void Only_those_are_named_whose_part_changed()
    {
        var flight = PlanChanges.ByPerson(Plan.State, PlanChanges.Between(Plan, Sowing("S2", t => Moved(t, TimeSpan.FromDays(1))), PlannedMorning.Now));
        Assert.Equal([CrewRole.Grower, CrewRole.Irrigator, CrewRole.Irrigator, CrewRole.Dispatcher, CrewRole.Pilot], flight.Select(p => p.Role));
        var drain = Plan with { Tasks = [.. Plan.Tasks.Select(t => t is { Field: "S2", Kind: PlanTaskKind.Drain } ? Moved(t, TimeSpan.FromHours(6)) : t)] };
        Assert.Equal(["Odalie Marrowfen", "Perrin Aldegate"], PlanChanges.ByPerson(Plan.State, PlanChanges.Between(Plan, drain, PlannedMorning.Now)).Select(p => p.Person.Name));
    }

    private static SeasonPlan Sowing(string field, Func<PlanTask, PlanTask> change) =>
        Plan with { Tasks = [.. Plan.Tasks.Select(t => t.Kind == PlanTaskKind.Sow && t.Field == field ? change(t) : t)] };

    private static PlanTask Moved(PlanTask task, TimeSpan by) => task with { Start = task.Start + by, End = task.End + by };
}
