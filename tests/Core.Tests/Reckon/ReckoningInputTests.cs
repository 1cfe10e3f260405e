namespace Watersown.Reckon;

public sealed class ReckoningInputTests
{
    [Fact]
    public void Values_that_cannot_be_true_together_are_refused() =>
        Ask.For("wet-weight", ("dry_lb", 100), ("moisture_before_pct", 30), ("moisture_after_pct", 13)).Refuses((ReckonProblems.Impossible, "moisture_after_pct"));

    [Fact]
    public void A_key_given_twice_is_refused_for_each_time() =>
        Ask.For("wet-weight", ("dry_lb", 100), ("dry_lb", 200), ("moisture_before_pct", 13), ("moisture_after_pct", 30)).Refuses(
            (ReckonProblems.GivenTwice, "dry_lb"), (ReckonProblems.GivenTwice, "dry_lb"));

    [Fact]
    public void A_group_that_is_a_number_is_refused() =>
        Ask.For("blend", ("targets", 5), ("products", Datum.ListOf([Datum.Row(("name", "urea"), ("price_lb", 1))]))).Refuses((ReckonProblems.WrongSort, "targets"));
}
