namespace Watersown.Schedule;

public sealed class SeasonDefaultsTests
{
    [Theory]
    [InlineData("2026-05-08", "2026-07-07")]
    [InlineData("2026-04-01", "2026-06-30")]
    [InlineData("2026-05-01", "2026-06-30")]
    [InlineData("2026-05-02", "2026-07-01")]
    [InlineData("2026-12-01", "2027-01-30")]
    public void A_plan_looks_60_days_ahead_or_to_the_end_of_June(string now, string last)
    {
        var moment = new DateTimeOffset(DateOnly.Parse(now).ToDateTime(new TimeOnly(4, 50)), TimeSpan.FromHours(-7));
        Assert.Equal(DateOnly.Parse(last), SeasonDefaults.Horizon(moment));
    }
}
