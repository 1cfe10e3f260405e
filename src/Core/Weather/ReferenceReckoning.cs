using Watersown.Reckon;
using static Watersown.Wording.Say;

namespace Watersown.Weather;

/// <summary>What the weather of a day takes from a wide field of short grass.</summary>
internal static class ReferenceReckoning
{
    /// <summary>Above clear sky by more than this a sensor is suspect.</summary>
    private const double BeyondClearSky = 1.05;

    private const double CalmMetersPerSecond = 0.5;

    public static Reckoning Reckoning => new(
        "reference-et",
        "How much water did the air take today from a wide field of short grass?",
        DayReading.Keys,
        [
            new("et0_mm", KeyKind.Number, "mm", "reference evapotranspiration of the day"),
            new("et0_in", KeyKind.Number, "in", "the same"),
            new("net_radiation_mj", KeyKind.Number, "MJ/m²", "energy that grass keeps"),
            new("extraterrestrial_mj", KeyKind.Number, "MJ/m²", "energy at the top of the air"),
            new("asce_short_mm", KeyKind.Number, "mm", "the same by the American standard for short grass"),
            new("asce_tall_mm", KeyKind.Number, "mm", "by that standard for tall alfalfa"),
        ],
        Sources.Fao56.At("eq. 6"),
        "date=2026-05-10 lat_deg=39.4 elev_m=20 tmax_c=26.5 tmin_c=10.5 dewpoint_c=9 wind_mps=2.5 wind_height_m=2 solar_mj=26.5",
        Work)
    {
        ExactlyOneOf = DayReading.OneOf,
        Limits = "A whole day; a station over short green grass. Open water and young rice take about 1.05 to 1.10 times as much.",
    };

    private static Outcome<Reckoned> Work(ReckoningInput given) => DayReading.Of(given).Map(told =>
    {
        var (day, water) = (told.Day, ReferenceEvapotranspiration.Of(told.Day));
        DepthRate grass = StandardizedEvapotranspiration.OfDay(day, ReferenceSurface.Short), tall = StandardizedEvapotranspiration.OfDay(day, ReferenceSurface.Tall);
        return new Reckoned(
            [
                ("et0_mm", water.Rate.MillimetersPerDay),
                ("et0_in", water.Rate.InchesPerDay),
                ("net_radiation_mj", water.NetRadiation),
                ("extraterrestrial_mj", water.Extraterrestrial),
                ("asce_short_mm", grass.MillimetersPerDay),
                ("asce_tall_mm", tall.MillimetersPerDay),
            ],
            ReferenceWorking.Show(given, day, water, told.Daylight)
                .Step("Rn'", "energy left by the American standard", StandardizedEvapotranspiration.NetRadiation(day), "MJ/m²", "as above with 4.901 × 10⁻⁹ and Rs/Rso at least 0.3", Sources.AsceEwri2005.At("eqs 15 to 18"))
                .Step("ETos", "short grass by that standard", grass.MillimetersPerDay, "mm", "as ETo with Rn'", Sources.AsceEwri2005.At("eq. 1"))
                .Step("ETrs", "tall alfalfa by that standard", tall.MillimetersPerDay, "mm", "the same with 1600 for 900 and 0.38 for 0.34", Sources.AsceEwri2005.At("eq. 1")))
        { Cautions = [.. Cautions(given, told, water)] };
    });

    private static IEnumerable<string> Cautions(ReckoningInput given, ToldDay told, ReferenceWater water)
    {
        if (told.Day.Solar > water.ClearSky * BeyondClearSky)
            yield return "More sun than a clear sky gives, " + Number(water.ClearSky, 1) + " MJ/m²: check the sensor. The sky is taken as clear.";
        if (given.NumberOrNone("sunshine_h") > told.Daylight) yield return "More sunshine than the plain day length of " + Number(told.Daylight, 1) + " h: taken as sun all day.";
        if (given.Has("sunshine_h")) yield return "Solar energy was estimated from sunshine: use sums over several days rather than this day alone.";
        if (water.Wind.MetersPerSecond < CalmMetersPerSecond) yield return "Under 0.5 m/s at two meters the form runs low: FAO-56 advises to reckon with no less.";
        if (water.Extraterrestrial <= 0) yield return "The sun does not rise on that day: the sky is taken as clear.";
        yield return "This is grass. Multiply by the crop's own coefficient; for a bare flood by about 1.05 to 1.10.";
    }
}
