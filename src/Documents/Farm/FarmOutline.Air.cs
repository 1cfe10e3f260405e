using Watersown.Documents.Json;
using Watersown.Flight;
using Watersown.Weather;

namespace Watersown.Documents.Farms;

public static partial class FarmOutline
{
    private static Outline.Thing Aeroplane => new("aeroplane",
    [
        Need("name", Text(), "the farm's name for it"),
        new("strip", Text(), "name of the strip it loads at"),
        OutlineKey.Of(FlightLimits.Hopper, "what the hopper holds"),
        OutlineKey.Of(FlightLimits.WorkingLoad, "load to plan with; the pilot decides each morning"),
        OutlineKey.Of(FlightLimits.TopLoad, "the most the pilot named"),
        OutlineKey.Of(FlightLimits.Swath, "width sown in one pass"),
        OutlineKey.Of(FlightLimits.Working, "speed while sowing"),
        OutlineKey.Of(FlightLimits.Ferry, "speed between strip and field"),
        OutlineKey.Of(FlightLimits.Turn, "one turn between passes"),
        OutlineKey.Of(FlightLimits.Reload, "one reload"),
        OutlineKey.Of(FlightLimits.GroundAndAir, "taxi, take-off and landing of one load"),
        OutlineKey.Of(FlightLimits.WindLimit, "the pilot's own limit of steady wind"),
        OutlineKey.Of(FlightLimits.GustLimit, "the pilot's own limit of gusts"),
        new("tested", new Outline.Thing("tested", TrayTestForm.Keys), "the last test of how it spreads"),
    ]);

    private static Outline.Thing Hours => new("hours",
    [
        Need("from", new Outline.Hour(), "first minute"),
        Need("until", new Outline.Hour(), "last minute"),
    ]);

    private static Outline.Thing Slot => new("slot",
    [
        Need("day", new Outline.Day(), "the day"),
        Need("from", new Outline.Hour(), "first minute"),
        Need("until", new Outline.Hour(), "last minute; equal to the first means not that day"),
        new("aeroplane", Text(), "name of the aeroplane it is for; every one where not given"),
    ]);

    private static Outline.Thing Wind => new("wind",
    [
        Need("at", new Outline.Moment(), "when it blows so"),
        Need(OutlineKey.Of(WeatherLimits.Sustained, "steady wind")),
        Need(OutlineKey.Of(WeatherLimits.Gust, "strongest puff")),
        OutlineKey.Of(WeatherLimits.From, "where it comes from, degrees from true north"),
        new("issued", new Outline.Moment(), "when the forecast was issued; seen or measured where not given"),
    ]);

    private static Outline.Thing Normals => new("normals",
    [
        new("source", Text(), "where they come from, in words"),
        Need("months", new Outline.Several(new Outline.Thing("month",
        [
            Need(OutlineKey.Of(WeatherLimits.Month, "the month, 1 to 12")),
            OutlineKey.Of(WeatherLimits.Mean, "mean temperature of a day, where that alone is known"),
            OutlineKey.Of(WeatherLimits.High, "mean of the highest"),
            OutlineKey.Of(WeatherLimits.Low, "mean of the lowest"),
        ]), 12), "month by month"),
    ]);

    private static Outline.Thing Warmth => new("warmth",
    [
        Need("day", new Outline.Day(), "the day"),
        Need(OutlineKey.Of(WeatherLimits.High, "highest temperature")),
        Need(OutlineKey.Of(WeatherLimits.Low, "lowest temperature")),
    ]);
}
