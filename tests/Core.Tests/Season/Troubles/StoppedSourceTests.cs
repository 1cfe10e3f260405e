using Watersown.Schedule;

namespace Watersown.Season.Troubles;

/// <summary>The slough pump of the invented farm dies on Friday evening. Days by hand: (depth − 1.2 in) ÷ loss.</summary>
public sealed class StoppedSourceTests
{
    private static readonly DateTimeOffset Evening = PlannedMorning.At(8, 22, 10);

    [Fact]
    public void The_soonest_bare_field_comes_first_with_the_days_of_the_hand_sum()
    {
        var stopped = Stopped();
        Assert.Equal(["R3", "R4", "R2", "R1"], stopped.Fields.Select(f => f.Field.Code));
        Assert.Equal([4.64, 4.64, 8.21, 10.0], stopped.Fields.Select(f => Math.Round(f.Lasts!.Value.TotalDays, 2)));
        Assert.All(stopped.Fields, f => Assert.Equal(0.28, f.Loss.InchesPerDay, 9));
        Assert.Equal(Evening + stopped.Fields[0].Lasts!.Value, stopped.FirstBare);
    }

    [Fact]
    public void A_leakier_soil_has_less_time()
    {
        var stopped = StoppedSources.Of(Book(Off), Plan(), "SP-1", DepthRate.FromInchesPerDay(0.44))!;
        Assert.Equal(2.95, stopped.Fields[0].Lasts!.Value.TotalDays, 2);
    }

    [Fact]
    public void A_half_filled_field_stops_its_head_check_ages_and_its_Monday_flight_falls()
    {
        var lost = Stopped().Fills[0];
        Assert.Equal("R5", lost.Field.Code);
        Assert.Equal(Evening - PlannedMorning.At(6, 7), lost.HeadAge);
        Assert.Equal(PlannedMorning.At(11, 7, 30), lost.Sow);
        Assert.Equal(PlannedMorning.At(11, 7, 30) - PlannedMorning.At(6, 7), lost.HeadAgeAtSow);
        Assert.Equal(PlannedMorning.At(9, 6), lost.CancelBy);
        Assert.False(lost.Soaking);
    }

    [Fact]
    public void Back_in_time_still_makes_the_flight_and_that_hour_is_the_flight_less_the_rest_of_the_fill()
    {
        // 97 ac, half of it wet, 0.55 ft, 0.28 in a day, 9.1 cfs: 48.5 ac needs 26.675 ac-ft; 18.05 ac-ft a day come, of which the
        // wet land drinks 1.13 and at last 2.26. (0.55 / 0.023333) ln((18.0496 − 1.1317) / (18.0496 − 2.2633)) = 1.632 days.
        var lost = Stopped().Fills[0];
        Assert.Equal(1.632, (lost.Sow!.Value - lost.BackBy!.Value).TotalDays, 3);
    }

    [Fact]
    public void Nobody_is_woken_but_whoever_mends_the_pump()
    {
        var calls = Stopped().Calls;
        Assert.Equal([TroubleRole.Repair], calls.Where(c => c.By is null).Select(c => c.Role));
        var warehouse = calls.Single(c => c.Role == TroubleRole.Warehouse);
        Assert.Equal((PlannedMorning.At(9, 6), "Perrin Aldegate"), (warehouse.By!.Value, warehouse.Person!.Name));
        Assert.Contains("R5", warehouse.Fields);
        Assert.Equal(PlannedMorning.At(10, 16), calls.Single(c => c.Role == TroubleRole.Dispatcher).By);
        Assert.Equal(PlannedMorning.At(9, 6), calls.Single(c => c.Role == TroubleRole.Irrigator).By);
    }

    [Fact]
    public void A_field_that_falls_dry_by_morning_wakes_the_irrigator()
    {
        var book = Book(Off, new DepthRead("R3", 2, WaterDepth.FromInches(1.25)));
        var stopped = StoppedSources.Of(book, Plan(), "SP-1")!;
        Assert.Equal(("R3", 2), (stopped.Fields[0].Field.Code, stopped.Fields[0].Check));
        Assert.Null(stopped.Calls.Single(c => c.Role == TroubleRole.Irrigator).By);
    }

    [Fact]
    public void A_field_whose_depth_nobody_told_comes_last_and_says_no_days()
    {
        var ground = Ground();
        ground = ground with { Fields = [.. ground.Fields.Select(f => f.Code == "R1" ? f with { Depth = null } : f)] };
        var stopped = StoppedSources.Of(SeasonFold.Fold(ground, Logbook.Empty.With([Marks.At(1, Evening, Off)]), Evening), Plan(), "SP-1")!;
        Assert.Equal(("R1", null, null), (stopped.Fields[^1].Field.Code, stopped.Fields[^1].Lasts, stopped.Fields[^1].BareAt));
    }

    [Fact]
    public void The_planned_flight_of_a_field_that_stays_covered_stands()
    {
        var full = Stopped().Fields.Single(f => f.Field.Code == "R4");
        Assert.Equal((PlannedMorning.At(10, 5, 45), true), (full.Sow!.Value, full.SowStands));
        Assert.False(Stopped().Fields.Single(f => f.Field.Code == "R3").SowStands);
    }

    [Fact]
    public void A_pump_out_of_order_and_one_switched_off_count_alike_and_a_running_one_is_reckoned_from_now()
    {
        var broken = StoppedSources.Of(Book(new FaultFound(FaultKind.Pump) { Source = "SP-1" }), Plan(), "SP-1")!;
        Assert.Equal((true, Evening), (broken.Source.Down, broken.Since));
        var running = StoppedSources.Of(Book(), Plan(), "SP-1")!;
        Assert.Equal((false, Evening), (running.Source.Down, running.Since));
        Assert.Null(StoppedSources.Of(Book(), Plan(), "XX-9"));
    }

    private static MarkFact Off => new SourceSwitched("SP-1", Up: false);

    private static StoppedSource Stopped() => StoppedSources.Of(Book(Off), Plan(), "SP-1")!;

    private static SeasonState Ground() => PlannedMorning.State();

    private static SeasonBook Book(params MarkFact[] facts) =>
        SeasonFold.Fold(Ground(), Logbook.Empty.With(facts.Select((f, i) => Marks.At(i + 1, Evening, f))), Evening);

    // The plan of the story: R5 goes into soak on Saturday at 06:00 and is flown on Monday at 07:30.
    private static SeasonPlan Plan()
    {
        var plan = PlannedMorning.Plan();
        return plan with { Tasks = [.. plan.Tasks.Select(t => t.Field != "R5" || t.Kind == PlanTaskKind.Fill ? t : t with { Start = Earlier(t.Start), End = Earlier(t.End) })] };

        DateTimeOffset Earlier(DateTimeOffset moment) => moment switch
        {
            _ when moment == PlannedMorning.At(12, 5, 45) => PlannedMorning.At(11, 7, 30),
            _ when moment > PlannedMorning.At(12, 5, 45) => PlannedMorning.At(11, 7, 30) + (moment - PlannedMorning.At(12, 5, 45)),
            _ => moment.AddDays(-1),
        };
    }
}
