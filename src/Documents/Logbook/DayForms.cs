using Watersown.Documents.Json;
using Watersown.Growth;
using Watersown.Season;
using Watersown.Stand;
using Watersown.Weather;
using static Watersown.Documents.Logbooks.FactForm;

namespace Watersown.Documents.Logbooks;

/// <summary>Facts of days out of files, of what days are like as a rule, and of how far the crop has come.</summary>
internal static class DayForms
{
    public static ImmutableArray<FactForm> All { get; } =
    [
        Of<WeatherTaken>("weather-days",
            [
                Need("source", Text, "the file or station, in words"),
                Need("days", new Outline.Several(new Outline.Thing("weather day",
                    [Need("day", new Outline.Day(), "the day"), May(WeatherLimits.High, "the highest"), May(WeatherLimits.Low, "the lowest"), May(WeatherLimits.Rain, "rain")]), WeatherTaken.DaysMost), "its days"),
            ],
            (pen, f) =>
            {
                pen.Text("source", f.Source);
                pen.List("days", f.Days, day => pen.Thing(null, () =>
                {
                    pen.Day("day", day.Day);
                    pen.Number(WeatherLimits.High.Key, day.High?.Fahrenheit);
                    pen.Number(WeatherLimits.Low.Key, day.Low?.Fahrenheit);
                    pen.Number(WeatherLimits.Rain.Key, day.Rain?.Inches);
                }));
            },
            f => new WeatherTaken(f.Text("source")!, [.. f.Entries("days").Select(Day)])),
        Of<StageSeen>("stage-seen",
            [OfField, Need("stage", new Outline.Word(MarkWords.CropStages.All), "how far the crop has come"), May(CropLimits.Leaf, "leaves of the main stem")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Text("stage", MarkWords.CropStages.Of(f.Point.Stage));
                if (f.Point.Stage == CropStage.Leaf) pen.Number(CropLimits.Leaf.Key, f.Point.Leaf);
            },
            f => new StageSeen(f.Text("field")!, MarkWords.CropStages.Find(f.Text("stage"))!.Value is var stage && stage == CropStage.Leaf ? StagePoint.OfLeaf(f.Whole(CropLimits.Leaf.Key) ?? 1) : new StagePoint(stage))),
        Of<PestLooked>("pest-looked",
            [OfField, Need("pest", new Outline.Word(MarkWords.Pests.All), "what was looked for"), Need("seen", new Outline.Flag(), "it is there"), May(CropLimits.Damaged, "plants or panicles that bear its damage, of those looked at")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Text("pest", MarkWords.Pests.Of(f.Pest));
                pen.Yes("seen", f.Seen);
                pen.Number(CropLimits.Damaged.Key, f.Damaged?.Percent);
            },
            f => new PestLooked(f.Text("field")!, MarkWords.Pests.Find(f.Text("pest"))!.Value, f.Flag("seen")!.Value) { Damaged = f.Number(CropLimits.Damaged) is { } share ? Fraction.FromPercent(share) : null }),
        Of<StandResponseSet>("stand-response",
            [Need("points", new Outline.Several(new Outline.Thing("response point", [Need(CropLimits.Stand, "plants on the land"), Need(CropLimits.Share, "yield over the best yield")]), 50), "by rising stand")],
            (pen, f) => pen.List("points", f.Points, point => pen.Thing(null, () =>
            {
                pen.Number(CropLimits.Stand.Key, point.Stand.PerSquareFoot);
                pen.Number(CropLimits.Share.Key, point.Share.Percent);
            })),
            f => new StandResponseSet([.. f.Entries("points").Select(p => new ResponsePoint(PlantDensity.FromPerSquareFoot(p.Number(CropLimits.Stand)!.Value), Fraction.FromPercent(p.Number(CropLimits.Share)!.Value)))])),
        Of<StageTargetsSet>("stage-targets",
            [Need("maturity", new Outline.Word(Farms.Words.Maturities.All), "how early it ripens"), Need(CropLimits.Initiation, "warmth to panicle initiation"), Need(CropLimits.Heading, "warmth to half of the panicles out"), Need(CropLimits.Mature, "warmth to ripe")],
            (pen, f) =>
            {
                pen.Text("maturity", Farms.Words.Maturities.Of(f.Class));
                pen.Number(CropLimits.Initiation.Key, f.Targets.Initiation.Fahrenheit);
                pen.Number(CropLimits.Heading.Key, f.Targets.Heading.Fahrenheit);
                pen.Number(CropLimits.Mature.Key, f.Targets.Mature.Fahrenheit);
            },
            f => new StageTargetsSet(Farms.Words.Maturities.Find(f.Text("maturity"))!.Value, new StageTargets(Gathered(f, CropLimits.Initiation), Gathered(f, CropLimits.Heading), Gathered(f, CropLimits.Mature)))),
        Of<FloodWarmth>("flood-warmth",
            [OfField, Need("day", new Outline.Day(), "the day"), Need(WeatherLimits.High, "the flood's highest"), Need(WeatherLimits.Low, "the flood's lowest")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Day("day", f.Day);
                pen.Number(WeatherLimits.High.Key, f.High.Fahrenheit);
                pen.Number(WeatherLimits.Low.Key, f.Low.Fahrenheit);
            },
            f => new FloodWarmth(f.Text("field")!, f.Day("day")!.Value, Warm(f, WeatherLimits.High)!.Value, Warm(f, WeatherLimits.Low)!.Value)),
        Of<NormalsTaken>("normals",
            [
                Need("source", Text, "where they come from, in words"),
                Need("months", new Outline.Several(new Outline.Thing("month",
                    [Need(WeatherLimits.Month, "the month, 1 to 12"), Need(WeatherLimits.High, "mean of the highest, or the mean of the day in both"), Need(WeatherLimits.Low, "mean of the lowest")]), 12), "month by month"),
            ],
            (pen, f) =>
            {
                pen.Text("source", f.Source);
                pen.List("months", f.Months, month => pen.Thing(null, () =>
                {
                    pen.Number(WeatherLimits.Month.Key, month.Month);
                    pen.Number(WeatherLimits.High.Key, month.High.Fahrenheit);
                    pen.Number(WeatherLimits.Low.Key, month.Low.Fahrenheit);
                }));
            },
            f => new NormalsTaken(f.Text("source")!, [.. f.Entries("months").Select(m => new MonthNormal(m.Whole(WeatherLimits.Month.Key)!.Value, Warm(m, WeatherLimits.High)!.Value, Warm(m, WeatherLimits.Low)!.Value))])),
    ];

    private static DegreeDays Gathered(JsonFacts facts, Limit limit) => DegreeDays.FromFahrenheit(facts.Number(limit)!.Value);

    private static WeatherDay Day(JsonFacts facts) => new(facts.Day("day")!.Value)
    {
        High = Warm(facts, WeatherLimits.High),
        Low = Warm(facts, WeatherLimits.Low),
        Rain = facts.Number(WeatherLimits.Rain) is { } inches ? WaterDepth.FromInches(inches) : null,
    };

    private static Temperature? Warm(JsonFacts facts, Limit limit) => facts.Number(limit) is { } degrees ? Temperature.FromFahrenheit(degrees) : null;
}
