using Watersown.Documents.Json;
using Watersown.Flight;
using Watersown.Weather;

namespace Watersown.Documents.Farms;

/// <summary>The aeroplane, its slots, and the weather.</summary>
internal static class AirReading
{
    public static Aeroplane Aeroplane(JsonFacts facts, int index, PartReader reader)
    {
        var tested = facts.Thing("tested") is { } test ? TrayTestForm.Read(test) : null;
        if (tested is null && facts.Thing("tested") is { } unworkable)
            reader.Problems.Add(FarmProblems.TestUnworkable.At(Place.Of("aeroplanes", index, facts.Text("name") ?? string.Empty, "tested.passes_g"), ("value", Wording.Say.Number(unworkable.Entries("passes_g").Count()))));
        var usual = new Aeroplane(facts.Text("name") ?? string.Empty);
        return usual with
        {
            Strip = facts.Text("strip"),
            Hopper = facts.Number(FlightLimits.Hopper) is { } gallons ? Volume.FromGallons(gallons) : null,
            WorkingLoad = facts.Number(FlightLimits.WorkingLoad) is { } load ? SoakedSeed.FromPounds(load) : usual.WorkingLoad,
            TopLoad = facts.Number(FlightLimits.TopLoad) is { } top ? SoakedSeed.FromPounds(top) : null,
            Swath = facts.Number(FlightLimits.Swath) is { } feet ? Length.FromFeet(feet) : usual.Swath,
            Working = Speed(facts, FlightLimits.Working) ?? usual.Working,
            Ferry = Speed(facts, FlightLimits.Ferry) ?? usual.Ferry,
            Turn = facts.Seconds(FlightLimits.Turn) ?? usual.Turn,
            Reload = facts.Seconds(FlightLimits.Reload) ?? usual.Reload,
            GroundAndAir = facts.Seconds(FlightLimits.GroundAndAir) ?? usual.GroundAndAir,
            WindLimit = Speed(facts, FlightLimits.WindLimit) ?? usual.WindLimit,
            GustLimit = Speed(facts, FlightLimits.GustLimit) ?? usual.GustLimit,
            Tested = tested,
        };
    }

    public static FlyingSlot Slot(JsonFacts facts) => new(facts.Day("day") ?? default, facts.Hour("from") ?? default, facts.Hour("until") ?? facts.Hour("from") ?? default)
    {
        Aeroplane = facts.Text("aeroplane"),
    };

    public static Wind Wind(JsonFacts facts, int index, PartReader reader)
    {
        DateTimeOffset? Moment(string key) => reader.Moment(facts, key, Place.Of("wind", index, string.Empty, key));
        var sustained = Speed(facts, WeatherLimits.Sustained);
        var gust = Speed(facts, WeatherLimits.Gust);
        return new Wind(Moment("at") ?? default, sustained ?? default, gust ?? sustained ?? default)
        {
            From = facts.Number(WeatherLimits.From) is { } degrees ? Bearing.FromDegrees(degrees) : null,
            Issued = Moment("issued"),
        };
    }

    public static DayWarmth Warmth(JsonFacts facts)
    {
        var high = facts.Number(WeatherLimits.High) ?? facts.Number(WeatherLimits.Low) ?? 0;
        return new DayWarmth(facts.Day("day") ?? default, Temperature.FromFahrenheit(high), Temperature.FromFahrenheit(facts.Number(WeatherLimits.Low) ?? high));
    }

    /// <summary>Normals of the farm; a month of which neither mean nor high and low stand is said and left out.</summary>
    public static FarmNormals Normals(JsonFacts facts, PartReader reader)
    {
        var months = ImmutableArray.CreateBuilder<MonthNormal>();
        foreach (var (month, index) in facts.Entries("months").Select((m, i) => (m, i)))
        {
            var mean = month.Number(WeatherLimits.Mean);
            if ((month.Number(WeatherLimits.High) ?? mean) is { } high && (month.Number(WeatherLimits.Low) ?? mean) is { } low && low <= high)
                months.Add(new MonthNormal(Math.Clamp(month.Whole(WeatherLimits.Month.Key) ?? 1, 1, 12), Temperature.FromFahrenheit(high), Temperature.FromFahrenheit(low)));
            else
                reader.Problems.Add(FarmProblems.NormalUnworkable.At(Place.Of("normals.months", index, string.Empty, "mean_f")));
        }

        return new FarmNormals([.. months.DistinctBy(m => m.Month).OrderBy(m => m.Month)], facts.Text("source") ?? "typed by the farm");
    }

    private static Speed? Speed(JsonFacts facts, Limit limit) => facts.Number(limit) is { } mph ? Quantities.Speed.FromMilesPerHour(mph) : null;
}
