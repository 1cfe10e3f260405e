using CsCheck;

namespace Watersown.Holds;

public sealed class HoldDatesProperties
{
    private static readonly Gen<(DateOnly Applied, int Days)> Rules = Gen.Select(Gen.Int[0, 3650], Gen.Int[1, 120]).Select((n, days) => (new DateOnly(2024, 1, 1).AddDays(n), days));

    [Fact]
    public void Counting_the_days_one_by_one_ends_on_the_last_held_day() => Rules.Sample(rule =>
    {
        foreach (var counting in Enum.GetValues<ApplicationDay>())
        {
            var (day, count) = (rule.Applied, (int)counting);
            while (count < rule.Days) (day, count) = (day.AddDays(1), count + 1);
            var hold = HoldDates.Of(rule.Applied, rule.Days, counting);
            Assert.Equal(day, hold.LastHeldDay);
            Assert.Equal(day.AddDays(1), hold.EarliestRelease);
        }
    });

    [Fact]
    public void Counting_the_day_of_application_as_nothing_holds_one_day_longer() => Rules.Sample(rule =>
        Assert.Equal(
            HoldDates.Of(rule.Applied, rule.Days, ApplicationDay.CountsAsOne).EarliestRelease.AddDays(1),
            HoldDates.Of(rule.Applied, rule.Days, ApplicationDay.CountsAsZero).EarliestRelease));
}
