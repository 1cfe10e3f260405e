using Watersown.Reckon;
using Watersown.Weather;

namespace Watersown.Water;

/// <summary>How warm a shallow flood is on a day, and how far it follows the day's swing.</summary>
internal static class PondTemperatureReckoning
{
    private const double SecondsPerDay = 86400;
    private const double FirstMeasuredWind = 0.1; // m/s, so that still air has a pull too

    public static Reckoning Reckoning => new(
        "pond-temperature",
        "How warm is the flood today, how much does it give to the air, and how far does it follow the night?",
        [.. DayReading.Keys, new("depth_in", KeyKind.Number, "in", "mean depth") { Least = 0.25, Most = 36 }],
        [
            new("water_c", KeyKind.Number, "°C", "mean of the water over the day, good to about 2 °C"),
            new("water_f", KeyKind.Number, "°F", "the same"),
            new("over_air_c", KeyKind.Number, "°C", "above the mean of the air"),
            new("evaporation_mm", KeyKind.Number, "mm", "from the open water"),
            new("over_reference", KeyKind.Number, string.Empty, "over the reference evapotranspiration") { NullMeans = "the air takes nothing" },
            new("response_h", KeyKind.Number, "h", "time in which the water comes most of the way to its balance"),
            new("swing", KeyKind.Number, string.Empty, "share of the day's swing that the water follows"),
        ],
        Sources.HeatBalance,
        "date=2026-05-10 lat_deg=39.4 elev_m=20 tmax_c=26.5 tmin_c=10.5 dewpoint_c=9 wind_mps=2.5 wind_height_m=2 solar_mj=26.5 depth_in=4",
        Work)
    {
        ExactlyOneOf = DayReading.OneOf,
        Limits = "Bare, well mixed water with no cold inflow: measured fields were 2.6 °C above the air from planting to booting. A closed canopy keeps it 1.5 to 2 °C cooler in midsummer; the checks a cold source enters first stay colder.",
    };

    private static Outcome<Reckoned> Work(ReckoningInput given) => DayReading.Of(given).Map(told =>
    {
        var day = told.Day;
        var depth = WaterDepth.FromInches(given.Number("depth_in"));
        var pond = PondTemperature.OfDay(day);
        var reference = ReferenceEvapotranspiration.Of(day);
        var dew = DewPoint(day.Vapor);
        var wind = reference.Wind.MetersPerSecond < FirstMeasuredWind ? Speed.FromMetersPerSecond(FirstMeasuredWind) : reference.Wind;
        var (still, pull) = PondTemperature.Equilibrium(dew, 0.94 * day.Solar * 1e6 / SecondsPerDay, wind);
        var response = PondTemperature.Response(depth, pull);
        var swing = PondTemperature.DailySwing(response);
        var air = (day.High.Celsius + day.Low.Celsius) / 2;
        double? ratio = reference.Rate.MillimetersPerDay > 0.01 ? pond.Evaporation / reference.Rate : null;
        var working = Working.Empty
            .Given("Ta", "mean of the air", air, "°C", "typed")
            .Given("ea", "vapor in the air", day.Vapor.Kilopascals, "kPa", "typed")
            .Given("Rs", "the sun's energy at the ground", day.Solar, "MJ/m²", given.Has("solar_mj") ? "typed" : "from sunshine")
            .Given("h", "depth", given.Number("depth_in"), "in", "typed")
            .Step("u2", "wind at two meters", reference.Wind.MetersPerSecond, "m/s", "uz 4.87 / ln(67.8 z − 5.42)", Sources.Fao56.At("eq. 47"))
            .Step("Rnl", "energy that goes back to the sky, at the air's warmth", reference.NetLongwave, "MJ/m²", "4.903 × 10⁻⁹ Ta⁴ (0.34 − 0.14 √ea) (1.35 Rs/Rso − 0.35)", Sources.Fao56.At("eq. 39"))
            .Constant("c", "share of Penman's wind function that fits measured fields", PondTemperature.WindShare, string.Empty, Sources.FarmDefault)
            .Step("Tw", "mean of the water", pond.Water.Celsius, "°C", "0.94 Rs + 0.97 (σ Ta⁴ − Rnl) − 0.97 σ Tw⁴ = c 6.43 (1 + 0.536 u2) [(e0(Tw) − ea) + γ (Tw − Ta)]", Sources.HeatBalance)
            .Step("E", "from the open water", pond.Evaporation.MillimetersPerDay, "mm", "c 6.43 (1 + 0.536 u2) (e0(Tw) − ea) / 2.45", Sources.HeatBalance)
            .Step("Td", "dew point", dew.Celsius, "°C", "237.3 x / (17.27 − x), x = ln(ea / 0.6108)", Sources.Fao56.At("eq. 14 turned round"))
            .Step("Te", "warmth that still water would come to", still.Celsius, "°C", "Td + 0.94 Rs / K", Sources.Edinger1974)
            .Step("K", "pull to it", pull, "W/(m² °C)", "4.5 + 0.05 Te + b f + 0.47 f, f = 9.2 + 0.46 u2², b = 0.35 + 0.015 Tm + 0.0012 Tm², Tm = (Te + Td) / 2", Sources.Edinger1974)
            .Step("τ", "time to come most of the way", response.TotalHours, "h", "4.186 × 10⁶ h / K", Sources.HeatBalance)
            .Step("g", "share of the day's swing", swing, string.Empty, "1 / √(1 + (2π τ / 24)²)", Sources.HeatBalance);
        return new Reckoned(
            [
                ("water_c", pond.Water.Celsius),
                ("water_f", pond.Water.Fahrenheit),
                ("over_air_c", pond.Water.Celsius - air),
                ("evaporation_mm", pond.Evaporation.MillimetersPerDay),
                ("over_reference", Datum.Of(ratio)),
                ("response_h", response.TotalHours),
                ("swing", swing),
            ],
            working)
        { Cautions = [.. Cautions(pond.Water.Celsius - air)] };
    });

    // FAO-56 eq. 14 turned round; hardly any vapor is a dew point far below what matters here.
    private static Temperature DewPoint(Pressure vapor)
    {
        var x = Math.Log(Math.Max(vapor.Kilopascals, 0.001) / 0.6108);
        return Temperature.FromCelsius(237.3 * x / (17.27 - x));
    }

    private static IEnumerable<string> Cautions(double over)
    {
        if (over is < -2 or > 6) yield return "That far from the air nobody has measured a flood: check the sun, the wind and the humidity.";
        yield return "Good to about 2 °C. A stick thermometer at ten in the morning tells more.";
    }
}
