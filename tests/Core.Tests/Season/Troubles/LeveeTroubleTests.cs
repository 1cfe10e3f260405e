using CsCheck;

namespace Watersown.Season.Troubles;

public sealed class LeveeTroubleTests
{
    private static readonly DateTimeOffset Now = PlannedMorning.At(8, 7, 0);

    [Fact]
    public void Below_is_deep_above_is_bare_and_the_field_is_looked_at_today()
    {
        var trouble = LeveeTroubles.Of(Book(Out(2, 3)), null, "N2").Single();
        Assert.Equal((2, 3, false), (trouble.Above, trouble.Below, trouble.LeavesField));
        Assert.Equal((new DateOnly(2026, 5, 8), false), (trouble.Scout!.Value, trouble.Scouted));
        var due = ScoutList.Of(Book(Out(2, 3)), null).Single(d => d.Reason == ScoutReason.Levee);
        Assert.Equal(("N2", new DateOnly(2026, 5, 8)), (due.Field.Code, due.Due));
        Assert.Equal([2, 3], due.Checks);
    }

    [Fact]
    public void The_half_time_is_that_of_the_check_above_with_what_was_read_there()
    {
        // N2: 128 ac in 6 checks, 21.33 ac; nothing told: 6 ft, 3 in. 2.25 cfs, 21.33 × 0.25 / 2 = 2.667 ac-ft, 14.3 h at the first rate.
        var trouble = LeveeTroubles.Of(Book(Out(2, 3)), null, "N2").Single();
        Assert.Equal((false, false), (trouble.WidthTold, trouble.HeadTold));
        Assert.Equal(14.3, trouble.Time.HalfAtFirstRate.TotalHours, 1);
        var read = LeveeTroubles.Of(Book(new DepthRead("N2", 2, WaterDepth.FromInches(6)), Out(2, 3) with { Width = Length.FromFeet(12) }), null, "N2").Single();
        Assert.Equal((6.0, 12.0, true, true), (Math.Round(read.Gap.Head.Inches, 9), read.Gap.Width.Feet, read.WidthTold, read.HeadTold));
    }

    [Fact]
    public void A_field_under_hold_is_never_offered_a_way_out_for_its_water() =>
        Gen.Select(Gen.Int[1, 6], Gen.Bool, Gen.Bool).Sample((check, last, hold) =>
        {
            var ground = PlannedMorning.State();
            ground = ground with { Fields = [.. ground.Fields.Select(f => f.Code == "N2" ? f with { NoSpill = hold } : f)] };
            var fault = last ? Out(6, null) : Out(check, check < 6 ? check + 1 : null);
            var trouble = LeveeTroubles.Of(SeasonFold.Fold(ground, Logbook.Empty.With([Marks.At(1, Now, fault)]), Now), null, "N2").Single();
            Assert.Equal(hold, trouble.NoSpill);
            if (hold) Assert.DoesNotContain(LeveeStep.LetDown, trouble.Irrigator.Concat(trouble.Tractor));
            if (hold && trouble.LeavesField) Assert.Contains(LeveeStep.RingAdviser, trouble.Irrigator);
        });

    [Fact]
    public void The_last_levee_lets_water_out_of_the_field()
    {
        var trouble = LeveeTroubles.Of(Book(Out(6, null)), null, "N2").Single();
        Assert.Equal((6, null, true), (trouble.Above, trouble.Below, trouble.LeavesField));
    }

    [Fact]
    public void The_log_holds_picture_time_and_person_and_mending_ends_it()
    {
        var fault = Out(2, 3) with { Photo = "0123456789abcdef0123456789abcdef" };
        var told = LeveeTroubles.Of(Book(fault), null, "N2").Single().Fault;
        Assert.Equal(("0123456789abcdef0123456789abcdef", Now.AddMinutes(-5), "Tamsin Wexcombe"), (told.Fault.Photo, told.Mark.Happened, told.Mark.By));
        var log = Logbook.Empty.With([Marks.At(1, Now.AddMinutes(-5), fault), Marks.At(2, Now, new FaultMended(AnyMark.Id(1)))]);
        Assert.Empty(LeveeTroubles.Of(SeasonFold.Fold(PlannedMorning.State(), log, Now), null, "N2"));
    }

    [Fact]
    public void A_look_since_takes_it_off_the_list_and_told_people_are_told()
    {
        var log = Logbook.Empty.With([Marks.At(1, Now.AddMinutes(-30), Out(2, 3)), Marks.At(2, Now.AddMinutes(-3), new Scouted("N2", "stand", "thin"))]);
        var book = SeasonFold.Fold(PlannedMorning.State(), log, Now);
        Assert.DoesNotContain(ScoutList.Of(book, null), d => d.Reason == ScoutReason.Levee);
        var call = LeveeTroubles.Of(book, null, "N2").Single().Calls.First(c => c.Role == TroubleRole.Irrigator);
        var told = SeasonFold.Fold(PlannedMorning.State(), log.With([Marks.At(3, Now, new Told(call.Message, "Tamsin Wexcombe", ToldState.Told))]), Now);
        Assert.Equal(ToldState.Told, LeveeTroubles.Of(told, null, "N2").Single().Calls.First(c => c.Role == TroubleRole.Irrigator).Said?.Last.State);
    }

    [Fact]
    public void A_field_not_yet_sown_says_which_flight_waits()
    {
        var trouble = LeveeTroubles.Of(Book(new FaultFound(FaultKind.Levee) { Field = "R4", Check = 1, ToCheck = 2 }), PlannedMorning.Plan(), "R4").Single();
        Assert.Equal((PlannedMorning.At(10, 5, 45), null), (trouble.Sow!.Value, trouble.Scout));
    }

    private static FaultFound Out(int check, int? below) => new(FaultKind.Levee) { Field = "N2", Check = check, ToCheck = below };

    private static SeasonBook Book(params MarkFact[] facts) =>
        SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(facts.Select((f, i) => Marks.At(i + 1, Now.AddMinutes(-5), f))), Now);
}
