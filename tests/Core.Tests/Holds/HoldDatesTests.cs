using Watersown.Reckon;

namespace Watersown.Holds;

public sealed class HoldDatesTests
{
    // Counted on a calendar: 30 days from 20 May with 20 May as day 1 are 20 to 31 May (12 days) and 1 to 18 June (18 days).
    // With 20 May as day 0, day 30 is 19 June.
    [Theory]
    [InlineData(1, "2026-06-18", "2026-06-19")]
    [InlineData(0, "2026-06-19", "2026-06-20")]
    public void Thirty_days_from_the_twentieth_of_May_end_as_the_farm_counts(int firstDay, string last, string release)
    {
        var outcome = Ask.For("hold", ("applied_on", "2026-05-20"), ("hold_days", 30), ("first_day_counts_as", firstDay));
        Assert.Equal(last, outcome.Text("last_held_day"));
        Assert.Equal(release, outcome.Text("earliest_release_day"));
    }

    [Fact]
    public void The_convention_stands_in_the_working()
    {
        string Convention(int first) => ((Datum.Text)Ask.For("hold", ("applied_on", "2026-05-20"), ("hold_days", 30), ("first_day_counts_as", first))
            .Value.Working.Lines.Single(l => l.Symbol == "c").Value).Value;
        Assert.Equal("the day of application is day 1", Convention(1));
        Assert.StartsWith("the day of application is day 0", Convention(0), StringComparison.Ordinal);
    }

    // Calendar: 2028 is a leap year.
    [Theory]
    [InlineData("2028-02-27", 3, 1, "2028-02-29", "2028-03-01")]
    [InlineData("2026-12-30", 5, 0, "2027-01-04", "2027-01-05")]
    [InlineData("2026-05-20", 1, 1, "2026-05-20", "2026-05-21")]
    public void Months_and_years_are_crossed_as_the_calendar_does(string applied, int days, int firstDay, string last, string release)
    {
        var outcome = Ask.For("hold", ("applied_on", applied), ("hold_days", days), ("first_day_counts_as", firstDay));
        Assert.Equal(last, outcome.Text("last_held_day"));
        Assert.Equal(release, outcome.Text("earliest_release_day"));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void A_rule_of_no_days_holds_nothing(int firstDay)
    {
        var outcome = Ask.For("hold", ("applied_on", "2026-05-20"), ("hold_days", 0), ("first_day_counts_as", firstDay));
        Assert.Equal(Datum.None, outcome.Answer("last_held_day"));
        Assert.Equal("2026-05-20", outcome.Text("earliest_release_day"));
    }

    [Fact]
    public void The_words_never_give_leave()
    {
        var reckoned = Ask.For("hold", ("applied_on", "2026-05-20"), ("hold_days", 60), ("first_day_counts_as", 1)).Value;
        var words = string.Join(' ', reckoned.Cautions) + Wording.Say.Working(reckoned.Working);
        Assert.DoesNotContain("legal", words, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("may release", words, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("county office", words, StringComparison.Ordinal);
        Assert.Contains("label", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slip_in_the_year_is_refused() =>
        Ask.For("hold", ("applied_on", "0026-05-20"), ("hold_days", 30), ("first_day_counts_as", 1)).Refuses((HoldProblems.YearOutside, "applied_on"));

    [Fact]
    public void Every_fault_is_told_at_once() =>
        Ask.For("hold", ("applied_on", "20 May"), ("hold_days", 2.5), ("first_day_counts_as", 2)).Refuses(
            (ReckonProblems.WrongSort, "applied_on"), (ReckonProblems.WrongSort, "hold_days"), (ReckonProblems.TooLarge, "first_day_counts_as"));

    [Fact]
    public void Days_below_none_never_reach_the_calendar() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => HoldDates.Of(new DateOnly(2026, 5, 20), -1, ApplicationDay.CountsAsOne));
}
