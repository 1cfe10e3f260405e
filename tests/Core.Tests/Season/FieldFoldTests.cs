using Watersown.Schedule;

namespace Watersown.Season;

/// <summary>The ground is the farm of Friday 8 May, its fields as of 04:30.</summary>
public sealed class FieldFoldTests
{
    private static readonly DateTimeOffset Six = PlannedMorning.At(8, 6);

    [Fact]
    public void Water_seen_in_the_next_check_makes_one_more_wet()
    {
        var book = Fold(Wet(1, "N4", 5));
        Assert.Equal(5, book.State.Season("N4").ChecksWet);
        Assert.Equal([FieldChange.ChecksWet], book.Field("N4").Story.Single().Changes);
        Assert.Equal(PlannedMorning.At(5, 7), book.State.Season("N4").FirstWater);
        Assert.Equal(Six.AddMinutes(1), book.State.Season("N4").AsOf);
    }

    [Fact]
    public void Water_in_a_check_has_gone_through_those_above_it_down_from_the_nearest_inlet()
    {
        // Schoolhouse has four checks and no inlet but at its head; Two Gates has a second one into check 4.
        var head = Fold(Wet(1, "N5", 3)).Field("N5");
        Assert.Equal([true, true, false], head.Checks.Select(c => c.Implied));
        var dry = PlannedMorning.State();
        dry = dry with { Fields = [.. dry.Fields.Select(f => f.Code == "N4" ? f with { ChecksWet = 0 } : f)] };
        var second = SeasonFold.Fold(dry, Logbook.Empty.With(Wet(1, "N4", 5)), Six.AddDays(1));
        Assert.Equal([4, 5], second.Field("N4").Checks.Where(c => c.IsWet).Select(c => c.Number));
        Assert.Equal(2, second.State.Season("N4").ChecksWet);
    }

    [Fact]
    public void First_water_starts_the_flood()
    {
        var season = Fold(Wet(1, "N5", 1)).State.Season("N5");
        Assert.Equal((FieldStage.Flooding, (DateTimeOffset?)Six.AddMinutes(1), 1), (season.Stage, season.FirstWater, season.ChecksWet));
    }

    [Fact]
    public void A_field_is_full_when_every_check_is_told_full()
    {
        var marks = Enumerable.Range(1, 4).SelectMany(n => new[] { Wet(n, "N5", n), Marks.At(10 + n, Six.AddHours(n), new CheckWater("N5", n, WaterSeen.Full)) }).ToArray();
        Assert.Equal(FieldStage.Flooding, Fold(marks[..^1]).State.Season("N5").Stage);
        var season = Fold(marks).State.Season("N5");
        Assert.Equal((FieldStage.Full, (DateTimeOffset?)Six.AddHours(4)), (season.Stage, season.FullSince));
    }

    [Fact]
    public void Full_before_anybody_saw_it_wet_is_asked_about()
    {
        var book = Fold(Marks.At(1, Six, new CheckWater("N5", 2, WaterSeen.Full)));
        Assert.Equal([SeasonProblems.FullBeforeWet], Kinds(book));
        Assert.Empty(Fold(Wet(1, "N5", 2), Marks.At(2, Six.AddHours(2), new CheckWater("N5", 2, WaterSeen.Full))).Doubts);
    }

    [Fact]
    public void A_check_that_the_field_does_not_have_is_kept_and_asked_about() =>
        Assert.Equal([SeasonProblems.UnknownCheck], Kinds(Fold(Wet(1, "N5", 6))));

    [Fact]
    public void A_field_that_the_farm_does_not_have_is_kept_to_be_confirmed()
    {
        var book = Fold(Wet(1, "N9", 1), Depth(2, "N9", null, 3));
        Assert.Equal([SeasonProblems.UnknownField, SeasonProblems.UnknownField], Kinds(book));
        Assert.True(book.Field("n9").Unknown);
        Assert.Equal(3, book.Field("N9").Depth!.Depth.Inches, 9);
    }

    [Fact]
    public void The_depth_of_a_field_is_the_newest_word_or_the_round_of_its_checks_by_acres()
    {
        Assert.Equal(3, Fold(Depth(1, "R4", null, 4), Depth(2, "R4", null, 3)).State.Season("R4").Depth!.Value.Inches, 9);
        // Two of four equal checks, read in one round after the word for the field.
        Assert.Equal(2.5, Fold(Depth(1, "R4", null, 4), Depth(2, "R4", 1, 2), Depth(3, "R4", 3, 3)).State.Season("R4").Depth!.Value.Inches, 9);
    }

    [Fact]
    public void Two_people_who_read_unlike_depths_within_half_an_hour_are_named()
    {
        Assert.Equal([SeasonProblems.DepthsDiffer], Kinds(Fold(Depth(1, "R4", 2, 2), Depth(2, "R4", 2, 4).By("Lucero Quintabar"))));
        Assert.Empty(Fold(Depth(1, "R4", 2, 2), Depth(2, "R4", 2, 4)).Doubts);
        Assert.Empty(Fold(Depth(1, "R4", 2, 2), Depth(45, "R4", 2, 4).By("Lucero Quintabar")).Doubts);
    }

    [Fact]
    public void A_late_word_fills_what_the_farm_did_not_know_and_turns_nothing_back()
    {
        var before = PlannedMorning.At(7, 18);
        // N1's depth is told on the farm as of 04:30; N2's is not.
        var book = Fold(
            Marks.At(1, before, new DepthRead("N1", null, WaterDepth.FromInches(1))).Entered(Six),
            Marks.At(2, before, new DepthRead("N2", null, WaterDepth.FromInches(1))).Entered(Six));
        Assert.Equal(3, book.State.Season("N1").Depth!.Value.Inches, 9);
        Assert.Equal(1, book.State.Season("N2").Depth!.Value.Inches, 9);
        Assert.Equal(1, book.Field("N1").Depth!.Depth.Inches, 9);
        Assert.True(book.Field("N1").Story.Single().Late);
    }

    [Fact]
    public void A_late_stage_carries_a_field_forward_but_not_back()
    {
        var before = PlannedMorning.At(6, 18);
        var book = Fold(Stage(1, "N8", FieldStage.Rolled, before), Stage(2, "N6", FieldStage.Disced, before), Stage(3, "S5", FieldStage.Sown, before));
        Assert.Equal(FieldStage.Rolled, book.State.Season("N8").Stage);
        Assert.Equal(FieldStage.Rolled, book.State.Season("N6").Stage);
        Assert.Equal((FieldStage.Sown, (DateTimeOffset?)before), (book.State.Season("S5").Stage, book.State.Season("S5").SownAt));
        Assert.Empty(book.Doubts);
    }

    [Fact]
    public void A_step_back_told_today_is_taken_and_asked_about()
    {
        var book = Fold(Stage(1, "S2", FieldStage.Rolled, Six));
        Assert.Equal((FieldStage.Rolled, null, null), (book.State.Season("S2").Stage, book.State.Season("S2").FirstWater, book.State.Season("S2").FullSince));
        Assert.Equal([SeasonProblems.StageBack], Kinds(book));
    }

    [Fact]
    public void Ground_work_that_a_stage_proves_done_is_off_the_list()
    {
        var ground = PlannedMorning.State();
        ground = ground with { Fields = [.. ground.Fields.Select(f => f.Code == "H6" ? f with { WorkLeft = [GroundWork.Disc, GroundWork.Plane, GroundWork.Aqua, GroundWork.Roll] } : f)] };
        var book = SeasonFold.Fold(ground, Logbook.Empty.With(Stage(1, "H6", FieldStage.Planed, Six)), Six.AddDays(1));
        Assert.Equal([GroundWork.Aqua, GroundWork.Roll], book.State.Season("H6").WorkLeft!.Value);
    }

    [Fact]
    public void Half_a_field_sown_is_half_sown_until_the_rest_is()
    {
        Mark Part(int id, double acres, int day) => Marks.At(id, PlannedMorning.At(day, 7), new FieldSown("N3") { Land = Area.FromAcres(acres) });
        var half = Fold(Part(1, 48, 9));
        Assert.Equal(FieldStage.Full, half.State.Season("N3").Stage);
        Assert.Equal(48, half.Field("N3").Sown.Acres, 9);
        Assert.Equal([SeasonProblems.PartSown], Kinds(half));
        var whole = Fold(Part(1, 48, 9), Part(2, 47.5, 10));
        Assert.Equal((FieldStage.Sown, (DateTimeOffset?)PlannedMorning.At(10, 7)), (whole.State.Season("N3").Stage, whole.State.Season("N3").SownAt));
        Assert.Empty(whole.Doubts);
    }

    [Fact]
    public void The_same_sowing_told_by_two_people_is_one_and_a_second_one_is_asked_about()
    {
        Assert.Empty(Fold(Sown(1, "N3", 9, 7), Sown(2, "N3", 9, 8).By("Joss Tarrowby")).Doubts);
        Assert.Equal([SeasonProblems.SownTwice], Kinds(Fold(Sown(1, "N3", 9, 7), Sown(2, "N3", 11, 7))));
        Assert.Equal([SeasonProblems.SownTwice], Kinds(Fold(Sown(1, "N1", 9, 7))));
        Assert.Empty(Fold(Sown(1, "N3", 9, 7), Marks.At(2, PlannedMorning.At(11, 7), new FieldSown("N3") { Resow = true })).Doubts);
    }

    [Fact]
    public void Sown_while_still_flooding_is_asked_about() => Assert.Equal([SeasonProblems.SownBeforeFull], Kinds(Fold(Sown(1, "N4", 9, 7))));

    [Fact]
    public void Acres_put_right_on_the_spot_keep_the_shares_of_the_checks()
    {
        var book = Fold(Marks.At(1, Six, new FieldCorrected("N4") { Net = Area.FromAcres(120), Rate = SeedRate.FromPoundsPerAcre(160), Variety = "E-1", Name = "Two Gates East" }));
        var field = book.State.Farm.Field("N4");
        Assert.Equal((120, "Two Gates East"), (Math.Round(field.Net.Acres, 9), field.Name));
        Assert.Equal(120, field.Basins.Sum(b => b.Area.Acres), 9);
        Assert.Equal([FieldChange.Net, FieldChange.Rate, FieldChange.Variety, FieldChange.Name], book.Field("N4").Story.Single().Changes);
    }

    [Fact]
    public void A_fault_stays_open_until_it_is_mended_and_a_correction_of_it_is_still_the_same_fault()
    {
        var found = Marks.At(1, Six, new FaultFound(FaultKind.Levee) { Field = "N2", Check = 2, ToCheck = 3, Photo = "p1" });
        var wider = Marks.At(2, Six.AddMinutes(2), new FaultFound(FaultKind.Levee) { Field = "N2", Check = 2, ToCheck = 3, Width = Length.FromFeet(4) }).Replacing(1);
        Assert.Equal("p1", Assert.Single(Fold(found).Faults).Fault.Photo);
        Assert.Equal(4, Assert.Single(Fold(found, wider).Faults).Fault.Width!.Value.Feet, 9);
        Assert.Empty(Fold(found, wider, Marks.At(3, Six.AddHours(3), new FaultMended(AnyMark.Id(1)))).Faults);
    }

    [Fact]
    public void A_leaking_box_leaks_until_it_is_mended()
    {
        var leak = Marks.At(1, Six, new FaultFound(FaultKind.Box) { Field = "N4", Box = 2 });
        Assert.Equal([false, true], Fold(leak).State.Farm.Field("N4").Boxes.Select(b => b.Leaks));
        Assert.Equal([false, false], Fold(leak, Marks.At(2, Six.AddHours(1), new FaultMended(AnyMark.Id(1)))).State.Farm.Field("N4").Boxes.Select(b => b.Leaks));
    }

    [Fact]
    public void A_mark_can_be_undone_for_ten_minutes()
    {
        var mark = Wet(1, "N4", 5);
        Assert.Single(SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(mark), mark.Entered.AddMinutes(10)).Undoable);
        Assert.Empty(SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(mark), mark.Entered.AddMinutes(10.1)).Undoable);
    }

    private static Mark Wet(int id, string field, int check) => Marks.At(id, Six.AddMinutes(id), new CheckWater(field, check, WaterSeen.Wet));

    private static Mark Depth(int id, string field, int? check, double inches) => Marks.At(id, Six.AddMinutes(id), new DepthRead(field, check, WaterDepth.FromInches(inches)));

    private static Mark Stage(int id, string field, FieldStage stage, DateTimeOffset at) => Marks.At(id, at, new StageReached(field, stage));

    private static Mark Sown(int id, string field, int day, int hour) => Marks.At(id, PlannedMorning.At(day, hour), new FieldSown(field));

    private static IEnumerable<ProblemKind> Kinds(SeasonBook book) => book.Doubts.Select(d => d.Problem.Kind);

    private static SeasonBook Fold(params Mark[] marks) => SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(marks), PlannedMorning.At(12, 0));
}
