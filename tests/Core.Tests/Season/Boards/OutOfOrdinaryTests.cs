using Watersown.Schedule;

namespace Watersown.Season.Boards;

public sealed class OutOfOrdinaryTests
{
    private static readonly DateTimeOffset Now = PlannedMorning.Now;

    [Fact]
    public void A_step_is_overdue_two_hours_after_it_and_not_once_it_is_marked()
    {
        var plan = PlannedMorning.Plan();
        var flown = PlannedMorning.At(9, 7, 23); // S2, 06:30 and 53 minutes
        Assert.DoesNotContain(Of(flown.AddMinutes(115)).Overdue, o => o.Step is { Field: "S2", Kind: PlanTaskKind.Sow });
        var late = Of(flown.AddMinutes(125)).Overdue.Single(o => o.Step is { Field: "S2", Kind: PlanTaskKind.Sow });
        Assert.Equal(plan.Task("S2", PlanTaskKind.Sow)!.End, late.Due);
        Assert.DoesNotContain(Of(flown.AddHours(3), Marks.At(1, flown, new FieldSown("S2"))).Overdue, o => o.Step.Field == "S2");
    }

    [Fact]
    public void Water_that_has_begun_is_no_longer_due()
    {
        var open = PlannedMorning.At(8, 8); // H1 by the plan
        Assert.Contains(Of(open.AddHours(3)).Overdue, o => o.Step is { Field: "H1", Kind: PlanTaskKind.Fill });
        Assert.DoesNotContain(Of(open.AddHours(3), Marks.At(1, open, new StageReached("H1", FieldStage.Flooding))).Overdue, o => o.Step is { Field: "H1", Kind: PlanTaskKind.Fill });
    }

    [Fact]
    public void Seed_sown_before_strong_wind_is_to_be_scouted_until_its_roots_hold()
    {
        var sown = Marks.At(1, PlannedMorning.At(8, 7), new FieldSown("S2"));
        var wind = Marks.At(2, PlannedMorning.At(8, 10), new WindSeen(Speed.FromMilesPerHour(20), Speed.FromMilesPerHour(31)));
        var calm = Marks.At(3, PlannedMorning.At(8, 11), new WindSeen(Speed.FromMilesPerHour(5), Speed.FromMilesPerHour(7)));
        var blown = Of(PlannedMorning.At(9, 5), sown, wind, calm).Blown.Single(b => b.Field.Code == "S2");
        Assert.Equal((PlannedMorning.At(8, 10), 31), (blown.At, Math.Round(blown.Gust.MilesPerHour)));
        Assert.DoesNotContain(Of(PlannedMorning.At(12, 5), sown, wind, calm).Blown, b => b.Field.Code == "S2");
        Assert.DoesNotContain(Of(PlannedMorning.At(9, 5), sown with { Happened = PlannedMorning.At(8, 12) }, wind, calm).Blown, b => b.Field.Code == "S2");
    }

    [Fact]
    public void A_head_check_wet_for_more_than_eight_days_is_told_while_no_seed_is_on_it()
    {
        var old = Of(Now).Old;
        Assert.Contains(old, o => o.Field.Code == "S2"); // first water 29 April
        Assert.All(old, o => Assert.True(o.Age > TimeSpan.FromDays(8)));
        Assert.DoesNotContain(Of(PlannedMorning.At(9, 9), Marks.At(1, PlannedMorning.At(9, 7, 30), new FieldSown("S2"))).Old, o => o.Field.Code == "S2");
    }

    [Fact]
    public void What_is_broken_and_what_does_not_agree_is_on_the_list()
    {
        var odd = Of(Now.AddHours(1), Marks.At(1, Now, new FaultFound(FaultKind.Levee) { Field = "N2" }), Marks.At(2, Now, new CheckWater("Z9", 1, WaterSeen.Wet)));
        Assert.Single(odd.Faults);
        Assert.NotEmpty(odd.Doubts);
        Assert.False(odd.IsEmpty);
    }

    private static OutOfOrdinary Of(DateTimeOffset now, params ImmutableArray<Mark> marks)
    {
        var book = SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(marks), now);
        return OutOfOrdinary.Of(book, PlannedMorning.Plan() with { State = book.State });
    }
}
