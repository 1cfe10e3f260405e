namespace Watersown.Schedule;

/// <summary>A pin that the plan cannot keep is said, with by how much; one that it keeps is not.</summary>
public sealed class PinConflictsTests
{
    [Fact]
    public void A_sowing_pinned_for_Saturday_that_the_plan_has_on_Sunday_is_a_day_apart() // Sunday 07:55 less Saturday 07:55
    {
        var said = Assert.Single(Of(new Pin("N4", "sow", PlannedMorning.At(9, 7, 55))));
        Assert.Contains("Two Gates (N4)", said.What, StringComparison.Ordinal);
        Assert.Contains("24.0 h later", said.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pin_that_is_kept_is_not_in_the_way() => Assert.Empty(Of(new Pin("N4", "sow", PlannedMorning.At(10, 7, 55))));

    [Fact]
    public void A_pinned_sowing_without_a_step_is_said() // S1 is sown; N5 loses its sowing
    {
        var plan = PlannedMorning.Plan();
        var without = plan with { Tasks = plan.Tasks.RemoveAll(t => t.Field == "N5" && t.Kind == PlanTaskKind.Sow) };
        var said = Assert.Single(Of(without, new Pin("N5", "sow", PlannedMorning.At(9, 7)), new Pin("S1", "sow", PlannedMorning.At(9, 7))));
        Assert.Equal(["N5"], said.Fields);
    }

    private static IEnumerable<Conflict> Of(params ImmutableArray<Pin> pins) => Of(PlannedMorning.Plan(), pins);

    private static IEnumerable<Conflict> Of(SeasonPlan plan, params ImmutableArray<Pin> pins) => Conflicts.Of(plan with { State = plan.State with { Pins = pins } }).Where(c => c.Kind == "pin");
}
