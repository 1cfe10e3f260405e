using Watersown.Reckon;

namespace Watersown.Holds;

/// <summary>The calculations about holds that can be asked for by name.</summary>
public static class HoldReckonings
{
    public static ImmutableArray<Reckoning> All { get; } = [Hold, OverlapReckoning.Reckoning];

    private static Reckoning Hold => new(
        "hold",
        "Until which day is this water held, by the rule typed?",
        [
            new("applied_on", KeyKind.Date, string.Empty, "day of application"),
            new("hold_days", KeyKind.WholeNumber, "days", "hold typed from the label or the permit") { Least = 0, Most = 366 },
            new("first_day_counts_as", KeyKind.WholeNumber, string.Empty, "1 where the day of application is day 1, 0 where the day after is") { Least = 0, Most = 1 },
        ],
        [
            new("last_held_day", KeyKind.Date, string.Empty, "last day held, itself included; null where no day is held") { Nullable = true },
            new("earliest_release_day", KeyKind.Date, string.Empty, "first day after the hold"),
        ],
        Sources.CalendarCount,
        "applied_on=2026-05-20 hold_days=30 first_day_counts_as=1",
        Count)
    {
        Limits = "Whole days; a rule that counts hours from the hour of application needs that hour. The convention is the farm's choice and stands in the working: "
            + "with the day of application as day 1 the last held day is applied + days - 1, as day 0 it is applied + days.",
    };

    private static Outcome<Reckoned> Count(ReckoningInput given)
    {
        var applied = given.Date("applied_on");
        if (HoldProblems.Beside(applied, given.Text("applied_on")) is { } problem) return Outcome<Reckoned>.Refuse(problem);
        var days = given.Whole("hold_days");
        var counting = (ApplicationDay)given.Whole("first_day_counts_as");
        var hold = HoldDates.Of(applied, days, counting);
        Datum last = hold.LastHeldDay is { } day ? Datum.Date(day) : Datum.None;
        var one = counting == ApplicationDay.CountsAsOne;
        var working = Working.Empty
            .Given("A", "day of application", Datum.Date(applied), string.Empty, "typed")
            .Given("d", "hold", days, "days", "typed from the label or the permit")
            .Given("c", "counting convention", one ? "the day of application is day 1" : "the day of application is day 0, the day after is day 1", string.Empty, "typed")
            .Step("L", "last day held, itself included", last, string.Empty, one ? "A + d - 1" : "A + d", Sources.CalendarCount)
            .Step("R", "first day after the hold", Datum.Date(hold.EarliestRelease), string.Empty, "L + 1; A where d = 0", Sources.CalendarCount);
        return Outcome<Reckoned>.Of(new Reckoned([("last_held_day", last), ("earliest_release_day", Datum.Date(hold.EarliestRelease))], working) { Cautions = Cautions(days, hold) });
    }

    private static ImmutableArray<string> Cautions(int days, HoldPeriod hold)
    {
        var cautions = ImmutableArray.CreateBuilder<string>();
        cautions.Add("By the rule you typed, not before " + ((Datum.Text)Datum.Date(hold.EarliestRelease)).Value
            + "; the label, the permit and the county office govern, so confirm with the county office before any board is pulled.");
        cautions.Add("Where several rules hold the same water, the latest day stands.");
        cautions.Add("Seepage through a levee or a leaking box can count as release: look at them while the hold runs. Only the commissioner can grant an emergency release.");
        if (days > 45) cautions.Add("A hold of more than 45 days is unusual (common practice, no source): check the label.");
        return cautions.ToImmutable();
    }
}
