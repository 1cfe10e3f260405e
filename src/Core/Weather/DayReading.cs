using Watersown.Reckon;
using static Watersown.Wording.Say;

namespace Watersown.Weather;

/// <summary>The weather of a day as a reckoning is told it: the keys, what they demand of one another, and the day they make.</summary>
internal static class DayReading
{
    /// <summary>A sunshine recorder and a bent horizon can beat the plain day length by this much.</summary>
    private const double SunshineBeyondDayHours = 0.5;

    public static ImmutableArray<ReckoningKey> Keys { get; } =
    [
        new("date", KeyKind.Date, string.Empty, "day"),
        new("lat_deg", KeyKind.Number, "°", "latitude, north positive") { Least = -90, Most = 90 },
        new("elev_m", KeyKind.Number, "m", "elevation") { Least = -500, Most = 9000 },
        new("tmax_c", KeyKind.Number, "°C", "the day's high") { Least = -60, Most = 60 },
        new("tmin_c", KeyKind.Number, "°C", "the day's low") { Least = -60, Most = 60 },
        new("rh_max_pct", KeyKind.Number, "%", "highest relative humidity") { Least = 0, Most = 100, Optional = true },
        new("rh_min_pct", KeyKind.Number, "%", "lowest relative humidity") { Least = 0, Most = 100, Optional = true },
        new("vapour_kpa", KeyKind.Number, "kPa", "vapor pressure in the air") { Least = 0, Most = 20, Optional = true },
        new("dewpoint_c", KeyKind.Number, "°C", "dew point") { Least = -80, Most = 60, Optional = true },
        new("wind_mps", KeyKind.Number, "m/s", "the day's mean wind") { Least = 0, Most = 60 },
        new("wind_height_m", KeyKind.Number, "m", "height over the ground at which it was measured") { Least = 0.5, Most = 200 },
        new("solar_mj", KeyKind.Number, "MJ/m²", "the sun's energy at the ground over the day") { Least = 0, Most = 60, Optional = true },
        new("sunshine_h", KeyKind.Number, "h", "hours of bright sunshine") { Least = 0, Most = 24, Optional = true },
    ];

    public static ImmutableArray<Alternatives> OneOf { get; } =
    [
        new("humidity", [["rh_max_pct", "rh_min_pct"], ["vapour_kpa"], ["dewpoint_c"]]),
        new("the sun's energy", [["solar_mj"], ["sunshine_h"]]),
    ];

    /// <summary>The day, or all that cannot be true together.</summary>
    public static Outcome<ToldDay> Of(ReckoningInput given)
    {
        var sun = new SunOfDay(given.Date("date").DayOfYear, given.Number("lat_deg"));
        ImmutableArray<Problem> problems = [.. Problems(given, sun)];
        if (!problems.IsEmpty) return Outcome<ToldDay>.Refuse(problems);
        return Outcome<ToldDay>.Of(new ToldDay(
            new EvapotranspirationDay
            {
                DayOfYear = sun.DayOfYear,
                Latitude = sun.Latitude,
                Elevation = Length.FromMeters(given.Number("elev_m")),
                High = High(given),
                Low = Low(given),
                Vapor = Vapor(given),
                Wind = Speed.FromMetersPerSecond(given.Number("wind_mps")),
                WindHeight = Length.FromMeters(given.Number("wind_height_m")),
                Solar = given.NumberOrNone("solar_mj") ?? SunEnergy.FromSunshine(given.Number("sunshine_h"), sun.Daylight, sun.Extraterrestrial),
            },
            sun.Daylight));
    }

    private static Temperature High(ReckoningInput given) => Temperature.FromCelsius(given.Number("tmax_c"));

    private static Temperature Low(ReckoningInput given) => Temperature.FromCelsius(given.Number("tmin_c"));

    private static Pressure Vapor(ReckoningInput given)
    {
        if (given.NumberOrNone("vapour_kpa") is { } vapor) return Pressure.FromKilopascals(vapor);
        if (given.NumberOrNone("dewpoint_c") is { } dewPoint) return Humidity.FromDewPoint(Temperature.FromCelsius(dewPoint));
        return Humidity.FromRelative(High(given), Low(given), Fraction.FromPercent(given.Number("rh_max_pct")), Fraction.FromPercent(given.Number("rh_min_pct")));
    }

    private static IEnumerable<Problem> Problems(ReckoningInput given, SunOfDay sun)
    {
        if (Low(given) > High(given))
            yield return WeatherProblems.LowAboveHigh.At("tmin_c", ("value", Figure(given.Number("tmin_c")) + " °C"), ("limit", Figure(given.Number("tmax_c")) + " °C"));
        if (given.NumberOrNone("rh_min_pct") is { } least && given.NumberOrNone("rh_max_pct") is { } most && least > most)
            yield return WeatherProblems.LeastHumidityAboveMost.At("rh_min_pct", ("value", Figure(least) + " %"), ("limit", Figure(most) + " %"));
        var held = Humidity.MeanSaturation(High(given), Low(given));
        foreach (var (key, unit) in new[] { ("vapour_kpa", " kPa"), ("dewpoint_c", " °C") })
        {
            if (given.NumberOrNone(key) is { } told && Vapor(given) > held)
                yield return WeatherProblems.MoreVaporThanHeld.At(key, ("value", Figure(told) + unit), ("limit", Figure(held.Kilopascals) + " kPa"));
        }

        if (given.NumberOrNone("sunshine_h") is { } sunshine && sunshine > sun.Daylight + SunshineBeyondDayHours)
            yield return WeatherProblems.SunshineBeyondDay.At("sunshine_h", ("value", Figure(sunshine) + " h"), ("limit", Number(sun.Daylight, 1) + " h"));
        if (given.NumberOrNone("solar_mj") is { } solar && solar > sun.Extraterrestrial)
            yield return WeatherProblems.MoreThanReachesTheAir.At("solar_mj", ("value", Figure(solar) + " MJ/m²"), ("limit", Figure(sun.Extraterrestrial) + " MJ/m²"));
    }

    /// <summary>What the sun can do on a day at a latitude.</summary>
    private sealed record SunOfDay(int DayOfYear, double Latitude)
    {
        public double Extraterrestrial => SunEnergy.Extraterrestrial(DayOfYear, Latitude);

        public double Daylight => SunEnergy.DaylightHours(DayOfYear, Latitude);
    }
}

/// <summary>A day as it was told.</summary>
/// <param name="Day">Its weather.</param>
/// <param name="Daylight">Hours of plain day length.</param>
internal sealed record ToldDay(EvapotranspirationDay Day, double Daylight);
