using CsCheck;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;

namespace Watersown.Season;

public sealed class MorningCallsTests
{
    private static readonly DateTimeOffset Now = PlannedMorning.Now;

    [Fact]
    public void Everyone_whom_the_plan_has_words_for_is_one_call_in_the_own_language()
    {
        var calls = Of();
        var words = Messages.Of(Plan(), new DateOnly(2026, 5, 8));
        Assert.Equal(words.Select(m => (m.Role, m.Name)).Distinct().Count(), calls.Length);
        Assert.Equal(words.Select(m => m.Text).Order(StringComparer.Ordinal), calls.SelectMany(c => c.Lines).Select(l => l.Text).Order(StringComparer.Ordinal));
        Assert.All(calls, c => Assert.Equal((CallState.ToTell, false), (c.State, c.Changed)));
        Assert.Contains(calls, c => c is { Name: "Lucero Quintabar", Language: Wording.Language.Spanish });
        Assert.Equal(calls.Length, calls.Select(c => c.Message).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void The_call_that_falls_due_first_stands_first()
    {
        var calls = Of();
        var due = calls.Select(c => c.Before ?? DateTimeOffset.MaxValue).ToList();
        Assert.Equal(due.Order(), due);
        Assert.All(calls, c => Assert.True(c.Before is null || c.Before > Now));
    }

    [Theory]
    [InlineData(ToldState.Told, CallState.Told)]
    [InlineData(ToldState.Heard, CallState.Heard)]
    [InlineData(ToldState.Agreed, CallState.Agreed)]
    [InlineData(ToldState.NotReached, CallState.NotReached)]
    public void One_mark_says_how_far_a_call_has_come(ToldState state, CallState call)
    {
        var pilot = Call(Of(), CrewRole.Pilot);
        var after = Call(Of(Marks.At(1, Now.AddMinutes(2), pilot.Mark(state, byVoice: true)).By("Odalie Marrowfen")), CrewRole.Pilot);
        Assert.Equal((call, pilot.Message, "Odalie Marrowfen", true), (after.State, after.Message, after.Last!.By, after.Last.Last.ByVoice));
        Assert.False(after.Changed);
    }

    [Fact]
    public void An_answer_stands_in_the_story_of_the_same_message_and_a_withdrawn_word_was_never_said()
    {
        var pilot = Call(Of(), CrewRole.Pilot);
        var told = Marks.At(1, Now.AddMinutes(1), pilot.Mark(ToldState.Told, byVoice: false));
        var agreed = Marks.At(2, Now.AddMinutes(2), Call(Of(told), CrewRole.Pilot).Mark(ToldState.Agreed, byVoice: true));
        Assert.Equal(2, Call(Of(told, agreed), CrewRole.Pilot).Last!.Story.Length);
        Assert.Equal(CallState.ToTell, Call(Of(told, Marks.At(3, Now.AddMinutes(3), new Withdrawn()).Replacing(1)), CrewRole.Pilot).State);
    }

    [Fact]
    public void A_call_that_was_made_goes_below_those_still_to_make()
    {
        var first = Of()[0];
        var calls = Of(Marks.At(1, Now, first.Mark(ToldState.Heard, byVoice: true)));
        Assert.Equal(first.Name, calls[^1].Name);
    }

    [Fact]
    public void A_plan_that_changes_the_words_says_so_and_asks_for_a_new_call()
    {
        var dispatcher = Call(Of(), CrewRole.Dispatcher);
        var told = Marks.At(1, Now, dispatcher.Mark(ToldState.Agreed, byVoice: true));
        var plan = Plan();
        var moved = plan with { Number = 15, Tasks = [.. plan.Tasks.Select(t => t is { Kind: PlanTaskKind.Sow, Field: "S2" } ? t with { Start = t.Start.AddMinutes(30), End = t.End.AddMinutes(30) } : t)] };
        var book = Book(told);
        var call = Call(MorningCalls.Of(book, moved with { State = book.State }), CrewRole.Dispatcher);
        Assert.Equal((CallState.ToTell, true), (call.State, call.Changed));
        Assert.NotEqual(dispatcher.Message, call.Message);
        Assert.Contains(call.Lines, l => l.State == CallState.ToTell);
        Assert.Contains(call.Lines, l => l.State == CallState.Agreed); // Sunday's list is as it was said
        Assert.DoesNotContain(call.Lines.First(l => l.State == CallState.Agreed).Text, call.ToSay, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_of_yesterday_afternoon_still_stand_and_older_ones_do_not()
    {
        var pilot = Call(Of(), CrewRole.Pilot);
        Assert.Equal(CallState.Told, Call(Of(Marks.At(1, PlannedMorning.At(7, 16, 20), pilot.Mark(ToldState.Told, byVoice: true))), CrewRole.Pilot).State);
        Assert.Equal(CallState.ToTell, Call(Of(Marks.At(1, PlannedMorning.At(7, 11, 0), pilot.Mark(ToldState.Told, byVoice: true))), CrewRole.Pilot).State);
    }

    [Fact]
    public void What_was_told_is_kept_with_its_steps_so_that_a_later_plan_shows_what_it_moves()
    {
        var dispatcher = Call(Of(), CrewRole.Dispatcher);
        Assert.Contains(dispatcher.Steps, s => s is { Field: "S2", Task: PlanTaskKind.Sow });
        Assert.All(Call(Of(), CrewRole.Warehouse).Steps, s => Assert.True(s.Task is PlanTaskKind.Soak or PlanTaskKind.Drain or PlanTaskKind.Haul));
        var plan = Plan();
        var book = Book(Marks.At(1, Now, dispatcher.Mark(ToldState.Told, byVoice: true)));
        Assert.Empty(PlanLedger.Moves(book, plan));
        var later = plan with { Tasks = [.. plan.Tasks.Select(t => t is { Kind: PlanTaskKind.Sow, Field: "S2" } ? t with { Start = t.Start.AddHours(1), End = t.End.AddHours(1) } : t)] };
        Assert.Equal("S2", Assert.Single(PlanLedger.Moves(book, later)).Told.Step.Field);
    }

    [Fact]
    public void A_name_of_a_field_inside_a_longer_one_is_not_that_field() =>
        Assert.DoesNotContain(Call(Of(), CrewRole.Pilot).Steps, s => s.Field is "S" or "N");

    [Fact]
    public void The_order_of_marks_does_not_matter()
    {
        var calls = Of();
        var words = Gen.Select(Gen.Int[0, calls.Length - 1], Gen.Enum<ToldState>(), Gen.Int[-900, 300], Gen.Bool);
        Gen.Select(words.Array[1, 12], Gen.Int[0, 1000]).Sample((said, seed) =>
        {
            ImmutableArray<Mark> marks = [.. said.Select((w, i) => Marks.At(i, Now.AddMinutes(w.Item3), calls[w.Item1].Mark(w.Item2, w.Item4)).Entered(Now.AddMinutes(Math.Max(0, w.Item3))))];
            var other = marks.Sort((a, b) => string.CompareOrdinal(Scrambled(a, seed), Scrambled(b, seed)));
            var now = Now.AddHours(6);
            var (one, two) = (SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(marks), now), SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(other), now));
            Assert.Equal(Seen(one), Seen(two));
        });
    }

    [Fact]
    public void No_marks_at_all_take_a_call_off_the_page() => AnyMark.Several.Sample(marks =>
    {
        var book = SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(marks), Now);
        var plan = Plan() with { State = book.State };
        Assert.Equal(Messages.Of(plan, new DateOnly(2026, 5, 8)).Length, MorningCalls.Of(book, plan).Sum(c => c.Lines.Length));
    });

    private static string Scrambled(Mark mark, int seed) => ((mark.Id.Text.GetHashCode(StringComparison.Ordinal) ^ seed) % 1009).ToString("0000", System.Globalization.CultureInfo.InvariantCulture) + mark.Id.Text;

    private static string Seen(SeasonBook book) => string.Join('\n', MorningCalls.Of(book, Plan() with { State = book.State })
        .Select(c => c.Message + c.Name + c.State + c.Changed + c.Last?.At + c.Last?.Last.State + string.Join('|', c.Lines.Select(l => l.Text + l.State)) + c.Before));

    private static MorningCall Call(ImmutableArray<MorningCall> calls, CrewRole role) => calls.First(c => c.Role == role);

    private static SeasonPlan Plan()
    {
        var plan = PlannedMorning.Plan();
        return plan with { Decisions = Decisions.Of(plan) };
    }

    private static SeasonBook Book(params ImmutableArray<Mark> marks) => SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(marks), Now.AddMinutes(5));

    private static ImmutableArray<MorningCall> Of(params ImmutableArray<Mark> marks)
    {
        var book = Book(marks);
        return MorningCalls.Of(book with { Now = Now }, Plan() with { State = book.State });
    }
}
