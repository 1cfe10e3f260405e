using CsCheck;
using Watersown.Schedule;

namespace Watersown.Season;

public sealed class PlanLedgerTests
{
    private static readonly DateTimeOffset Six = PlannedMorning.At(8, 6);

    private static readonly DateTimeOffset Sowing = PlannedMorning.At(9, 6, 30);

    [Fact]
    public void What_was_known_when_a_plan_was_made_leaves_out_what_was_put_down_later()
    {
        var late = Marks.At(1, PlannedMorning.At(8, 5), new CheckWater("N4", 5, WaterSeen.Wet)).Entered(Six.AddHours(2));
        var log = Logbook.Empty.With(late, Marks.At(2, Six.AddHours(1), new Noted("x", null)));
        Assert.Equal(4, PlanLedger.KnownAt(PlannedMorning.State(), log, Six).State.Season("N4").ChecksWet);
        Assert.Equal([AnyMark.Id(2), AnyMark.Id(1)], PlanLedger.Since(log, Six).Select(m => m.Id));
        Assert.Equal([AnyMark.Id(1)], PlanLedger.TooLateFor(log, Six).Select(m => m.Id));
    }

    [Fact]
    public void An_answer_keeps_the_steps_that_the_message_told_of()
    {
        var steps = PlanLedger.ToldSteps(Fold(Say(1, ToldState.Told, 1, Sowing), Marks.At(2, Six.AddMinutes(9), new Told("14/pilot", "Joss Tarrowby", ToldState.Agreed))));
        var told = Assert.Single(steps);
        Assert.Equal((ToldState.Agreed, Sowing, 14), (told.State, told.Step.Start, told.Plan!.Value));
    }

    [Fact]
    public void Who_was_not_reached_was_not_told() => Assert.Empty(PlanLedger.ToldSteps(Fold(Say(1, ToldState.NotReached, 1, Sowing))));

    [Fact]
    public void The_newer_message_to_the_same_person_counts()
    {
        var newer = Marks.At(2, Six.AddHours(1), new Told("15/pilot", "Joss Tarrowby", ToldState.Told) { Steps = [new ToldStep("s2", PlanTaskKind.Sow, Sowing.AddHours(1))] });
        Assert.Equal(Sowing.AddHours(1), Assert.Single(PlanLedger.ToldSteps(Fold(Say(1, ToldState.Told, 1, Sowing), newer))).Step.Start);
    }

    [Fact]
    public void A_plan_that_moves_what_was_told_shows_it()
    {
        var plan = PlannedMorning.Plan();
        var book = Fold(Say(1, ToldState.Told, 1, Sowing));
        Assert.Equal(Sowing, plan.Task("S2", PlanTaskKind.Sow)!.Start);
        Assert.Empty(PlanLedger.Moves(book, plan));
        var moved = plan with { Tasks = [.. plan.Tasks.Select(t => t is { Field: "S2", Kind: PlanTaskKind.Sow } ? t with { Start = t.Start.AddDays(1), End = t.End.AddDays(1) } : t)] };
        Assert.Equal(TimeSpan.FromDays(1), Assert.Single(PlanLedger.Moves(book, moved)).Later);
        var dropped = plan with { Tasks = [.. plan.Tasks.Where(t => t.Field != "S2")] };
        Assert.Null(Assert.Single(PlanLedger.Moves(book, dropped)).Start);
        var hardly = plan with { Tasks = [.. plan.Tasks.Select(t => t is { Field: "S2", Kind: PlanTaskKind.Sow } ? t with { Start = t.Start.AddMinutes(15) } : t)] };
        Assert.Empty(PlanLedger.Moves(book, hardly));
    }

    [Fact]
    public void What_has_passed_cannot_be_moved_any_more() =>
        Assert.Empty(PlanLedger.Moves(SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(Say(1, ToldState.Told, 1, Sowing)), Sowing), PlannedMorning.Plan() with { Tasks = [] }));

    [Fact]
    public void No_late_mark_rewrites_what_others_were_told() => AnyMark.Several.Sample(marks =>
    {
        var said = Say(1000, ToldState.Agreed, 1, Sowing);
        ImmutableArray<Mark> late = [.. marks.Where(m => m.Fact is not Told && m.Replaces != said.Id).Select(m => m with { Entered = m.Entered.AddDays(2) })];
        Assert.Equal(PlanLedger.ToldSteps(Fold(said)), PlanLedger.ToldSteps(Fold([said, .. late])));
    });

    private static Mark Say(int id, ToldState state, int minutes, DateTimeOffset start) => Marks.At(id, Six.AddMinutes(minutes), new Told("14/pilot", "Joss Tarrowby", state)
    {
        Role = "pilot",
        Plan = 14,
        Steps = [new ToldStep("S2", PlanTaskKind.Sow, start)],
    });

    private static SeasonBook Fold(params Mark[] marks) => SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(marks), PlannedMorning.At(9, 0));
}
