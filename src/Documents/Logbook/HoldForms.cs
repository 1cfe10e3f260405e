using Watersown.Documents.Json;
using Watersown.Holds;
using Watersown.Season;
using static Watersown.Documents.Logbooks.FactForm;

namespace Watersown.Documents.Logbooks;

/// <summary>Facts of treatments, holds and water that is wanted lower.</summary>
internal static class HoldForms
{
    public static ImmutableArray<FactForm> All { get; } =
    [
        Of<TreatmentTold>("treatment",
            [
                OfField,
                Need("product", Text, "its name as the user writes it"),
                Need("state", new Outline.Word(MarkWords.Treatments.All), "how far it has come"),
                Need("from", new Outline.Day(), "first day on which it may be applied; the day it was"),
                Need("until", new Outline.Day(), "last such day"),
                May(HoldLimits.Round, "which time this season"),
                .. Rule,
                .. Paper,
                .. Work,
            ],
            Write, Read),
        Of<WaterWished>("water-wish",
            [OfField, Need("wish", new Outline.Word(MarkWords.Wishes.All), "why water is wanted lower or gone"), May("from", new Outline.Day(), "first day; wanted no longer where not given"), May("until", new Outline.Day(), "last day")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Text("wish", MarkWords.Wishes.Of(f.Wish));
                pen.Day("from", f.Days?.From);
                pen.Day("until", f.Days?.Until);
            },
            f => new WaterWished(f.Text("field")!, MarkWords.Wishes.Find(f.Text("wish"))!.Value) { Days = f.Day("from") is { } from ? new DaySpan(from, f.Day("until") ?? from) : null }),
        Of<HeldWaterGone>("held-water-gone",
            [OfField, May("reason", LongText, "why"), May("reference", Text, "number of the county's emergency release")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Text("reason", f.Reason);
                pen.Text("reference", f.Reference);
            },
            f => new HeldWaterGone(f.Text("field")!) { Reason = f.Text("reason"), Reference = f.Text("reference") }),
        Of<HoldSettingsTold>("hold-settings",
            [
                Need("application_day", new Outline.Word(MarkWords.Counting.All), "what the day of application counts as"),
                May("office_from", new Outline.Hour(), "hour from which the county office takes notices, Monday to Friday"),
                May("office_until", new Outline.Hour(), "until which hour"),
                May(HoldLimits.OwnReportDay, "day of the next month by which own use is reported"),
                May(HoldLimits.HiredReportDays, "days within which a hired business reports"),
            ],
            (pen, f) =>
            {
                pen.Text("application_day", MarkWords.Counting.Of(f.Settings.Counting));
                if (f.Settings.OfficeFrom is { } from) pen.Hour("office_from", from);
                if (f.Settings.OfficeUntil is { } until) pen.Hour("office_until", until);
                pen.Number(HoldLimits.OwnReportDay.Key, f.Settings.OwnReportDay);
                pen.Number(HoldLimits.HiredReportDays.Key, f.Settings.HiredReportDays);
            },
            f => new HoldSettingsTold(new HoldSettings
            {
                Counting = MarkWords.Counting.Find(f.Text("application_day"))!.Value,
                OfficeFrom = f.Hour("office_from"),
                OfficeUntil = f.Hour("office_until"),
                OwnReportDay = f.Whole(HoldLimits.OwnReportDay.Key),
                HiredReportDays = f.Whole(HoldLimits.HiredReportDays.Key),
            })),
    ];

    private static ImmutableArray<OutlineKey> Rule =>
    [
        May(HoldLimits.Days, "days in which water may not leave"),
        May("application_day", new Outline.Word(MarkWords.Counting.All), "what its label counts the day of application as; as the farm counts where not given"),
        May("needs", new Outline.Word(MarkWords.WaterNeeds.All), "what it needs done to the water before it"),
        May("moves_within", new Outline.Flag(), "its rule lets water be lowered by moving it within the field"),
        May("releases", Text, "kinds of release it lets, as typed"),
        May(HoldLimits.LeastDepth, "least depth while it is held"),
        May("buffer", Text, "distance to named places, as typed"),
        May(HoldLimits.WindLeast, "least wind"),
        May(HoldLimits.WindMost, "most wind"),
        May(HoldLimits.NoticeHours, "hours before it at which the county wants notice"),
        May("rule", LongText, "the water rule as typed"),
    ];

    private static ImmutableArray<OutlineKey> Paper =>
    [
        May("registration", Text, "registration number"),
        May("active", Text, "active part"),
        May("recommendation", Text, "number of the recommendation"),
        May("permit", Text, "permit and site numbers"),
        May("notice_filed", new Outline.Instant(), "when notice was filed"),
        May(HoldLimits.Reentry, "hours until people may go in"),
        May(HoldLimits.PreHarvest, "days before harvest"),
        May("leaves", Text, "leaf stages it is for, as typed"),
        May("entered_by", Text, "who read the label"),
        May("entered_on", new Outline.Day(), "when"),
        May("label_photo", Text, "name of the picture of the label page"),
    ];

    private static ImmutableArray<OutlineKey> Work =>
    [
        May("amount", Text, "how much an acre, with its unit, as typed"),
        May(HoldLimits.Land, "land treated"),
        May("method", Text, "how it was put on"),
        May("begun", new Outline.Instant(), "when it began"),
        May("ended", new Outline.Instant(), "when it ended"),
        May(HoldLimits.Wind, "wind at the time"),
        May("applicator", Text, "who put it on"),
        May("hired", new Outline.Flag(), "a hired business did it"),
    ];

    private static void Write(JsonPen pen, TreatmentTold f)
    {
        var (what, rule, paper, work) = (f.What, f.What.Rule, f.What.Paper, f.What.Work);
        pen.Text("field", what.Field);
        pen.Text("product", what.Product);
        pen.Text("state", MarkWords.Treatments.Of(f.State));
        pen.Day("from", what.From);
        pen.Day("until", what.Until);
        if (what.Round != 1) pen.Number(HoldLimits.Round.Key, what.Round);
        WriteRule(pen, rule);
        pen.Text("registration", paper.Registration);
        pen.Text("active", paper.Active);
        pen.Text("recommendation", paper.Recommendation);
        pen.Text("permit", paper.Permit);
        pen.Instant("notice_filed", paper.NoticeFiled);
        pen.Number(HoldLimits.Reentry.Key, paper.ReentryHours);
        pen.Number(HoldLimits.PreHarvest.Key, paper.PreHarvestDays);
        pen.Text("leaves", paper.Leaves);
        pen.Text("entered_by", paper.EnteredBy);
        pen.Day("entered_on", paper.EnteredOn);
        pen.Text("label_photo", paper.LabelPhoto);
        pen.Text("amount", work.Amount);
        pen.Number(HoldLimits.Land.Key, work.Land?.Acres);
        pen.Text("method", work.Method);
        pen.Instant("begun", work.Begun);
        pen.Instant("ended", work.Ended);
        pen.Number(HoldLimits.Wind.Key, work.Wind?.MilesPerHour);
        pen.Text("applicator", work.Applicator);
        pen.Flag("hired", work.Hired);
    }

    private static void WriteRule(JsonPen pen, HoldRule rule)
    {
        pen.Number(HoldLimits.Days.Key, rule.Days);
        if (rule.Counting is { } counting) pen.Text("application_day", MarkWords.Counting.Of(counting));
        if (rule.Needs != WaterNeeded.AsItIs) pen.Text("needs", MarkWords.WaterNeeds.Of(rule.Needs));
        pen.Flag("moves_within", rule.MovesWithin);
        pen.Text("releases", rule.Releases);
        pen.Number(HoldLimits.LeastDepth.Key, rule.LeastDepth?.Inches);
        pen.Text("buffer", rule.Buffer);
        pen.Number(HoldLimits.WindLeast.Key, rule.WindLeast?.MilesPerHour);
        pen.Number(HoldLimits.WindMost.Key, rule.WindMost?.MilesPerHour);
        pen.Number(HoldLimits.NoticeHours.Key, rule.NoticeHours);
        pen.Text("rule", rule.Text);
    }

    private static TreatmentTold Read(JsonFacts f) => new(
        new Treatment(f.Text("field")!, f.Text("product")!, f.Day("from")!.Value, f.Day("until")!.Value)
        {
            Round = f.Whole(HoldLimits.Round.Key) ?? 1,
            Rule = ReadRule(f),
            Paper = new TreatmentPaper
            {
                Registration = f.Text("registration"),
                Active = f.Text("active"),
                Recommendation = f.Text("recommendation"),
                Permit = f.Text("permit"),
                NoticeFiled = f.Instant("notice_filed"),
                ReentryHours = f.Whole(HoldLimits.Reentry.Key),
                PreHarvestDays = f.Whole(HoldLimits.PreHarvest.Key),
                Leaves = f.Text("leaves"),
                EnteredBy = f.Text("entered_by"),
                EnteredOn = f.Day("entered_on"),
                LabelPhoto = f.Text("label_photo"),
            },
            Work = new TreatmentWork
            {
                Amount = f.Text("amount"),
                Land = f.Number(HoldLimits.Land) is { } acres ? Area.FromAcres(acres) : null,
                Method = f.Text("method"),
                Begun = f.Instant("begun"),
                Ended = f.Instant("ended"),
                Wind = Wind(f, HoldLimits.Wind),
                Applicator = f.Text("applicator"),
                Hired = f.Flag("hired") ?? false,
            },
        },
        MarkWords.Treatments.Find(f.Text("state"))!.Value);

    private static HoldRule ReadRule(JsonFacts f) => new()
    {
        Days = f.Whole(HoldLimits.Days.Key),
        Counting = f.Text("application_day") is { } counting ? MarkWords.Counting.Find(counting) : null,
        Needs = f.Text("needs") is { } needs ? MarkWords.WaterNeeds.Find(needs)!.Value : WaterNeeded.AsItIs,
        MovesWithin = f.Flag("moves_within") ?? false,
        Releases = f.Text("releases"),
        LeastDepth = f.Number(HoldLimits.LeastDepth) is { } inches ? WaterDepth.FromInches(inches) : null,
        Buffer = f.Text("buffer"),
        WindLeast = Wind(f, HoldLimits.WindLeast),
        WindMost = Wind(f, HoldLimits.WindMost),
        NoticeHours = f.Whole(HoldLimits.NoticeHours.Key),
        Text = f.Text("rule"),
    };

    private static Speed? Wind(JsonFacts facts, Limit limit) => facts.Number(limit) is { } mph ? Speed.FromMilesPerHour(mph) : null;
}
