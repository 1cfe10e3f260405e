using Watersown.Reckon;
using static Watersown.Wording.Say;

namespace Watersown.Weather;

/// <summary>Evapotranspiration where a station tells little more than high and low.</summary>
internal static class ThinWeatherReckoning
{
    public static Reckoning Reckoning => new(
        "reference-et-temps",
        "Only the day's high and low are known: how much water did the air take?",
        [
            new("date", KeyKind.Date, string.Empty, "day"),
            new("lat_deg", KeyKind.Number, "°", "latitude, north positive") { Least = -90, Most = 90 },
            new("elev_m", KeyKind.Number, "m", "elevation") { Least = -500, Most = 9000 },
            new("tmax_c", KeyKind.Number, "°C", "the day's high") { Least = -60, Most = 60 },
            new("tmin_c", KeyKind.Number, "°C", "the day's low") { Least = -60, Most = 60 },
            new("wind_2m_mps", KeyKind.Number, "m/s", "wind at two meters; 2 where left out") { Least = 0, Most = 60, Optional = true },
            new("drier_c", KeyKind.Number, "°C", "how far the dew point lies under the low: 2 to 3 in dry country; 0 where left out") { Least = 0, Most = 20, Optional = true },
            new("place", KeyKind.Text, string.Empty, "by the sea, where high and low lie close, or inland; inland where left out") { Choices = ["inland", "coast"], Optional = true },
        ],
        [
            new("penman_mm", KeyKind.Number, "mm", "by the Penman-Monteith form with sun and vapor estimated"),
            new("hargreaves_mm", KeyKind.Number, "mm", "by high, low and the height of the sun alone"),
            new("solar_mj", KeyKind.Number, "MJ/m²", "the sun's energy at the ground, estimated"),
        ],
        Sources.Fao56.At("ch. 3, missing data"),
        "date=2026-07-15 lat_deg=39.4 elev_m=20 tmax_c=34 tmin_c=15 drier_c=2",
        Work)
    { Limits = "Use sums over a week or more, not one day. The second form runs low in strong wind (over 3 m/s) and high in humid air." };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        Temperature high = Temperature.FromCelsius(given.Number("tmax_c")), low = Temperature.FromCelsius(given.Number("tmin_c"));
        if (low > high)
            return Outcome<Reckoned>.Refuse(WeatherProblems.LowAboveHigh.At("tmin_c", ("value", Figure(low.Celsius) + " °C"), ("limit", Figure(high.Celsius) + " °C")));
        var dayOfYear = given.Date("date").DayOfYear;
        var (latitude, elevation) = (given.Number("lat_deg"), Length.FromMeters(given.Number("elev_m")));
        var coast = given.TextOrNone("place") == "coast";
        var wind = given.NumberOrNone("wind_2m_mps") is { } told ? Speed.FromMetersPerSecond(told) : MissingWeather.UsualWind;
        var drier = given.NumberOrNone("drier_c") ?? 0;
        var day = new EvapotranspirationDay
        {
            DayOfYear = dayOfYear,
            Latitude = latitude,
            Elevation = elevation,
            High = high,
            Low = low,
            Vapor = MissingWeather.VaporByLow(low, drier),
            Wind = wind,
            WindHeight = Length.FromMeters(2),
            Solar = MissingWeather.Solar(dayOfYear, latitude, elevation, high, low, coast ? Shore.Coast : Shore.Inland),
        };
        var (water, plain) = (ReferenceEvapotranspiration.Of(day), MissingWeather.Hargreaves(dayOfYear, latitude, high, low));
        var working = Working.Empty
            .Given("J", "day of the year", dayOfYear, string.Empty, "typed")
            .Given("φ", "latitude", latitude, "°", "typed")
            .Given("z", "elevation", elevation.Meters, "m", "typed")
            .Given("Tmax", "the day's high", high.Celsius, "°C", "typed")
            .Given("Tmin", "the day's low", low.Celsius, "°C", "typed")
            .Given("u2", "wind at two meters", wind.MetersPerSecond, "m/s", given.Has("wind_2m_mps") ? "typed" : "not given: the mean of many stations")
            .Given("Kd", "dew point under the low", drier, "°C", given.Has("drier_c") ? "typed" : "not given: none")
            .Step("Ra", "energy at the top of the air", water.Extraterrestrial, "MJ/m²", "(24 × 60 / π) 0.0820 dr (ωs sin φ sin δ + cos φ cos δ sin ωs)", Eq("21"))
            .Step("Rs", "energy at the ground", day.Solar, "MJ/m²", (coast ? "0.19" : "0.16") + " √(Tmax − Tmin) Ra, at most (0.75 + 0.00002 z) Ra", Eq("50"))
            .Step("ea", "vapor in the air", day.Vapor.Kilopascals, "kPa", "e0(Tmin − Kd)", Eq("48"))
            .Step("Rn", "energy left", water.NetRadiation, "MJ/m²", "0.77 Rs − Rnl", Eq("38 to 40"))
            .Step("ETo", "reference evapotranspiration", water.Rate.MillimetersPerDay, "mm", "[0.408 Δ Rn + γ 900/(T + 273) u2 (es − ea)] / [Δ + γ (1 + 0.34 u2)]", Eq("6"))
            .Step("ETh", "the same by temperature alone", plain.MillimetersPerDay, "mm", "0.0023 (T + 17.8) √(Tmax − Tmin) 0.408 Ra", Eq("52"));
        return Outcome<Reckoned>.Of(new Reckoned([("penman_mm", water.Rate.MillimetersPerDay), ("hargreaves_mm", plain.MillimetersPerDay), ("solar_mj", day.Solar)], working)
        {
            Cautions = ["Estimated from temperature: a sum over a week is worth more than this day alone."],
        });
    }

    private static Citation Eq(string number) => Sources.Fao56.At("eq. " + number);
}
