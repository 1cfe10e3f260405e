using Watersown.Schedule;
using Watersown.Weather;

namespace Watersown.Season.Boards;

/// <summary>The tape of Friday 8 May 04:50, hours taken by hand from the list of winds (limits 10 and gust 15).</summary>
public sealed class WindTapeTests
{
    private static readonly DateTimeOffset Now = PlannedMorning.Now;

    [Fact]
    public void It_runs_from_now_to_noon_of_the_morning_after_next_without_a_gap()
    {
        var tape = Of();
        Assert.Equal((Now, PlannedMorning.At(10, 12)), (tape.Scale.From, tape.Scale.Until));
        Assert.Equal(tape.Scale.From, tape.Spans[0].From);
        Assert.Equal(tape.Scale.Until, tape.Spans[^1].Until);
        Assert.All(tape.Spans.Zip(tape.Spans.Skip(1)), pair => Assert.Equal(pair.First.Until, pair.Second.From));
    }

    [Fact]
    public void Each_word_stands_until_the_next_and_is_held_against_the_limits()
    {
        var tape = Of();
        Assert.Equal(SlotAir.Over, tape.Air);
        Assert.Equal(PlannedMorning.At(8, 19), tape.WithinFrom);
        var saturday = tape.Spans.Single(s => s.From == PlannedMorning.At(9, 9));
        Assert.Equal((PlannedMorning.At(9, 13), SlotAir.Within), (saturday.Until, saturday.Air));
        Assert.Equal(SlotAir.Over, tape.Spans.Single(s => s.From == PlannedMorning.At(9, 13)).Air); // 12 gust 17
    }

    [Fact]
    public void The_dark_ends_at_civil_dawn_of_the_strip()
    {
        // Civil dawn of 8 May at 39 N, 122 W is about 05:33 by the farm's clock.
        var first = Of().Dark[0];
        Assert.Equal(Now, first.From);
        Assert.InRange(first.Until, PlannedMorning.At(8, 5, 30), PlannedMorning.At(8, 5, 36));
    }

    [Fact]
    public void Hours_that_can_be_planned_lie_in_flying_hours_and_never_in_wind_over_the_limits()
    {
        var tape = Of();
        Assert.NotEmpty(tape.Windows);
        Assert.All(tape.Windows, w => Assert.Contains(tape.Slots, s => s.From <= w.From && w.Until <= s.Until));
        Assert.All(tape.Windows, w => Assert.DoesNotContain(tape.Spans, s => s.Air == SlotAir.Over && s.From < w.Until && w.From < s.Until));
    }

    [Fact]
    public void Where_nobody_has_spoken_the_hours_are_unknown_and_a_word_is_good_for_a_day()
    {
        var state = PlannedMorning.State();
        Assert.All(Of(state with { Wind = [] }).Spans, s => Assert.Equal(SlotAir.NoWord, s.Air));
        var one = Of(state with { Wind = [new Wind(Now.AddHours(-1), Mph(4), Mph(6))] });
        Assert.Equal([SlotAir.Within, SlotAir.NoWord], one.Spans.Select(s => s.Air));
        Assert.Equal(Now.AddHours(23), one.Spans[1].From);
    }

    [Fact]
    public void Who_saw_the_wind_and_who_gave_the_forecast_are_named()
    {
        var seen = Marks.At(1, Now, new WindSeen(Mph(9), Mph(14))).By("Lucero Quintabar");
        var heard = Marks.At(2, Now, new ForecastHeard(Now.AddHours(-1), [new ForecastHour(Now.AddHours(3), Mph(5), Mph(8))], "strip radio"));
        var tape = WindTape.Of(SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(seen, heard), Now));
        Assert.Equal(("Lucero Quintabar", SlotAir.Within, "strip radio"), (tape.Teller, tape.Air, tape.Source));
        Assert.Null(tape.OverSince);
        Assert.Equal(Now.AddHours(-1), tape.Issued);
    }

    [Fact]
    public void Nothing_is_drawn_above_the_top()
    {
        var tape = Of();
        Assert.All(tape.Spans, s => Assert.True(tape.At(s.Wind!.Gust) < Fraction.One));
        Assert.True(tape.At(tape.Aeroplane.GustLimit) > tape.At(tape.Aeroplane.WindLimit));
    }

    private static Speed Mph(double value) => Speed.FromMilesPerHour(value);

    private static WindTape Of(SeasonState? state = null) => WindTape.Of(SeasonFold.Fold(state ?? PlannedMorning.State(), Logbook.Empty, Now));
}
