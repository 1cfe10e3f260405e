using Watersown.Reckon;

namespace Watersown.Weather;

/// <summary>What rice and its flood give to the air on a day of the season.</summary>
internal static class CropWaterReckoning
{
    private const string Measured = "sacramento-valley";

    /// <summary>Height of full-grown rice in the table.</summary>
    private const double UsualHeight = 1;

    public static Reckoning Reckoning => new(
        "crop-water",
        "How much water do rice and its flood give to the air on this day of the season?",
        [
            new("et0_mm", KeyKind.Number, "mm", "reference evapotranspiration of the day") { Least = 0, Most = 25 },
            new("day", KeyKind.Number, "days", "days since sowing; below zero for a flood that waits for seed") { Least = -60, Most = 400 },
            new("curve", KeyKind.Text, string.Empty, "whose coefficients: measured in that valley, or the general table") { Choices = [Measured, "general"] },
            new("wind_2m_mps", KeyKind.Number, "m/s", "mean wind of the stage at two meters, to bring the table to the climate") { Least = 0, Most = 60, Optional = true },
            new("rh_min_pct", KeyKind.Number, "%", "mean of the stage's lowest humidities") { Least = 0, Most = 100, Optional = true },
            new("seepage_in_day", KeyKind.Number, "in/day", "lost into the ground") { Least = 0, Most = 20, Optional = true },
        ],
        [
            new("coefficient", KeyKind.Number, string.Empty, "crop over reference"),
            new("crop_mm", KeyKind.Number, "mm", "given to the air on the day"),
            new("crop_in", KeyKind.Number, "in", "the same"),
            new("holding_gpm_ac", KeyKind.Number, "gpm/ac", "flow that holds an acre level without rain"),
        ],
        Sources.Fao56.At("eq. 58"),
        "et0_mm=6.8 day=60 curve=sacramento-valley seepage_in_day=0.06",
        Work)
    {
        Demands = given => given.Has("wind_2m_mps") == given.Has("rh_min_pct") || given.TextOrNone("curve") is not "general"
            ? []
            : [AlternativeProblems.HalfGiven.At(given.Has("wind_2m_mps") ? "rh_min_pct" : "wind_2m_mps", ("given", given.Has("wind_2m_mps") ? "wind_2m_mps" : "rh_min_pct"))],
        Limits = "The general table overstates use measured in a dry valley with cool nights by a fifth under the full canopy. The measured curve is already that of its climate and is not changed by wind and humidity.",
    };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var measured = given.Text("curve") == Measured;
        var curve = measured ? CropCoefficient.SacramentoValley : CropCoefficient.General;
        var day = given.Number("day");
        // A flood that waits for seed is open water, whosever curve comes after.
        var open = day < 0;
        var tabled = open ? CropCoefficient.OpenWater : curve.On(day);
        // The first stage is water and bare soil: wind and dry air change the table from the canopy on.
        var climate = !measured && given.Has("wind_2m_mps") && day > curve.InitialDays;
        var coefficient = climate
            ? CropCoefficient.InClimate(tabled, Speed.FromMetersPerSecond(given.Number("wind_2m_mps")), Fraction.FromPercent(given.Number("rh_min_pct")), Length.FromMeters(UsualHeight))
            : tabled;
        var reference = DepthRate.FromMillimetersPerDay(given.Number("et0_mm"));
        var crop = reference * coefficient;
        var seepage = DepthRate.FromInchesPerDay(given.NumberOrNone("seepage_in_day") ?? 0);
        var holding = Area.FromAcres(1) * (crop + seepage);
        var working = Working.Empty
            .Given("ETo", "reference evapotranspiration", given.Number("et0_mm"), "mm", "typed")
            .Given("d", "days since sowing", day, "days", "typed")
            .Step("Kt", "coefficient of the day", tabled, string.Empty, open ? "shallow open water, before there is a crop" : "straight lines between " + Points(curve), (open, measured) switch
            {
                (true, _) => Sources.Fao56.At("Table 12, open water"),
                (_, true) => Sources.Montazar2017,
                _ => Sources.Fao56.At("Tables 11 and 12"),
            });
        if (climate)
        {
            working = working
                .Given("u2", "wind of the stage", given.Number("wind_2m_mps"), "m/s", "typed")
                .Given("RHmin", "lowest humidity of the stage", given.Number("rh_min_pct"), "%", "typed");
        }

        working = working
            .Step("Kc", "in this climate", coefficient, string.Empty, climate ? "Kt + [0.04 (u2 − 2) − 0.004 (RHmin − 45)] (1 / 3)^0.3" : "Kt", Sources.Fao56.At("eqs 62 and 65"))
            .Step("ETc", "given to the air", crop.MillimetersPerDay, "mm", "Kc ETo", Sources.Fao56.At("eq. 58"))
            .Step("e", "the same", crop.InchesPerDay, "in", "ETc / 25.4", Sources.Definition)
            .Given("p", "lost into the ground", seepage.InchesPerDay, "in/day", given.Has("seepage_in_day") ? "typed" : "not given: none")
            .Step("G", "flow that holds an acre level", holding.GallonsPerMinute, "gpm", "18.857 (e + p)", Sources.WaterBalance);
        return Outcome<Reckoned>.Of(new Reckoned(
            [("coefficient", coefficient), ("crop_mm", crop.MillimetersPerDay), ("crop_in", crop.InchesPerDay), ("holding_gpm_ac", holding.GallonsPerMinute)], working)
        { Cautions = [.. Cautions(given, measured, day, curve)] });
    }

    private static string Points(CropCoefficient curve) =>
        Wording.Say.Number(curve.Initial, 2) + ", " + Wording.Say.Number(curve.Mid, 2) + ", " + Wording.Say.Number(curve.End, 2) + " over " + Wording.Say.Number(curve.InitialDays) + " + " + Wording.Say.Number(curve.RisingDays) + " + "
        + Wording.Say.Number(curve.MidDays) + " + " + Wording.Say.Number(curve.LateDays) + " days";

    private static IEnumerable<string> Cautions(ReckoningInput given, bool measured, double day, CropCoefficient curve)
    {
        if (day < 0 && !measured && given.Has("wind_2m_mps")) yield return "Open water is taken as it stands in the table: wind and humidity were not used.";
        if (measured && (given.Has("wind_2m_mps") || given.Has("rh_min_pct"))) yield return "The measured curve is not changed by wind and humidity: they were not used.";
        if (day > curve.Days) yield return "That day lies after the season of the curve: its last value is taken.";
        yield return "Calibrate on your own water: shut the inlets and read the fall of the surface over two days.";
    }
}
