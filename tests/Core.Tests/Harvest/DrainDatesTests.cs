namespace Watersown.Harvest;

public sealed class DrainDatesTests
{
    private static readonly DateOnly Heading = new(2026, 8, 2);

    // Common practice, no source: 21 to 28 days after half heading on heavy clay, 28 to 35 on light ground.
    [Theory]
    [InlineData(false, 23, 30)]
    [InlineData(true, 30, 37)]
    public void The_stage_and_the_soil_give_the_first_and_last_day(bool light, int from, int until)
    {
        var dates = DrainDates.Of(new DrainAsk(Heading, 3, light)).Value;
        Assert.Equal((new DateOnly(2026, 8, 1).AddDays(from - 1), new DateOnly(2026, 8, 1).AddDays(until - 1)), dates.ByStage);
        Assert.Equal(dates.ByStage.From, dates.Earliest);
        Assert.False(dates.HoldDelays);
    }

    [Fact]
    public void A_hold_that_runs_longer_puts_it_off_to_the_day_after()
    {
        var dates = DrainDates.Of(new DrainAsk(Heading, 0, false) { HeldThrough = new(2026, 8, 29), Notice = TimeSpan.FromHours(48) }).Value;
        Assert.Equal(new DateOnly(2026, 8, 30), dates.Earliest);
        Assert.Equal(new DateOnly(2026, 8, 28), dates.TellSource);
        Assert.True(dates.HoldDelays);
        Assert.False(DrainDates.Of(new DrainAsk(Heading, 0, false) { HeldThrough = new(2026, 8, 10) }).Value.HoldDelays);
    }

    [Fact]
    public void Boards_are_wanted_out_in_time_for_the_combines_and_never_before_the_earliest()
    {
        Assert.Equal(new DateOnly(2026, 9, 5), DrainDates.Of(new DrainAsk(Heading, 0, false) { CutOn = new(2026, 9, 25) }).Value.WantedBy);
        Assert.Null(DrainDates.Of(new DrainAsk(Heading, 0, false) { CutOn = new(2026, 9, 1) }).Value.WantedBy);
    }
}
