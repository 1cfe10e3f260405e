using Watersown.Holds;
using Watersown.Schedule.Sheets;
using Watersown.Season.Boards;
using Watersown.Wording;
using static Watersown.PlannedMorning;

namespace Watersown.Season;

/// <summary>Treatments told by marks: what they hold, and what the irrigator's sheet says of it.</summary>
public sealed class HoldFoldTests
{
    private static readonly DateTimeOffset Six = At(8, 6);

    private static readonly Treatment P = new("R4", "P", new DateOnly(2026, 5, 8), new DateOnly(2026, 5, 8)) { Rule = new HoldRule { Days = 5 } };

    private static readonly Mark One = Marks.At(1, Six, new HoldSettingsTold(new HoldSettings { Counting = ApplicationDay.CountsAsOne }));

    [Fact]
    public void A_field_lets_no_water_out_while_what_was_applied_holds_and_does_after()
    {
        Mark[] marks = [One, Marks.At(2, Six, new TreatmentTold(P, TreatmentState.Applied))];
        Assert.False(State().Season("R4").NoSpill);
        Assert.True(Book(At(12, 20), marks).State.Season("R4").NoSpill);
        Assert.False(Book(At(13, 6), marks).State.Season("R4").NoSpill);
        Assert.Contains("R4", WaterSheets.Of(PlannedTasks.Plan(Book(At(12, 20), marks).State), new DateOnly(2026, 5, 12), null).NoSpill.Select(f => f.Code));
    }

    [Fact]
    public void Booked_then_applied_then_called_off_each_takes_the_place_of_the_one_before()
    {
        var booked = Marks.At(1, Six, new TreatmentTold(P, TreatmentState.Booked));
        var applied = Marks.At(2, Six.AddHours(1), new TreatmentTold(P with { Product = "p" }, TreatmentState.Applied));
        var off = Marks.At(3, Six.AddHours(2), new TreatmentTold(P, TreatmentState.CalledOff));
        Assert.Equal(TreatmentState.Booked, Assert.Single(Book(At(9, 6), booked).Holds.Treatments).State);
        Assert.False(Book(At(9, 6), booked).State.Season("R4").NoSpill);
        Assert.Equal(TreatmentState.Applied, Assert.Single(Book(At(9, 6), applied, booked).Holds.Treatments).State);
        Assert.Empty(Book(At(9, 6), off, applied, booked).Holds.Treatments);
    }

    [Fact]
    public void The_same_product_again_is_another_treatment_and_takes_no_hold_away()
    {
        var first = Marks.At(1, Six, new TreatmentTold(P, TreatmentState.Applied));
        Assert.Equal((1, 2), (Book(At(9, 6)).Holds.NextRound("R4", "P"), Book(At(9, 6), first).Holds.NextRound("r4", "p")));
        var again = Marks.At(2, Six, new TreatmentTold(P with { Round = 2, From = new DateOnly(2026, 5, 20), Until = new DateOnly(2026, 5, 20) }, TreatmentState.Booked));
        Assert.Equal(2, Assert.Single(Book(At(9, 6), first, again).Holds.Ledger).Holds.Length);
    }

    [Fact]
    public void What_a_booking_would_meet_is_known_before_it_is_put_down()
    {
        var q = new TreatmentTold(new Treatment("N4", "Q", new DateOnly(2026, 6, 10), new DateOnly(2026, 6, 20)) { Rule = new HoldRule { Needs = WaterNeeded.Lowered } }, TreatmentState.Booked);
        var book = Book(At(9, 6), One, Marks.At(2, Six, q)).Holds;
        var p = new TreatmentTold(new Treatment("N4", "P", new DateOnly(2026, 5, 20), new DateOnly(2026, 5, 20)) { Rule = new HoldRule { Days = 30 } }, TreatmentState.Booked);
        Assert.Empty(book.Collisions);
        Assert.Equal([new DaySpan(new DateOnly(2026, 6, 19), new DateOnly(2026, 6, 20))], Assert.Single(book.Brings(p)).Free);
        Assert.Empty(book.With(p).Brings(p));
    }

    [Fact]
    public void A_wish_is_kept_until_it_is_wanted_no_longer()
    {
        var days = new DaySpan(new DateOnly(2026, 5, 9), new DateOnly(2026, 5, 11));
        var wish = Marks.At(3, Six, new WaterWished("R4", WaterWish.Peg) { Days = days });
        var book = Book(At(9, 6), One, Marks.At(2, Six, new TreatmentTold(P, TreatmentState.Applied)), wish);
        Assert.Empty(Assert.Single(book.Holds.Collisions).Free);
        Assert.Empty(Book(At(9, 6), wish, Marks.At(4, Six.AddHours(1), new WaterWished("r4", WaterWish.Peg))).Holds.Wishes);
    }

    [Fact]
    public void Water_that_left_during_a_hold_is_told_apart_from_water_that_left_after()
    {
        var applied = Marks.At(2, Six, new TreatmentTold(P, TreatmentState.Applied));
        LetGo After(DateTimeOffset at) => Assert.Single(Book(At(20, 6), One, applied, Marks.At(3, at, new HeldWaterGone("R4") { Reason = "the box" })).Holds.Gone);
        Assert.True(After(At(12, 18)).Early);
        Assert.False(After(At(13, 7)).Early);
    }

    [Fact]
    public void The_calendar_draws_every_hold_and_wish_within_its_paper()
    {
        var q = new Treatment("R4", "Q", new DateOnly(2026, 5, 10), new DateOnly(2026, 5, 16)) { Rule = new HoldRule { Needs = WaterNeeded.Lowered } };
        var book = Book(At(9, 6), One, Marks.At(2, Six, new TreatmentTold(P, TreatmentState.Applied)), Marks.At(3, Six, new TreatmentTold(q, TreatmentState.Booked))).Holds;
        var calendar = HoldCalendar.Of(book, new DateOnly(2026, 5, 9))!;
        Assert.Equal([HoldBarKind.Held, HoldBarKind.Wanted], calendar.Rows.Select(r => r.Bars[0].Kind));
        // Held 8 to 12 May, wanted 10 to 16: left are 13 to 16, four days of the seven.
        var (wanted, free) = (calendar.Rows[1].Bars[0], calendar.Rows[1].Bars[1]);
        Assert.Equal((HoldBarKind.Free, 4), (free.Kind, free.Days.Days));
        Assert.Equal(4.0 / 7, free.Width / wanted.Width, 0.001);
        Assert.Equal(wanted.Left + wanted.Width, free.Left + free.Width, 0.02);
        Assert.All(calendar.Rows.SelectMany(r => r.Bars), b => Assert.True(b.Left >= 0 && b.Left + b.Width <= HoldCalendar.Width));
        Assert.Null(HoldCalendar.Of(HoldBook.Empty, new DateOnly(2026, 5, 9)));
    }

    [Theory]
    [InlineData(Language.English)]
    [InlineData(Language.Spanish)]
    public void What_is_said_of_a_hold_names_the_rule_and_the_office_and_gives_no_leave(Language language)
    {
        var words = Words.In(language).Hold;
        var all = typeof(HoldWords).GetProperties().Select(p => p.GetValue(words)).OfType<string>().ToList();
        Assert.True(all.Count > 90);
        foreach (var forbidden in new[] { "legal", "you may", "may release", "safe", "approved", "allowed", "permitted", "puede soltar", "puede liberar", "segur", "aprobad", "autorizad", "permitid", "legalmente" })
            Assert.DoesNotContain(all, w => w.Contains(forbidden, StringComparison.OrdinalIgnoreCase));
        Assert.Contains(language == Language.English ? "confirm with the county office" : "confirme con la oficina del condado", words.NotBefore, StringComparison.Ordinal);
    }

    [Fact]
    public void Days_that_end_before_they_begin_are_refused_and_a_hold_of_two_months_is_doubted()
    {
        IEnumerable<ProblemKind> Kinds(MarkFact fact) => MarkChecks.Check(Marks.At(1, Six, fact), State(), Six).Select(p => p.Kind);
        Assert.Equal([HoldProblems.WindowBackward], Kinds(new TreatmentTold(P with { Until = P.From.AddDays(-1) }, TreatmentState.Booked)));
        Assert.Equal([HoldProblems.WindowBackward], Kinds(new WaterWished("R4", WaterWish.Drain) { Days = new DaySpan(P.From, P.From.AddDays(-3)) }));
        Assert.Single(Kinds(new TreatmentTold(P with { Rule = new HoldRule { Days = 60 } }, TreatmentState.Booked)));
        Assert.Empty(Kinds(new TreatmentTold(P, TreatmentState.Applied)));
    }

    private static SeasonBook Book(DateTimeOffset now, params Mark[] marks) => SeasonFold.Fold(State(), Logbook.Empty.With(marks), now);
}
