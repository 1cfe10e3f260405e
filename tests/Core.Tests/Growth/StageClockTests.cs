using Watersown.Weather;

namespace Watersown.Growth;

public sealed class StageClockTests
{
    // Normals of warmth above 50 °F a day: May 16.5, June 23.5, July 27, August 25.5, September 22.
    private static readonly FarmNormals Normals = new([.. new[] { (4, 10), (5, 16.5), (6, 23.5), (7, 27), (8, 25.5), (9, 22), (10, 14) }.Select(n => Month(n.Item1, 50 + n.Item2))], "typed");

    private static MonthNormal Month(int month, double mean) => new(month, Temperature.FromFahrenheit(mean), Temperature.FromFahrenheit(mean));

    private static StageQuestion Ask(DateOnly sown, StageTargets targets, params KnownDay[] known) =>
        new(sown, DaySeries.Of([.. known], Normals, sown, sown.AddDays(220)), targets);

    private static DateOnly Day(int month, int day) => new(2026, month, day);

    // By hand: 22 days of May and 28.4 of June make 1,030 °F·d; 22 + 30 + 31 and a fifth of a day of August make 1,910.
    [Fact]
    public void Early_rice_sown_on_the_tenth_of_May_comes_to_its_stages_on_the_days_worked_by_hand()
    {
        var calendar = StageClock.Of(Ask(Day(5, 10), StageTargets.Early));
        Assert.Equal((Day(6, 30), Day(8, 2)), (calendar.Of(CropStage.PanicleInitiation)!.Day, calendar.Of(CropStage.Heading)!.Day));
        Assert.Equal((51, 84), (calendar.Of(CropStage.PanicleInitiation)!.Day.DayNumber - Day(5, 10).DayNumber, calendar.Of(CropStage.Heading)!.Day.DayNumber - Day(5, 10).DayNumber));
    }

    [Fact]
    public void Three_weeks_later_at_sowing_are_thirteen_days_at_heading()
    {
        Assert.Equal(Day(8, 15), StageClock.Of(Ask(Day(5, 31), StageTargets.Early)).Of(CropStage.Heading)!.Day);
    }

    // S. Yoshida, Fundamentals of Rice Crop Science, 1981, p. 21: a leaf in 5 days at 20 °C and in 4 at 25 °C.
    [Theory]
    [InlineData(20, 5)]
    [InlineData(25, 4)]
    public void A_leaf_takes_as_long_as_the_book_says(double celsius, int days)
    {
        var warmth = Temperature.FromCelsius(celsius);
        var series = Enumerable.Range(0, 60).Select(i => new SeriesDay(new DayWarmth(Day(5, 10).AddDays(i), warmth, warmth), DayBasis.File)).ToImmutableArray();
        var calendar = StageClock.Of(new StageQuestion(Day(5, 10), series, StageTargets.Intermediate));
        Assert.Equal(3 * days, calendar.Of(StagePoint.OfLeaf(5))!.Day.DayNumber - calendar.Of(StagePoint.OfLeaf(2))!.Day.DayNumber);
    }

    // Leaves are seen under water 7 to 10 days after seeding in a usual May (California Rice Research Board, undated).
    [Fact]
    public void The_first_leaf_shows_within_the_published_days() =>
        Assert.InRange(StageClock.Of(Ask(Day(5, 10), StageTargets.Early)).Of(StagePoint.OfLeaf(1))!.Day.DayNumber - Day(5, 10).DayNumber, 7, 10);

    [Fact]
    public void A_stage_that_was_seen_sets_the_clock_and_what_is_left_keeps_its_warmth()
    {
        var seen = StageClock.Of(Ask(Day(5, 10), StageTargets.Early) with { Seen = [new StageSighting(new StagePoint(CropStage.PanicleInitiation), Day(7, 6))] });
        // 880 °F·d from the morning of 6 July: 26 days of July are 702, 178 are 7 days of August.
        Assert.Equal(Day(8, 8), seen.Of(CropStage.Heading)!.Day);
        Assert.True(seen.Of(CropStage.PanicleInitiation)!.Seen);
        Assert.True(seen.Of(CropStage.Heading)!.Error < StageClock.Of(Ask(Day(5, 10), StageTargets.Early)).Of(CropStage.Heading)!.Error);
    }

    [Fact]
    public void A_leaf_seen_late_makes_every_later_stage_as_late_in_warmth()
    {
        var free = StageClock.Of(Ask(Day(5, 10), StageTargets.Early));
        var third = free.Of(StagePoint.OfLeaf(3))!.Day;
        var late = StageClock.Of(Ask(Day(5, 10), StageTargets.Early) with { Seen = [new StageSighting(StagePoint.OfLeaf(3), third.AddDays(6))] });
        Assert.InRange(late.Of(StagePoint.OfLeaf(4))!.Day.DayNumber - free.Of(StagePoint.OfLeaf(4))!.Day.DayNumber, 5, 7);
        // Six days of June are 5.2 of July.
        Assert.InRange(late.Of(CropStage.Heading)!.Day.DayNumber - free.Of(CropStage.Heading)!.Day.DayNumber, 4, 6);
    }

    [Fact]
    public void A_sighting_that_goes_back_is_passed_over_and_told()
    {
        StageSighting back = new(StagePoint.OfLeaf(2), Day(7, 8));
        var calendar = StageClock.Of(Ask(Day(5, 10), StageTargets.Early) with { Seen = [new StageSighting(new StagePoint(CropStage.PanicleInitiation), Day(7, 6)), back] });
        Assert.Equal([back], calendar.PassedOver);
    }

    // A standard error of 6.5 days for heading reckoned from sowing (Japanese Journal of Crop Science 59(4), 1990).
    [Fact]
    public void The_error_from_sowing_is_never_below_the_published_one_and_grows_with_days_nobody_measured()
    {
        var unmeasured = StageClock.Of(Ask(Day(5, 10), StageTargets.Early)).Of(CropStage.Heading)!;
        KnownDay[] known = [.. Enumerable.Range(0, 100).Select(i => Day(5, 10).AddDays(i)).Select(d => new KnownDay(new DayWarmth(d, Normals.On(d)!.High, Normals.On(d)!.Low), DayBasis.File, "station", At: null))];
        var measured = StageClock.Of(Ask(Day(5, 10), StageTargets.Early, known)).Of(CropStage.Heading)!;
        Assert.Equal(6.5, measured.Error, 1e-9);
        Assert.InRange(unmeasured.Error, 6.5, 8);
        Assert.Equal(measured.Day, unmeasured.Day);
    }

    // Seasonal mean water of 22.0 °C at the inlet against 23.4 °C: panicle initiation 5 days later (about 2018, abstract).
    [Fact]
    public void A_flood_as_much_colder_as_at_a_measured_inlet_delays_initiation_by_about_its_five_days()
    {
        var plain = Ask(Day(5, 10), StageTargets.Early);
        DayWarmth Flood(SeriesDay day, double below) => new(day.Day, Temperature.FromCelsius(day.Warmth.High.Celsius + StageClock.UsualWaterOverAir - below), Temperature.FromCelsius(day.Warmth.Low.Celsius + StageClock.UsualWaterOverAir - below));
        var usual = StageClock.Of(plain with { Water = [.. plain.Days.Take(120).Select(d => Flood(d, 0))] });
        var cold = StageClock.Of(plain with { Water = [.. plain.Days.Take(120).Select(d => Flood(d, 1.4))] });
        Assert.Equal(StageClock.Of(plain).Of(CropStage.PanicleInitiation)!.Day, usual.Of(CropStage.PanicleInitiation)!.Day);
        Assert.InRange(cold.Of(CropStage.PanicleInitiation)!.Day.DayNumber - usual.Of(CropStage.PanicleInitiation)!.Day.DayNumber, 4, 6);
    }

    [Fact]
    public void Without_days_there_are_no_stages_and_none_is_made_up()
    {
        var sown = Day(5, 10);
        var calendar = StageClock.Of(new StageQuestion(sown, DaySeries.Of([], new FarmNormals([Month(5, 66.5)], "typed"), sown, sown.AddDays(200)), StageTargets.Early));
        Assert.Null(calendar.Of(CropStage.Heading));
        Assert.NotNull(calendar.Of(StagePoint.OfLeaf(2)));
    }

    [Fact]
    public void A_leaf_window_ends_with_the_leaf_after_its_last()
    {
        var calendar = StageClock.Of(Ask(Day(5, 10), StageTargets.Early));
        var window = LeafWindows.Of(calendar, 4, 2)!;
        Assert.Equal((calendar.Of(StagePoint.OfLeaf(2))!.Day, calendar.Of(StagePoint.OfLeaf(5))!.Day), (window.Opens.Day, window.Closes.Day));
        Assert.True(window.SureDays < window.Days);
        Assert.Null(LeafWindows.Of(calendar, 2, 8));
    }

    // Tender 10 to 16 days before heading (California Agriculture 28(7), 1974).
    [Fact]
    public void Tender_nights_lie_before_heading_and_carry_its_error()
    {
        var nights = TenderNights.Of(StageClock.Of(Ask(Day(5, 10), StageTargets.Early)))!;
        Assert.Equal((Day(7, 17), Day(7, 23)), (nights.From, nights.Until));
        Assert.True(nights.MayHold(Day(7, 12)) && !nights.MayHold(Day(7, 1)));
    }
}
