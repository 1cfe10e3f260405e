using Watersown.Flight;
using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Season;

public sealed class WaterAirTalkFoldTests
{
    private static readonly DateTimeOffset Six = PlannedMorning.At(8, 6);

    [Fact]
    public void A_pump_off_is_down_until_it_is_on_again()
    {
        Assert.True(Source(Fold(Marks.At(1, Six, new SourceSwitched("SP-1", false))), "SP-1").Down);
        Assert.False(Source(Fold(Marks.At(1, Six, new SourceSwitched("SP-1", false)), Marks.At(2, Six.AddHours(4), new SourceSwitched("sp-1", true))), "SP-1").Down);
        Assert.False(Source(Fold(Marks.At(1, Six, new FaultFound(FaultKind.Pump) { Source = "SP-1" }), Marks.At(2, Six.AddHours(4), new FaultMended(AnyMark.Id(1)))), "SP-1").Down);
    }

    [Fact]
    public void An_order_runs_from_its_own_moment_not_from_when_it_was_said()
    {
        var order = Marks.At(1, Six, new WaterOrdered("NT-1", PlannedMorning.At(10, 7), PlannedMorning.Cfs(6), OrderState.Accepted) { OrderNumber = "81" });
        Assert.Equal(14, Cfs(At(PlannedMorning.At(10, 6), order), "NT-1"), 9);
        Assert.Equal(6, Cfs(At(PlannedMorning.At(10, 7), order), "NT-1"), 9);
        Assert.Equal("81", At(Six, order).Sources.Single(s => s.Code == "NT-1").Orders.Single().Order.OrderNumber);
    }

    [Fact]
    public void An_order_only_asked_for_does_not_run_and_one_ended_gives_nothing()
    {
        var asked = Marks.At(1, PlannedMorning.At(8, 7), new WaterOrdered("NT-1", PlannedMorning.At(10, 7), PlannedMorning.Cfs(6), OrderState.Asked));
        Assert.Equal(14, Cfs(Fold(asked), "NT-1"), 9);
        Assert.Equal(0, Cfs(Fold(Marks.At(1, Six, new WaterOrdered("NT-1", Six, PlannedMorning.Cfs(6), OrderState.Running)), Marks.At(2, Six.AddHours(3), new WaterOrdered("NT-1", Six, PlannedMorning.Cfs(6), OrderState.Ended))), "NT-1"), 9);
    }

    [Fact]
    public void Water_seen_far_off_the_order_and_two_orders_at_one_turnout_are_asked_about()
    {
        var running = Marks.At(1, Six, new WaterOrdered("NT-1", Six, PlannedMorning.Cfs(20), OrderState.Running));
        Assert.Equal([SeasonProblems.FlowOffOrder], Kinds(Fold(running, Marks.At(2, Six.AddHours(1), new FlowSeen("NT-1", PlannedMorning.Cfs(14), "weir")))));
        Assert.Empty(Fold(running, Marks.At(2, Six.AddHours(1), new FlowSeen("NT-1", PlannedMorning.Cfs(16), "weir"))).Doubts);
        Assert.Equal([SeasonProblems.TwoOrders], Kinds(Fold(running, Marks.At(2, Six.AddHours(2), new WaterOrdered("NT-1", Six.AddHours(2), PlannedMorning.Cfs(6), OrderState.Running)))));
    }

    [Fact]
    public void An_order_with_too_little_notice_and_an_unknown_source_are_asked_about()
    {
        Assert.Equal([SeasonProblems.ShortNotice], Kinds(Fold(Marks.At(1, Six, new WaterOrdered("NT-1", PlannedMorning.At(9, 7), PlannedMorning.Cfs(6), OrderState.Asked)))));
        Assert.Equal([SeasonProblems.UnknownSource], Kinds(Fold(Marks.At(1, Six, new SourceSwitched("SP-9", false)))));
    }

    [Fact]
    public void Wind_felt_stands_among_the_forecast_and_a_later_forecast_replaces_an_earlier_where_it_reaches()
    {
        var felt = Marks.At(1, PlannedMorning.At(8, 6, 10), new WindSeen(Mph(18), Mph(27)) { From = Bearing.FromDegrees(350) });
        var newer = Marks.At(2, PlannedMorning.At(8, 7), new ForecastHeard(PlannedMorning.At(8, 6, 50), [Hour(9, 4, 3), Hour(9, 8, 4)], "radio"));
        var older = Marks.At(3, PlannedMorning.At(8, 8), new ForecastHeard(PlannedMorning.At(7, 6), [Hour(9, 4, 30), Hour(14, 4, 9)], "neighbor"));
        var wind = Fold(felt, newer, older).State.Wind;
        Assert.Equal([18], wind.Where(w => w.At == felt.Happened).Select(w => Math.Round(w.Sustained.MilesPerHour)));
        // The farm's own hour of 05:00 on the 9th lies inside the newer forecast; that of 09:00 does not.
        Assert.Equal([3, 4, 7, 12], wind.Where(w => w.At.Day == 9).Select(w => Math.Round(w.Sustained.MilesPerHour)));
        Assert.Equal([9], wind.Where(w => w.At.Day == 14).Select(w => Math.Round(w.Sustained.MilesPerHour)));
        Assert.Equal(wind.OrderBy(w => w.At), wind);
    }

    [Fact]
    public void A_day_called_off_has_no_flying_until_a_slot_is_given_again()
    {
        var off = Marks.At(1, Six, new StoodDown(new(2026, 5, 9), "Joss Tarrowby", StandDownReason.Wind));
        var plane = PlannedMorning.State().Aeroplanes[0];
        Assert.DoesNotContain(FlyingWindows.Of(Fold(off).State with { Now = Six }, plane), w => w.From.Day == 9);
        Assert.Equal(StandDownReason.Wind, Assert.Single(Fold(off).CalledOff).What.Why);
        var again = Fold(off, Marks.At(2, Six.AddHours(5), new SlotGiven(new(2026, 5, 9), new(7, 0), new(9, 0))));
        Assert.Equal([new FlyingSlot(new(2026, 5, 9), new(7, 0), new(9, 0))], again.State.Slots.Where(s => s.Day.Day == 9));
    }

    [Fact]
    public void A_slot_replaces_the_farms_of_that_day_and_those_it_overlaps()
    {
        Mark Slot(int id, int from, int until) => Marks.At(id, Six.AddMinutes(id), new SlotGiven(new(2026, 5, 9), new(from, 0), new(until, 0)));
        Assert.Equal([(5, 8), (15, 18)], Fold(Slot(1, 6, 9), Slot(2, 15, 18), Slot(3, 5, 8)).State.Slots.Where(s => s.Day.Day == 9).Select(s => (s.From.Hour, s.Until.Hour)));
    }

    [Fact]
    public void Warmth_read_replaces_the_days()
    {
        var warmth = Fold(Marks.At(1, Six, new WarmthRead(new(2026, 5, 9), Temperature.FromFahrenheit(90), Temperature.FromFahrenheit(60)))).State.Warmth;
        Assert.Equal([90], warmth.Where(w => w.Day.Day == 9).Select(w => Math.Round(w.High.Fahrenheit)));
        Assert.Equal(6, warmth.Length);
    }

    [Fact]
    public void A_pin_is_set_moved_and_given_back_and_says_who_was_told_of_it()
    {
        var pin = Marks.At(1, Six, new StepPinned("S2", PlanTaskKind.Sow, PlannedMorning.At(9, 6, 30)));
        var told = Marks.At(2, Six.AddHours(1), new Told("14/pilot", "Joss Tarrowby", ToldState.Heard) { Steps = [new ToldStep("S2", PlanTaskKind.Sow, PlannedMorning.At(9, 6, 30))] });
        Assert.Equal(new Pin("S2", "sow", PlannedMorning.At(9, 6, 30)) { Told = "Joss Tarrowby" }, Fold(pin, told).State.Pins.Single());
        var moved = Marks.At(3, Six.AddHours(2), new StepPinned("S2", PlanTaskKind.Sow, PlannedMorning.At(10, 6)));
        Assert.Equal(new Pin("S2", "sow", PlannedMorning.At(10, 6)), Fold(pin, told, moved).State.Pins.Single());
        Assert.Empty(Fold(pin, moved, Marks.At(4, Six.AddHours(3), new StepUnpinned("s2", PlanTaskKind.Sow))).State.Pins);
    }

    [Fact]
    public void A_message_stands_where_its_newest_word_left_it()
    {
        Mark Word(int id, ToldState state, int minutes) => Marks.At(id, Six.AddMinutes(minutes), new Told("14/warehouse", "Perrin Aldegate", state) { ByVoice = true });
        var book = Fold(Word(1, ToldState.NotReached, 1), Word(2, ToldState.Agreed, 20), Word(3, ToldState.Told, 10));
        Assert.Equal(ToldState.Agreed, book.Message("14/warehouse")!.Last.State);
        Assert.Equal([ToldState.NotReached, ToldState.Told, ToldState.Agreed], book.Message("14/warehouse")!.Story.Select(m => ((Told)m.Fact).State));
    }

    [Fact]
    public void The_next_plan_carries_the_next_number()
    {
        var book = Fold(Marks.At(1, Six, new PlanIssued(17, Six, "wind")));
        Assert.Equal(18, book.State.PlanNumber);
        Assert.Equal(14, Fold().State.PlanNumber);
        Assert.Equal([17], book.Plans.Select(p => p.Number));
    }

    [Fact]
    public void A_person_is_added_or_put_right()
    {
        var people = Fold(
            Marks.At(1, Six, new PersonNamed("Wren Halloway", "irrigator") { Speaks = Wording.Language.Spanish }),
            Marks.At(2, Six, new PersonNamed("joss tarrowby", "pilot") { Phone = "555-555-0199" })).State.People;
        Assert.Equal(9, people.Length);
        Assert.Equal("555-555-0199", people.Single(p => p.Role == "pilot").Phone);
    }

    private static Speed Mph(double speed) => Speed.FromMilesPerHour(speed);

    private static ForecastHour Hour(int day, int hour, double speed) => new(PlannedMorning.At(day, hour), Mph(speed), Mph(speed * 1.5));

    private static WaterSource Source(SeasonBook book, string code) => book.State.Farm.Source(code)!;

    private static double Cfs(SeasonBook book, string code) => Source(book, code).Running!.Value.CubicFeetPerSecond;

    private static IEnumerable<ProblemKind> Kinds(SeasonBook book) => book.Doubts.Select(d => d.Problem.Kind);

    private static SeasonBook Fold(params Mark[] marks) => At(PlannedMorning.At(12, 0), marks);

    private static SeasonBook At(DateTimeOffset now, params Mark[] marks) => SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(marks), now);
}
