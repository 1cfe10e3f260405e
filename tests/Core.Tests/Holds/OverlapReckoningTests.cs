namespace Watersown.Holds;

public sealed class OverlapReckoningTests
{
    [Fact]
    public void A_hold_of_thirty_days_from_the_twentieth_of_May_leaves_two_days_of_a_window_in_June()
    {
        // By the calendar: 20 to 31 May are 12 days, 1 to 18 June the other 18.
        var answer = Ask.For("hold-window", ("applied_on", "2026-05-20"), ("hold_days", 30), ("first_day_counts_as", 1), ("wanted_from", "2026-06-10"), ("wanted_until", "2026-06-20"));
        Assert.Equal(2, answer.Number("left_days"));
        Assert.Equal(("2026-06-19", "2026-06-20", "2026-06-19"), (answer.Text("left_from"), answer.Text("left_until"), answer.Text("earliest_release_day")));
    }

    [Fact]
    public void Where_nothing_is_left_no_day_is_named() =>
        Assert.Equal(0, Ask.For("hold-window", ("applied_on", "2026-05-20"), ("hold_days", 30), ("first_day_counts_as", 0), ("wanted_from", "2026-06-10"), ("wanted_until", "2026-06-19")).Number("left_days"));

    [Fact]
    public void A_window_that_ends_before_it_begins_is_refused() =>
        Assert.Contains(HoldProblems.WindowBackward, Ask.For("hold-window", ("applied_on", "2026-05-20"), ("hold_days", 30), ("first_day_counts_as", 1), ("wanted_from", "2026-06-20"), ("wanted_until", "2026-06-10")).Problems.Select(p => p.Kind));
}
