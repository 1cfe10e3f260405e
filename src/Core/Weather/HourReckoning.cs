using Watersown.Reckon;
using static Watersown.Wording.Say;

namespace Watersown.Weather;

/// <summary>What the weather of an hour takes from a wide field of short grass.</summary>
internal static class HourReckoning
{
    private const string Energy = "MJ/m²";

    public static Reckoning Reckoning => new(
        "reference-et-hour",
        "How much water did the air take this hour from a wide field of short grass?",
        [
            new("date", KeyKind.Date, string.Empty, "day"),
            new("middle_h", KeyKind.Number, "h", "middle of the hour after midnight, by a clock without summer time") { Least = 0, Most = 24 },
            new("lat_deg", KeyKind.Number, "°", "latitude, north positive") { Least = -90, Most = 90 },
            new("lon_deg", KeyKind.Number, "°", "longitude, east positive") { Least = -180, Most = 180 },
            new("utc_offset_h", KeyKind.Number, "h", "hours that this clock is ahead of UTC") { Least = -12, Most = 14 },
            new("elev_m", KeyKind.Number, "m", "elevation") { Least = -500, Most = 9000 },
            new("temp_c", KeyKind.Number, "°C", "mean temperature of the hour") { Least = -60, Most = 60 },
            new("rh_pct", KeyKind.Number, "%", "relative humidity") { Least = 0, Most = 100 },
            new("wind_mps", KeyKind.Number, "m/s", "mean wind of the hour") { Least = 0, Most = 60 },
            new("wind_height_m", KeyKind.Number, "m", "height over the ground at which it was measured") { Least = 0.5, Most = 200 },
            new("solar_mj", KeyKind.Number, Energy, "the sun's energy at the ground in the hour") { Least = 0, Most = 5.1 },
            new("night_clearness", KeyKind.Number, string.Empty, "sun over clear-sky sun of the last hours before sunset, for the night and, in the standard, while the sun is low; 0.8 where left out") { Least = 0.3, Most = 1, Optional = true },
        ],
        [
            new("et0_mm", KeyKind.Number, "mm", "reference evapotranspiration of the hour"),
            new("asce_short_mm", KeyKind.Number, "mm", "by the American standard for short grass; dew shows below zero"),
            new("asce_tall_mm", KeyKind.Number, "mm", "by that standard for tall alfalfa"),
            new("net_radiation_mj", KeyKind.Number, Energy, "energy that grass keeps"),
            new("asce_net_radiation_mj", KeyKind.Number, Energy, "the same by the American standard, which its figures use"),
            new("extraterrestrial_mj", KeyKind.Number, Energy, "energy at the top of the air"),
        ],
        Sources.Fao56.At("eq. 53"),
        "date=2026-05-10 middle_h=13.5 lat_deg=39.4 lon_deg=-122 utc_offset_h=-8 elev_m=20 temp_c=25 rh_pct=35 wind_mps=3 wind_height_m=2 solar_mj=3.1",
        Work)
    {
        Limits = "One hour over short green grass, or tall alfalfa where it says so. While the sun is low, how clear the sky is must be told from the hours before.",
    };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var air = Temperature.FromCelsius(given.Number("temp_c"));
        var hour = new EvapotranspirationHour
        {
            DayOfYear = given.Date("date").DayOfYear,
            Middle = given.Number("middle_h"),
            Latitude = given.Number("lat_deg"),
            Longitude = given.Number("lon_deg"),
            ZoneLongitude = given.Number("utc_offset_h") * 15,
            Elevation = Length.FromMeters(given.Number("elev_m")),
            Air = air,
            Vapor = Humidity.Saturation(air) * (given.Number("rh_pct") / 100),
            Wind = Speed.FromMetersPerSecond(given.Number("wind_mps")),
            WindHeight = Length.FromMeters(given.Number("wind_height_m")),
            Solar = given.Number("solar_mj"),
            NightClearness = given.NumberOrNone("night_clearness") ?? 0.8,
        };
        var water = HourlyEvapotranspiration.Of(hour);
        var wind = ReferenceEvapotranspiration.WindAtTwoMeters(hour.Wind, hour.WindHeight);
        var net = StandardizedEvapotranspiration.NetRadiation(hour);
        double Standard(ReferenceSurface surface) => StandardizedEvapotranspiration.OfHour(surface, air, hour.Vapor, wind, hour.Elevation, net).MillimetersPerDay / 24;
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("et0_mm", water.Rate.MillimetersPerDay / 24),
                ("asce_short_mm", Standard(ReferenceSurface.Short)),
                ("asce_tall_mm", Standard(ReferenceSurface.Tall)),
                ("net_radiation_mj", water.NetRadiation),
                ("asce_net_radiation_mj", net),
                ("extraterrestrial_mj", water.Extraterrestrial),
            ],
            Show(given, hour, water, wind)
                .Step("β", "height of the sun", HourlyEvapotranspiration.SunHeight(hour), "rad", "arcsin(sin φ sin δ + cos φ cos δ cos ω)", Sources.AsceEwri2005.At("hourly net radiation"))
                .Step("Rns", "energy left by the American standard", net, Energy, "0.77 Rs − 2.042 × 10⁻¹⁰ T⁴ (0.34 − 0.14 √ea) (1.35 Rs/Rso − 0.35), Rs/Rso within 0.3 and 1; while β < 0.3 the clearness before", Sources.AsceEwri2005.At("hourly net radiation"))
                .Step("ETos", "short grass by the American standard", Standard(ReferenceSurface.Short), "mm", "as ETo with 0.24 for 0.34 by day, 0.96 by night; below zero is dew", Sources.AsceEwri2005.At("eq. 1"))
                .Step("ETrs", "tall alfalfa by that standard", Standard(ReferenceSurface.Tall), "mm", "the same with 66 for 37; 0.25 and G = 0.04 Rn by day, 1.7 and 0.2 Rn by night", Sources.AsceEwri2005.At("eq. 1")))
        { Cautions = [.. Cautions(hour, water)] });
    }

    private static Working Show(ReckoningInput given, EvapotranspirationHour hour, ReferenceHour water, Speed wind) => Working.Empty
        .Given("J", "day of the year", hour.DayOfYear, string.Empty, "typed")
        .Given("t", "middle of the hour", hour.Middle, "h", "typed")
        .Given("φ", "latitude", hour.Latitude, "°", "typed")
        .Given("λ", "longitude, east positive", hour.Longitude, "°", "typed")
        .Given("z", "elevation", given.Number("elev_m"), "m", "typed")
        .Given("T", "temperature", given.Number("temp_c"), "°C", "typed")
        .Given("RH", "relative humidity", given.Number("rh_pct"), "%", "typed")
        .Given("uz", "wind as measured", given.Number("wind_mps"), "m/s", "typed")
        .Given("h", "height of the wind", given.Number("wind_height_m"), "m", "typed")
        .Given("Rs", "energy at the ground", hour.Solar, Energy, "typed")
        .Step("u2", "wind at two meters", wind.MetersPerSecond, "m/s", "uz 4.87 / ln(67.8 h − 5.42)", Eq("47"))
        .Step("ea", "vapor in the air", hour.Vapor.Kilopascals, "kPa", "e0(T) RH / 100, e0(T) = 0.6108 exp(17.27 T / (T + 237.3))", Eq("54"))
        .Step("ω", "sun's angle from its noon", HourlyEvapotranspiration.SunAngle(hour), "rad", "(π / 12) [t + (λ − λz) / 15 + Sc − 12]", Eq("31 to 33"))
        .Step("Ra", "energy at the top of the air", water.Extraterrestrial, Energy, "(12 × 60 / π) 0.0820 dr [(ω2 − ω1) sin φ sin δ + cos φ cos δ (sin ω2 − sin ω1)]", Eq("28"))
        .Step("Rso", "energy at the ground from a clear sky", water.ClearSky, Energy, "(0.75 + 0.00002 z) Ra", Eq("37"))
        .Step("Rnl", "energy that goes back to the sky", water.NetLongwave, Energy, "2.043 × 10⁻¹⁰ T⁴ (0.34 − 0.14 √ea) (1.35 Rs/Rso − 0.35), in kelvin; by night the clearness before sunset", Eq("39"))
        .Step("Rn", "energy left", water.NetRadiation, Energy, "0.77 Rs − Rnl", Eq("40"))
        .Step("G", "warmth into the ground", water.SoilHeat, Energy, "0.1 Rn by day, 0.5 Rn by night", Eq("45, 46"))
        .Step("ETo", "reference evapotranspiration", water.Rate.MillimetersPerDay / 24, "mm", "[0.408 Δ (Rn − G) + γ 37/(T + 273) u2 (e0 − ea)] / [Δ + γ (1 + 0.34 u2)], at least 0", Eq("53"));

    private static IEnumerable<string> Cautions(EvapotranspirationHour hour, ReferenceHour water)
    {
        if (water.ClearSky > 0 && hour.Solar > water.ClearSky * 1.1) yield return "More sun than a clear sky gives, " + Number(water.ClearSky, 2) + " MJ/m²: check the clock, the zone and the sensor.";
        if (water.ClearSky <= 0 && hour.Solar > 0) yield return "Sun was given for an hour in which it is down: check the clock and the zone.";
        if (water.Extraterrestrial <= 0) yield return "The sun is down: how clear the sky is was taken from the evening.";
        yield return "This is grass. Multiply by the crop's own coefficient; for a bare flood by about 1.05 to 1.10.";
    }

    private static Citation Eq(string number) => Sources.Fao56.At("eq. " + number);
}
