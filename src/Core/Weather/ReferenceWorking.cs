using Watersown.Reckon;

namespace Watersown.Weather;

/// <summary>The way to a reference evapotranspiration, step by step, in the symbols of FAO-56.</summary>
internal static class ReferenceWorking
{
    private const string Energy = "MJ/m²";

    public static Working Show(ReckoningInput given, EvapotranspirationDay day, ReferenceWater water, double daylight)
    {
        var working = Working.Empty
            .Given("J", "day of the year", day.DayOfYear, string.Empty, "typed")
            .Given("φ", "latitude", day.Latitude, "°", "typed")
            .Given("z", "elevation", given.Number("elev_m"), "m", "typed")
            .Given("Tmax", "the day's high", given.Number("tmax_c"), "°C", "typed")
            .Given("Tmin", "the day's low", given.Number("tmin_c"), "°C", "typed")
            .Given("uz", "wind as measured", given.Number("wind_mps"), "m/s", "typed")
            .Given("h", "height of the wind", given.Number("wind_height_m"), "m", "typed");
        working = ShowSun(ShowAir(working, given, day, water), given, day, water, daylight);
        return working.Step("ETo", "reference evapotranspiration", water.Rate.MillimetersPerDay, "mm",
            "[0.408 Δ (Rn − G) + γ 900/(T + 273) u2 (es − ea)] / [Δ + γ (1 + 0.34 u2)], G = 0 over a day", Eq("6"));
    }

    private static Working ShowAir(Working working, ReckoningInput given, EvapotranspirationDay day, ReferenceWater water)
    {
        working = working
            .Step("u2", "wind at two meters", water.Wind.MetersPerSecond, "m/s", "uz 4.87 / ln(67.8 h − 5.42)", Eq("47"))
            .Step("γ", "psychrometric constant", water.Psychrometric, "kPa/°C", "0.000665 × 101.3 ((293 − 0.0065 z) / 293)^5.26", Eq("7, 8"))
            .Step("Δ", "slope of saturation", water.Slope, "kPa/°C", "4098 e0(T) / (T + 237.3)², T = (Tmax + Tmin) / 2", Eq("13"))
            .Step("es", "saturation of the day", water.Saturation.Kilopascals, "kPa", "(e0(Tmax) + e0(Tmin)) / 2, e0(T) = 0.6108 exp(17.27 T / (T + 237.3))", Eq("11, 12"));
        if (given.NumberOrNone("vapour_kpa") is { } vapor) return working.Given("ea", "vapor in the air", vapor, "kPa", "typed");
        if (given.NumberOrNone("dewpoint_c") is { } dewPoint)
        {
            return working
                .Given("Tdew", "dew point", dewPoint, "°C", "typed")
                .Step("ea", "vapor in the air", day.Vapor.Kilopascals, "kPa", "e0(Tdew)", Eq("14"));
        }

        return working
            .Given("RHmax", "highest relative humidity", given.Number("rh_max_pct"), "%", "typed")
            .Given("RHmin", "lowest relative humidity", given.Number("rh_min_pct"), "%", "typed")
            .Step("ea", "vapor in the air", day.Vapor.Kilopascals, "kPa", "(e0(Tmin) RHmax + e0(Tmax) RHmin) / 200", Eq("17"));
    }

    private static Working ShowSun(Working working, ReckoningInput given, EvapotranspirationDay day, ReferenceWater water, double daylight)
    {
        working = working.Step("Ra", "energy at the top of the air", water.Extraterrestrial, Energy, "(24 × 60 / π) 0.0820 dr (ωs sin φ sin δ + cos φ cos δ sin ωs)", Eq("21"));
        working = given.NumberOrNone("sunshine_h") is { } sunshine
            ? working
                .Given("n", "hours of bright sunshine", sunshine, "h", "typed")
                .Step("N", "hours of daylight", daylight, "h", "24 ωs / π", Eq("34"))
                .Step("Rs", "energy at the ground", day.Solar, Energy, "(0.25 + 0.50 n / N) Ra", Eq("35"))
            : working.Given("Rs", "energy at the ground", day.Solar, Energy, "typed");
        return working
            .Step("Rso", "the same from a clear sky", water.ClearSky, Energy, "(0.75 + 0.00002 z) Ra", Eq("37"))
            .Step("Rns", "energy that grass keeps of it", water.NetShortwave, Energy, "0.77 Rs", Eq("38"))
            .Step("Rnl", "energy that goes back to the sky", water.NetLongwave, Energy, "4.903 × 10⁻⁹ (Tmax⁴ + Tmin⁴)/2 (0.34 − 0.14 √ea) (1.35 Rs/Rso − 0.35), in kelvin, Rs/Rso at most 1", Eq("39"))
            .Step("Rn", "energy left", water.NetRadiation, Energy, "Rns − Rnl", Eq("40"));
    }

    private static Citation Eq(string number) => Sources.Fao56.At("eq. " + number);
}
