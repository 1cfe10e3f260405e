using Watersown.Reckon;

namespace Watersown.Holds;

/// <summary>Which days of a window are left beside a hold.</summary>
internal static class OverlapReckoning
{
    public static Reckoning Reckoning => new(
        "hold-window",
        "On which of these days is the water no longer held, by the rule typed?",
        [
            new("applied_on", KeyKind.Date, string.Empty, "day of application"),
            new("hold_days", KeyKind.WholeNumber, "days", "hold typed from the label or the permit") { Least = 0, Most = 366 },
            new("first_day_counts_as", KeyKind.WholeNumber, string.Empty, "1 where the day of application is day 1, 0 where the day after is") { Least = 0, Most = 1 },
            new("wanted_from", KeyKind.Date, string.Empty, "first day on which lower water is wanted"),
            new("wanted_until", KeyKind.Date, string.Empty, "last such day"),
        ],
        [
            new("left_days", KeyKind.WholeNumber, "days", "days of the window on which nothing is held"),
            new("left_from", KeyKind.Date, string.Empty, "first of those after the hold; null where none is left") { Nullable = true },
            new("left_until", KeyKind.Date, string.Empty, "last of those; null where none is left") { Nullable = true },
            new("earliest_release_day", KeyKind.Date, string.Empty, "first day after the hold"),
        ],
        Sources.CalendarCount,
        "applied_on=2026-05-20 hold_days=30 first_day_counts_as=1 wanted_from=2026-06-10 wanted_until=2026-06-20",
        Work)
    {
        Limits = "One hold against one window, in whole days. Days of the window before the hold are counted as left too.",
    };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var (from, until) = (given.Date("wanted_from"), given.Date("wanted_until"));
        if (until < from) return Outcome<Reckoned>.Refuse(HoldProblems.WindowBackward.At("wanted_until", ("value", given.Text("wanted_until")), ("limit", given.Text("wanted_from"))));
        var applied = given.Date("applied_on");
        if (HoldProblems.Beside(applied, given.Text("applied_on")) is { } problem) return Outcome<Reckoned>.Refuse(problem);
        var counting = (ApplicationDay)given.Whole("first_day_counts_as");
        var hold = HoldDates.Of(applied, given.Whole("hold_days"), counting);
        var free = HoldDays.Without(new DaySpan(from, until), hold.LastHeldDay is { } last ? [new DaySpan(applied, last)] : []);
        Datum First() => free.IsEmpty ? Datum.None : Datum.Date(free[^1].From);
        Datum Last() => free.IsEmpty ? Datum.None : Datum.Date(free[^1].Until);
        var days = free.Sum(f => f.Days);
        return Outcome<Reckoned>.Of(new Reckoned(
            [("left_days", days), ("left_from", First()), ("left_until", Last()), ("earliest_release_day", Datum.Date(hold.EarliestRelease))],
            Working.Empty
                .Given("A", "day of application", Datum.Date(applied), string.Empty, "typed")
                .Given("d", "hold", given.Whole("hold_days"), "days", "typed from the label or the permit")
                .Given("c", "counting convention", counting == ApplicationDay.CountsAsOne ? "the day of application is day 1" : "the day of application is day 0, the day after is day 1", string.Empty, "typed")
                .Step("R", "first day after the hold", Datum.Date(hold.EarliestRelease), string.Empty, counting == ApplicationDay.CountsAsOne ? "A + d" : "A + d + 1", Sources.CalendarCount)
                .Step("n", "days of the window left", days, "days", "days from the first wanted to the last that are not from A to R − 1", Sources.CalendarCount))
        {
            Cautions = ["The label, the permit and the county office govern; confirm with the county office before any board is pulled."],
        });
    }
}
