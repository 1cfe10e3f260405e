using Watersown.Schedule;
using Watersown.Schedule.Replan;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Season;

/// <summary>From the choice on a blown-out morning to marks and messages: who hears of it, and who does not.</summary>
public sealed class ReplanDraftTests
{
    private static readonly DateTimeOffset Now = PlannedMorning.Now;

    [Fact]
    public void Nobody_was_told_anything_so_everyone_concerned_is_drafted_to_in_their_own_language()
    {
        var drafts = Drafts(Book(), 0);
        Assert.Equal(["Perrin Aldegate", "Fenna Okwold", "Joss Tarrowby", "Tamsin Wexcombe", "Lucero Quintabar"], drafts.Select(d => d.Name));
        Assert.All(drafts.SelectMany(d => d.Texts), t => Assert.True(t.Septets <= ShortText.Most && ShortText.IsPlain(t.Text), t.Text));
        Assert.Equal("Drain plan, I call before each: B-08 Fri 5/8 06:30 for S2.", drafts[0].Texts[0].Text);
        var soaks = string.Join(' ', drafts[0].Texts.Select(t => t.Text).Where(t => t.StartsWith("Soak Fri 5/8 06:00 for Sun 5/10: ", StringComparison.Ordinal)));
        Assert.All(["N3 14,880 lb dry E-1 lot 2", "R4 15,450 lb dry E-1 lot 2", "N4 17,700 lb dry E-2 lot 1 B-09"], s => Assert.Contains(s, soaks, StringComparison.Ordinal));
        Assert.Contains(drafts[0].Texts, t => t.Text == "Deliver Heron's Elbow Sat 5/9: 06:15 B-08 for S2.");
        Assert.Contains(drafts[0].Texts, t => t.Text == "Do not haul, past its time: B-07a, B-07b. Wait for me.");
        Assert.Equal(["No flying Fri 5/8.", "Ready Sat 5/9: S2 83 ac at 155 lb/ac dry. Seed at strip 06:30. About 0.89 h in all. OK?"], drafts[1].Texts.Select(t => t.Text).Take(2));
        Assert.Equal("Mantener a 2 pulg. para sembrar: S2 sab 9 may 06:30, N3 dom 10 may 06:00, R4 dom 10 may 07:00, N4 dom 10 may 08:10. NO tirar agua.", drafts[4].Texts.Single().Text);
    }

    [Fact]
    public void Who_was_told_just_this_is_left_alone_and_who_was_told_otherwise_is_shown_what_moves()
    {
        var pilot = Drafts(Book(), 0).Single(d => d.Role == CrewRole.Pilot);
        var told = Book(Marks.At(1, Now, ReplanChoosing.Say(pilot, ToldState.Told, voice: true, 14)));
        Assert.True(Drafts(told, 0).Single(d => d.Role == CrewRole.Pilot).Known);
        Assert.False(Drafts(told, 0).Single(d => d.Role == CrewRole.Dispatcher).Known);
        var other = Drafts(told, 1).Single(d => d.Role == CrewRole.Pilot);
        Assert.False(other.Known);
        Assert.Equal([("S2", PlannedMorning.At(10, 6)), ("N3", PlannedMorning.At(9, 6, 30))], other.Moved.Select(m => (m.Told.Step.Field, m.Start!.Value)));
    }

    [Fact]
    public void A_flight_that_the_dispatcher_was_told_of_from_here_is_decided_on_the_morning_page_too()
    {
        var (book, choice) = (Book(), Choice(Replan(Book()), 0));
        var laid = ReplanLaying.On(PlannedMorning.Plan(), Replan(book), choice);
        var plan = laid with { Decisions = [.. Decisions.Of(laid).Where(d => d.Kind == "list-flight" && d.Fields.Contains("S2", StringComparer.Ordinal))] };
        Assert.NotEmpty(plan.Decisions);
        var draft = Drafts(book, 0).Single(d => d.Role == CrewRole.Dispatcher);
        var told = Book(Marks.At(1, Now, ReplanChoosing.Say(draft, ToldState.Told, voice: true, 14)));
        Assert.NotNull(Boards.DecisionLines.Of(book, plan).Next);
        Assert.Null(Boards.DecisionLines.Of(told, plan).Next);
    }

    [Fact]
    public void Who_could_not_be_reached_still_has_to_be_told()
    {
        var pilot = Drafts(Book(), 0).Single(d => d.Role == CrewRole.Pilot);
        Assert.False(Drafts(Book(Marks.At(1, Now, ReplanChoosing.Say(pilot, ToldState.NotReached, voice: true, 14))), 0).Single(d => d.Role == CrewRole.Pilot).Known);
    }

    [Fact]
    public void Choosing_pins_the_steps_and_taking_the_pins_back_gives_back_what_stood()
    {
        var before = Book(Marks.At(1, Now, new StepPinned("N3", PlanTaskKind.Sow, PlannedMorning.At(8, 6))));
        var (replan, choice) = (Replan(before), Choice(Replan(before), 0));
        var marks = ReplanChoosing.Choose(before, replan, choice).Select((f, i) => Marks.At(10 + i, Now.AddMinutes(1), f)).ToArray();
        Assert.Equal(8, marks.Length);
        var after = Book([Marks.At(1, Now, new StepPinned("N3", PlanTaskKind.Sow, PlannedMorning.At(8, 6))), .. marks]);
        Assert.False(ReplanLaying.IsChosen(before.State, choice));
        Assert.True(ReplanLaying.IsChosen(after.State, choice));
        Assert.False(ReplanLaying.IsChosen(after.State, Choice(Replan(after), 1)));
        Assert.Empty(ReplanChoosing.Choose(after, Replan(after), Choice(Replan(after), 0)));
        var pins = ReplanChoosing.PinsOf(after, choice);
        Assert.Equal(marks.Select(m => m.Id).Order(), pins.Order());
        var undone = Book([Marks.At(1, Now, new StepPinned("N3", PlanTaskKind.Sow, PlannedMorning.At(8, 6))), .. marks, .. pins.Select((p, i) => Marks.At(50 + i, Now.AddMinutes(2), new Withdrawn()) with { Replaces = p })]);
        Assert.Equal(before.State.Pins, undone.State.Pins);
    }

    [Fact]
    public void A_soak_that_was_chosen_in_time_still_counts_after_the_hour_of_calls()
    {
        var before = Book();
        var marks = ReplanChoosing.Choose(before, Replan(before), Choice(Replan(before), 0)).Select((f, i) => Marks.At(10 + i, Now.AddMinutes(1), f)).ToArray();
        var later = SeasonFold.Fold(Ground(), Logbook.Empty.With([.. marks, Marks.At(30, PlannedMorning.At(8, 6, 30), new BatchDrained("B-08"))]), PlannedMorning.At(8, 7));
        Assert.True(ReplanLaying.IsChosen(later.State, Choice(Replan(later), 0)));
    }

    [Fact]
    public void The_laid_plan_keeps_the_water_and_the_other_fields_as_they_are()
    {
        var book = Book();
        var (plan, replan) = (PlannedMorning.Plan(), Replan(book));
        var laid = ReplanLaying.On(plan, replan, Choice(replan, 1));
        var changed = PlanChanges.Between(plan, laid, Now).Select(c => c.Field).Distinct().ToList();
        Assert.DoesNotContain("S3", changed);
        Assert.Equal(plan.Tasks.Where(t => t.Kind == PlanTaskKind.Fill), laid.Tasks.Where(t => t.Kind == PlanTaskKind.Fill));
        Assert.Equal(("B-08", PlannedMorning.At(9, 6, 30)), (laid.Task("N3", PlanTaskKind.Sow)!.Batch, laid.Task("N3", PlanTaskKind.Sow)!.Start));
        Assert.Equal(PlannedMorning.At(8, 6, 30), laid.Task("N3", PlanTaskKind.Drain)!.Start);
    }

    private static SeasonState Ground() => PlannedMorning.State();

    private static SeasonBook Book(params Mark[] marks) => SeasonFold.Fold(Ground(), Logbook.Empty.With(marks), Now.AddMinutes(5));

    private static MorningReplan Replan(SeasonBook book) => MorningReplan.Of(ReplanCase.WithoutToday(book.State), PlannedMorning.Plan());

    private static ReplanPlan Choice(MorningReplan replan, int rank) => replan.Ranked(ReplanPrices.Of(replan.Case.State.Prices))[rank].Plan;

    private static ImmutableArray<ReplanDraft> Drafts(SeasonBook book, int rank) => ReplanDrafts.Of(book, PlannedMorning.Plan(), Replan(book), Choice(Replan(book), rank));
}
