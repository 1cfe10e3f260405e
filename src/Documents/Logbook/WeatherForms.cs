using Watersown.Documents.Json;
using Watersown.Season;
using Watersown.Weather;
using static Watersown.Documents.Logbooks.FactForm;

namespace Watersown.Documents.Logbooks;

/// <summary>Facts of wind and warmth.</summary>
internal static class WeatherForms
{
    public static ImmutableArray<FactForm> All { get; } =
    [
        Of<WindSeen>("wind",
            [.. Blowing, May("place", Text, "where it was felt")],
            (pen, f) =>
            {
                Write(pen, f.Sustained, f.Gust, f.From);
                pen.Text("place", f.Place);
            },
            f => new WindSeen(Speed(f, "sustained_mph"), Speed(f, "gust_mph")) { From = From(f), Place = f.Text("place") }),
        Of<ForecastHeard>("forecast",
            [
                Need("issued", new Outline.Instant(), "when it was issued"),
                Need("hours", new Outline.Several(new Outline.Thing("forecast hour", [Need("at", new Outline.Instant(), "when it will blow so"), .. Blowing]), 500), "what it says"),
                May("source", Text, "who gave it"),
            ],
            (pen, f) =>
            {
                pen.Instant("issued", f.Issued);
                pen.List("hours", f.Hours, hour => pen.Thing(null, () =>
                {
                    pen.Instant("at", hour.At);
                    Write(pen, hour.Sustained, hour.Gust, hour.From);
                }));
                pen.Text("source", f.Source);
            },
            f => new ForecastHeard(f.Instant("issued")!.Value, [.. f.Entries("hours").Select(Hour)], f.Text("source"))),
        Of<WarmthRead>("warmth",
            [Need("day", new Outline.Day(), "the day"), Need(WeatherLimits.High, "the highest"), Need(WeatherLimits.Low, "the lowest")],
            (pen, f) =>
            {
                pen.Day("day", f.Day);
                pen.Number("high_f", f.High.Fahrenheit);
                pen.Number("low_f", f.Low.Fahrenheit);
            },
            f => new WarmthRead(f.Day("day")!.Value, Temperature.FromFahrenheit(f.Number("high_f")!.Value), Temperature.FromFahrenheit(f.Number("low_f")!.Value))),
    ];

    private static ImmutableArray<OutlineKey> Blowing =>
        [Need(WeatherLimits.Sustained, "steady wind"), Need(WeatherLimits.Gust, "strongest puff"), May(WeatherLimits.From, "where it comes from, clockwise from north")];

    private static ForecastHour Hour(JsonFacts facts) => new(facts.Instant("at")!.Value, Speed(facts, "sustained_mph"), Speed(facts, "gust_mph")) { From = From(facts) };

    private static Speed Speed(JsonFacts facts, string key) => Quantities.Speed.FromMilesPerHour(facts.Number(key)!.Value);

    private static Bearing? From(JsonFacts facts) => facts.Number("from_deg") is { } degrees ? Bearing.FromDegrees(degrees) : null;

    private static void Write(JsonPen pen, Speed sustained, Speed gust, Bearing? from)
    {
        pen.Number("sustained_mph", sustained.MilesPerHour);
        pen.Number("gust_mph", gust.MilesPerHour);
        pen.Number("from_deg", from?.Degrees);
    }
}
