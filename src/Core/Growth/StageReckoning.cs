using Watersown.Reckon;
using Watersown.Weather;

namespace Watersown.Growth;

/// <summary>Days of the stages from normals and targets, asked for by name.</summary>
internal static class StageReckoning
{
    private const string Degrees = "°F·d";
    private const int DaysMost = 250;

    public static Reckoning Sum => new(
        "stage-dates",
        "On which days does rice sown on this day come to its stages?",
        [
            new("sown", KeyKind.Date, string.Empty, "day of sowing; its warmth counts"),
            new("pi_dd_f", KeyKind.Number, Degrees, "warmth to panicle initiation") { Least = 0, AboveLeast = true, Most = 5000 },
            new("heading_dd_f", KeyKind.Number, Degrees, "warmth to half of the panicles out") { Least = 0, AboveLeast = true, Most = 6000 },
            new("mature_dd_f", KeyKind.Number, Degrees, "warmth to ripe") { Least = 0, AboveLeast = true, Most = 8000 },
            new("normals", KeyKind.Rows, string.Empty, "months with the warmth of a usual day above 50 °F")
            {
                Columns =
                [
                    new("month", KeyKind.WholeNumber, string.Empty, "1 to 12") { Least = 1, Most = 12 },
                    new("dd_f", KeyKind.Number, Degrees, "of a day") { Least = 0, Most = 60 },
                ],
            },
            new("pi_seen", KeyKind.Date, string.Empty, "day on which panicle initiation was seen; the count is set to it") { Optional = true },
        ],
        [
            new("pi", KeyKind.Date, string.Empty, "panicle initiation") { NullMeans = "the normals end before" },
            new("booting", KeyKind.Date, string.Empty, "booting, midway in warmth") { NullMeans = "the normals end before" },
            new("heading", KeyKind.Date, string.Empty, "half of the panicles out") { NullMeans = "the normals end before" },
            new("mature", KeyKind.Date, string.Empty, "ripe") { NullMeans = "the normals end before" },
            new("heading_error_days", KeyKind.Number, "days", "either way, two times out of three") { NullMeans = "there is no heading" },
            new("tender_from", KeyKind.Date, string.Empty, "first night in which cold makes blank heads") { NullMeans = "there is no heading" },
            new("tender_until", KeyKind.Date, string.Empty, "last such night") { NullMeans = "there is no heading" },
        ],
        Sources.StageTargetsFitted,
        """sown=2026-05-10 pi_dd_f=1030 heading_dd_f=1910 mature_dd_f=2550 normals=[{"month":5,"dd_f":16.5},{"month":6,"dd_f":23.5},{"month":7,"dd_f":27},{"month":8,"dd_f":25.5},{"month":9,"dd_f":22}]""",
        Work)
    {
        Limits = "Plain degree-days: heading from sowing is off by 6.5 days as a rule (35 environments), more where days were not measured. A stage shows on the morning after its warmth is complete. "
            + "Targets count only with the rule they were made by: mean of the day above 50 °F. What you see in the field beats it.",
    };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var targets = new StageTargets(Warm(given, "pi_dd_f"), Warm(given, "heading_dd_f"), Warm(given, "mature_dd_f"));
        if (!targets.Rising)
            return Outcome<Reckoned>.Refuse(GrowthProblems.TargetsNotRising.At("heading_dd_f", ("value", Wording.Say.Figure(given.Number("heading_dd_f"))), ("low", Wording.Say.Figure(given.Number("pi_dd_f"))), ("high", Wording.Say.Figure(given.Number("mature_dd_f")))));
        var sown = given.Date("sown");
        var normals = new FarmNormals([.. given.Each("normals").Select(Normal).DistinctBy(m => m.Month)], "typed");
        var days = DaySeries.Of([], normals, sown, sown.AddDays(DaysMost));
        var calendar = StageClock.Of(new StageQuestion(sown, days, targets)
        {
            Seen = given.Has("pi_seen") ? [new StageSighting(new StagePoint(CropStage.PanicleInitiation), given.Date("pi_seen"))] : [],
        });
        var nights = TenderNights.Of(calendar);
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("pi", On(calendar, CropStage.PanicleInitiation)), ("booting", On(calendar, CropStage.Booting)), ("heading", On(calendar, CropStage.Heading)), ("mature", On(calendar, CropStage.Mature)),
                ("heading_error_days", Datum.Of(calendar.Of(CropStage.Heading)?.Error)),
                ("tender_from", nights is null ? Datum.None : Datum.Date(nights.From)), ("tender_until", nights is null ? Datum.None : Datum.Date(nights.Until)),
            ],
            Show(given, calendar, targets))
        {
            Cautions = ["Never call people or an aeroplane on a reckoned stage alone: split a stem, count leaves, then call."],
        });
    }

    private static MonthNormal Normal(ReckoningInput month)
    {
        var mean = Temperature.FromFahrenheit(StageTargets.Rule.Lower.Fahrenheit + month.Number("dd_f"));
        return new MonthNormal((int)month.Number("month"), mean, mean);
    }

    private static DegreeDays Warm(ReckoningInput given, string key) => DegreeDays.FromFahrenheit(given.Number(key));

    private static Datum On(StageCalendar calendar, CropStage stage) => calendar.Of(stage) is { } date ? Datum.Date(date.Day) : Datum.None;

    private static Working Show(ReckoningInput given, StageCalendar calendar, StageTargets targets)
    {
        var working = Working.Empty.Given("s", "sown; the day counts", Datum.Date(given.Date("sown")), string.Empty, "typed");
        foreach (var month in given.Each("normals")) working = working.Given("n" + Wording.Say.Figure(month.Number("month")), "warmth of a usual day of the month", month.Number("dd_f"), Degrees, "typed");
        if (given.Has("pi_seen")) working = working.Given("o", "panicle initiation seen; the count was set to it", Datum.Date(given.Date("pi_seen")), string.Empty, "typed");
        foreach (var (stage, name) in new[] { (CropStage.PanicleInitiation, "panicle initiation"), (CropStage.Booting, "booting"), (CropStage.Heading, "heading"), (CropStage.Mature, "mature") })
        {
            working = stage == CropStage.Booting
                ? working.Step("T", name + ", warmth asked for", targets.Booting.Fahrenheit, Degrees, "(panicle initiation + heading) / 2", Sources.WaterWarmth2018)
                : working.Given("T", name + ", warmth asked for", targets.To(stage).Fahrenheit, Degrees, "typed");
            if (calendar.Of(stage) is { Seen: false } date)
            {
                working = working
                    .Step("d", name, Datum.Date(date.Day), string.Empty, "first morning with Σ warmth ≥ T", Sources.StageTargetsFitted)
                    .Step("e", "± two times out of three", date.Error, "days", "√((6.5 × share of the way)² + (5 °F √(3 × days by normals) / warmth of a day)²)", Sources.Japan1990);
            }
        }

        return working;
    }
}
