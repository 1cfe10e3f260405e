using CsCheck;
using Watersown.Schedule;

namespace Watersown.Season.Plans;

public sealed class PlanHindsightTests
{
    private static readonly DateTimeOffset Six = PlannedMorning.At(8, 6);

    [Fact]
    public void A_mark_that_came_too_late_shows_what_the_plan_did_not_know()
    {
        var late = Marks.At(1, PlannedMorning.At(8, 5), new CheckWater("N4", 5, WaterSeen.Wet)).Entered(Six.AddHours(2));
        var after = Marks.At(2, Six.AddHours(1), new CheckWater("N4", 6, WaterSeen.Wet));
        var issued = Marks.At(3, Six.AddSeconds(1), new PlanIssued(15, Six, "marks"));
        var back = PlanHindsight.Of(PlannedMorning.State(), Logbook.Empty.With(late, after, issued), Six);
        Assert.Equal([AnyMark.Id(1)], back.TooLate.Select(m => m.Id));
        Assert.Equal([AnyMark.Id(2)], back.After.Select(m => m.Id));
        var field = Assert.Single(back.Fields);
        Assert.Equal(("N4", 4, 5), (field.Field, field.KnownThen.ChecksWet!.Value, field.KnownNow.ChecksWet!.Value));
    }

    [Fact]
    public void With_nothing_late_nothing_stood_otherwise() => AnyMark.Several.Sample(marks =>
    {
        var back = PlanHindsight.Of(PlannedMorning.State(), Logbook.Empty.With(marks.Where(m => m.Entered <= Six && m.Happened <= Six)), Six);
        Assert.Empty(back.TooLate);
        Assert.Empty(back.Fields);
    });

    [Fact]
    public void What_somebody_was_told_is_held_against_another_plan()
    {
        var plan = PlannedMorning.Plan();
        var step = new ToldStep("S2", PlanTaskKind.Sow, plan.Task("S2", PlanTaskKind.Sow)!.Start);
        var book = SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(Marks.At(1, PlannedMorning.At(8, 4), new Told("14/pilot", "Joss Tarrowby", ToldState.Told) { Plan = 14, Steps = [step] })), Six);
        Assert.False(Assert.Single(PlanHindsight.ToldOf(book, 14, plan)).Moved);
        var later = plan with { Tasks = [.. plan.Tasks.Select(t => t is { Field: "S2", Kind: PlanTaskKind.Sow } ? t with { Start = t.Start.AddHours(3) } : t)] };
        Assert.Equal((true, step.Start.AddHours(3)), (PlanHindsight.ToldOf(book, 14, later)[0].Moved, PlanHindsight.ToldOf(book, 14, later)[0].Start!.Value));
        Assert.True(PlanHindsight.ToldOf(book, 14, plan with { Tasks = [] })[0].Moved);
        Assert.Empty(PlanHindsight.ToldOf(book, 13, plan));
    }
}
