using Watersown.Reckon;
using static Watersown.Wording.Say;

namespace Watersown.Weather;

/// <summary>What the weather of a day takes from a wide field of short grass.</summary>
internal static class ReferenceReckoning
{
    /// <summary>A sunshine recorder and a bent horizon can beat the plain day length by this much.</summary>
    private const double SunshineBeyondDayHours = 0.5;

    /// <summary>Above clear sky by more than this a sensor is suspect.</summary>
    private const double BeyondClearSky = 1.05;

    private const double CalmMetersPerSecond = 0.5;

    public static Reckoning Reckoning => new(
        "reference-et",
        "How much water did the air take today from a wide field of short grass?",
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
        ],
        [
            new("et0_mm", KeyKind.Number, "mm", "reference evapotranspiration of the day"),
            new("et0_in", KeyKind.Number, "in", "the same"),
            new("net_radiation_mj", KeyKind.Number, "MJ/m²", "energy that grass keeps"),
            new("extraterrestrial_mj", KeyKind.Number, "MJ/m²", "energy at the top of the air"),
        ],
        Sources.Fao56.At("eq. 6"),
        "date=2026-05-10 lat_deg=39.4 elev_m=20 tmax_c=26.5 tmin_c=10.5 dewpoint_c=9 wind_mps=2.5 wind_height_m=2 solar_mj=26.5",
        Work)
    {
        ExactlyOneOf =
        [
            new("humidity", [["rh_max_pct", "rh_min_pct"], ["vapour_kpa"], ["dewpoint_c"]]),
            new("the sun's energy", [["solar_mj"], ["sunshine_h"]]),
        ],
        Limits = "A whole day; a station over short green grass. Open water and young rice take about 1.05 to 1.10 times as much.",
    };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var sun = new SunOfDay(given.Date("date").DayOfYear, given.Number("lat_deg"));
        ImmutableArray<Problem> problems = [.. Problems(given, sun)];
        if (!problems.IsEmpty) return Outcome<Reckoned>.Refuse(problems);

        var day = new EvapotranspirationDay
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
        };
        var water = ReferenceEvapotranspiration.Of(day);
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("et0_mm", water.Rate.MillimetersPerDay),
                ("et0_in", water.Rate.InchesPerDay),
                ("net_radiation_mj", water.NetRadiation),
                ("extraterrestrial_mj", water.Extraterrestrial),
            ],
            ReferenceWorking.Show(given, day, water, sun.Daylight))
        { Cautions = [.. Cautions(given, day, water, sun)] });
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

    private static IEnumerable<string> Cautions(ReckoningInput given, EvapotranspirationDay day, ReferenceWater water, SunOfDay sun)
    {
        if (day.Solar > water.ClearSky * BeyondClearSky)
            yield return "More sun than a clear sky gives, " + Number(water.ClearSky, 1) + " MJ/m²: check the sensor. The sky is taken as clear.";
        if (given.NumberOrNone("sunshine_h") > sun.Daylight) yield return "More sunshine than the plain day length of " + Number(sun.Daylight, 1) + " h: taken as sun all day.";
        if (given.Has("sunshine_h")) yield return "Solar energy was estimated from sunshine: use sums over several days rather than this day alone.";
        if (water.Wind.MetersPerSecond < CalmMetersPerSecond) yield return "Under 0.5 m/s at two meters the form runs low: FAO-56 advises to reckon with no less.";
        if (water.Extraterrestrial <= 0) yield return "The sun does not rise on that day: the sky is taken as clear.";
        yield return "This is grass. Multiply by the crop's own coefficient; for a bare flood by about 1.05 to 1.10.";
    }

    /// <summary>What the sun can do on a day at a latitude.</summary>
    private sealed record SunOfDay(int DayOfYear, double Latitude)
    {
        public double Extraterrestrial => SunEnergy.Extraterrestrial(DayOfYear, Latitude);

        public double Daylight => SunEnergy.DaylightHours(DayOfYear, Latitude);
    }
}
