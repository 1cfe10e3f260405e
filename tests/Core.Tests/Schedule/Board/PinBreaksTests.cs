using Watersown.Season.Boards;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Schedule.Board;

/// <summary>Steps of 8 May put to other times: what breaks, and by how much, worked out by hand.</summary>
public sealed class PinBreaksTests
{
    private static readonly SeasonPlan Plan = PlannedMorning.Plan();

    [Fact]
    public void Two_Gates_on_Saturday_at_seven_has_no_water_no_seed_and_no_aeroplane()
    {
        var breaks = Sow("N4", PlannedMorning.At(9, 7));
        Assert.Equal([PinBreakKind.Water, PinBreakKind.SeedYoung, PinBreakKind.Plane], breaks.Select(b => b.Kind));
        Assert.Equal(new TimeSpan(7, 41, 0), breaks[0].By); // full Saturday 14:41
        Assert.Equal(TimeSpan.FromHours(23), breaks[1].By); // in soak Friday 06:00, 24 h, and 24 h to drain
        Assert.Equal(TimeSpan.FromMinutes(23), breaks[2].By); // S2 is flown from 06:30 for 53 min
        Assert.Equal(["S2"], breaks[2].Others);
    }

    [Fact]
    public void On_Monday_at_half_past_nine_the_slot_ends_and_the_wind_is_over() // 65 min from 09:30, slot to 10:30; 11 gusting 16 from 09:00
    {
        var breaks = Sow("N4", PlannedMorning.At(11, 9, 30));
        Assert.Equal([PinBreakKind.Slot, PinBreakKind.Wind], breaks.Select(b => b.Kind));
        Assert.Equal(TimeSpan.FromMinutes(5), breaks[0].By);
        Assert.Equal(11, breaks[1].Wind!.Sustained.MilesPerHour, 9);
    }

    [Fact]
    public void On_Wednesday_at_three_it_is_dark_and_the_seed_is_past_use() // 60 h under water at most, 24 h to drain, 18 h on a day of 70.5 °F: Tuesday 12:00
    {
        var breaks = Sow("N4", PlannedMorning.At(13, 3));
        Assert.Equal([PinBreakKind.SeedOld, PinBreakKind.Dark], breaks.Select(b => b.Kind));
        Assert.Equal(TimeSpan.FromHours(15), breaks[0].By);
        Assert.Equal(TimeSpan.FromMinutes(65), breaks[1].By);
    }

    [Fact]
    public void A_moment_that_has_gone_by_is_said_first() => Assert.Equal(TimeSpan.FromMinutes(50), Sow("N4", PlannedMorning.At(8, 4))[0].By);

    [Fact]
    public void Seed_that_nobody_has_called_can_be_fit_two_days_after_the_next_soak() // calls until 06:30, in soak Friday 06:00, fit Sunday 06:00
    {
        var young = Sow("R4", PlannedMorning.At(9, 7)).Single(b => b.Kind == PinBreakKind.SeedYoung);
        Assert.Equal(PlannedMorning.At(10, 6), young.At);
    }

    [Fact]
    public void Schoolhouse_filled_from_Friday_takes_all_its_water_from_a_source_that_has_none_left_and_cannot_be_ordered()
    {
        // NT-1 gives 14 cfs; N4 fills with 10.7 and N1 to N3 hold with more than 4: each of the 8 cfs of N5 is missing.
        var breaks = Break(Plan.Task("N5", PlanTaskKind.Fill)!, PlannedMorning.At(8, 8));
        var flow = breaks.Single(b => b.Kind == PinBreakKind.Flow);
        Assert.Equal(8, flow.Flow!.Value.CubicFeetPerSecond, 3);
        Assert.Equal(["NT-1"], flow.Others);
        Assert.Equal(new TimeSpan(44, 50, 0), breaks.Single(b => b.Kind == PinBreakKind.Notice).By); // 48 h before Friday 08:00 is Wednesday 08:00
    }

    [Fact]
    public void Filled_four_days_later_it_is_full_a_day_and_three_hours_after_its_sowing() // 66 h from Wednesday 15:00; sown Friday 15 May 06:00
    {
        var late = Break(Plan.Task("N5", PlanTaskKind.Fill)!, PlannedMorning.At(13, 15)).Single(b => b.Kind == PinBreakKind.FullLate);
        Assert.Equal(TimeSpan.FromHours(27), late.By);
    }

    [Fact]
    public void Water_before_the_ground_is_done_is_said()
    {
        var roll = new PlanTask("N5", PlanTaskKind.Ground, PlannedMorning.At(10, 6), PlannedMorning.At(10, 12), "roller") { Implement = GroundWork.Roll };
        var plan = Plan with { Tasks = Plan.Tasks.Add(roll) };
        var ground = PinBreaks.Of(plan, plan.State, plan.Task("N5", PlanTaskKind.Fill)!, PlannedMorning.At(9, 15), null).Single(b => b.Kind == PinBreakKind.Ground);
        Assert.Equal(TimeSpan.FromHours(21), ground.By);
    }

    [Fact]
    public void Whoever_was_told_another_hour_is_named_last()
    {
        var sow = Plan.Task("N4", PlanTaskKind.Sow)!;
        var told = new ToldTo("N4", PlanTaskKind.Sow, sow.Start, "Fenna Okwold");
        Assert.Equal(["Fenna Okwold"], PinBreaks.Of(Plan, Plan.State, sow, sow.Start.AddHours(1), told)[^1].Others);
        Assert.DoesNotContain(PinBreaks.Of(Plan, Plan.State, sow, sow.Start, told), b => b.Kind == PinBreakKind.Told);
    }

    [Theory]
    [InlineData(Language.English, "Not full yet: full Sat 14:41, 7 h 41 m later.")]
    [InlineData(Language.Spanish, "Todavía no está lleno: lleno sáb 14:41, 7 h 41 min después.")]
    public void It_is_said_in_the_readers_words(Language language, string said) =>
        Assert.Equal(said, new PinSpeech(new Telling(Plan.State, language), Plan.State).Of(Sow("N4", PlannedMorning.At(9, 7))[0]));

    [Fact]
    public void Every_kind_of_break_has_words_in_both_languages()
    {
        var wind = Plan.State.Wind[0];
        foreach (var language in Enum.GetValues<Language>())
        {
            var speech = new PinSpeech(new Telling(Plan.State, language), Plan.State);
            var said = Enum.GetValues<PinBreakKind>().Select(k => speech.Of(new PinBreak(k) { By = TimeSpan.FromHours(3), At = wind.At, Until = wind.At, Others = ["NT-1"], Wind = wind, Flow = FlowRate.FromCubicFeetPerSecond(2) })).ToList();
            Assert.Equal(said.Count, said.Distinct(StringComparer.Ordinal).Count());
        }
    }

    private static ImmutableArray<PinBreak> Sow(string field, DateTimeOffset start) => Break(Plan.Task(field, PlanTaskKind.Sow)!, start);

    private static ImmutableArray<PinBreak> Break(PlanTask task, DateTimeOffset start) => PinBreaks.Of(Plan, Plan.State, task, start, null);
}
