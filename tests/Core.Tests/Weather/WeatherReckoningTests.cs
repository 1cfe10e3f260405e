using Watersown.Reckon;

namespace Watersown.Weather;

/// <summary>The calculations about weather as they are asked for by name.</summary>
public sealed class WeatherReckoningTests
{
    // ASCE-EWRI 2005, Appendix C, as reproduced elsewhere: Greeley, 1 July 2000: 5.71 and 7.34 mm.
    [Fact]
    public void A_day_is_told_by_the_american_standard_too()
    {
        var answer = Ask.For("reference-et",
            ("date", "2000-07-01"), ("lat_deg", 40.41), ("elev_m", 1462.4), ("tmax_c", 32.4), ("tmin_c", 10.9), ("vapour_kpa", 1.27), ("wind_mps", 1.94), ("wind_height_m", 3), ("solar_mj", 22.4));
        Assert.Equal(5.71, answer.Number("asce_short_mm"), 0.03);
        Assert.Equal(7.34, answer.Number("asce_tall_mm"), 0.03);
    }

    // FAO-56, Example 19, read: N'Diaye, 1 October, 14 to 15 h: 0.63 mm; 2 to 3 h: 0.00 mm.
    [Fact]
    public void An_hour_by_day_and_by_night()
    {
        var afternoon = Hour(("middle_h", 14.5), ("temp_c", 38), ("rh_pct", 52), ("wind_mps", 3.3), ("solar_mj", 2.45));
        Assert.Equal(0.63, afternoon.Number("et0_mm"), 0.005);
        Assert.Equal(1.749, afternoon.Number("net_radiation_mj"), 0.0006);
        Assert.Equal(3.543, afternoon.Number("extraterrestrial_mj"), 0.0006);
        var night = Hour(("middle_h", 2.5), ("temp_c", 28), ("rh_pct", 90), ("wind_mps", 1.9), ("solar_mj", 0));
        Assert.Equal(0, night.Number("et0_mm"), 0.005);
        Assert.Contains(night.Value.Cautions, c => c.StartsWith("The sun is down", StringComparison.Ordinal));
        // By day the standard lets more through than FAO-56 (0.24 for 0.34 in the lower line), and tall more than short.
        Assert.True(afternoon.Number("asce_tall_mm") > afternoon.Number("asce_short_mm") && afternoon.Number("asce_short_mm") > afternoon.Number("et0_mm"));
    }

    [Fact]
    public void Sun_in_the_dark_or_too_much_of_it_is_doubted()
    {
        Assert.Contains(Hour(("middle_h", 2.5), ("temp_c", 28), ("rh_pct", 90), ("wind_mps", 1.9), ("solar_mj", 1)).Value.Cautions, c => c.StartsWith("Sun was given for an hour", StringComparison.Ordinal));
        Assert.Contains(Hour(("middle_h", 14.5), ("temp_c", 28), ("rh_pct", 50), ("wind_mps", 1.9), ("solar_mj", 3.5)).Value.Cautions, c => c.StartsWith("More sun than a clear sky", StringComparison.Ordinal));
    }

    // FAO-56, Example 20 and its closing note, read: Lyon, 15 July, 26.6 and 14.8 °C: 4.56 and 5.0 mm, 22.29 MJ.
    [Fact]
    public void High_and_low_are_enough_for_a_first_answer()
    {
        var answer = Thin();
        Assert.Equal(4.56, answer.Number("penman_mm"), 0.006);
        Assert.Equal(5.0, answer.Number("hargreaves_mm"), 0.05);
        Assert.Equal(22.29, answer.Number("solar_mj"), 0.006);
        Assert.Equal(4.2, Thin(("wind_2m_mps", 1)).Number("penman_mm"), 0.05);
        Assert.True(Thin(("place", "coast")).Number("solar_mj") > answer.Number("solar_mj"));
        Assert.True(Thin(("drier_c", 3)).Number("penman_mm") > answer.Number("penman_mm"));
        Thin(("tmin_c", 30)).Refuses((WeatherProblems.LowAboveHigh, "tmin_c"));
    }

    // Montazar et al. 2017: 1.00 in mid-season. By hand: 7.62 mm are 0.30 in; with 0.06 in of seepage 18.857 × 0.36 = 6.79 gpm/ac.
    [Fact]
    public void A_day_of_the_crop_and_the_flow_that_holds_it()
    {
        var answer = Crop("sacramento-valley", 90, ("seepage_in_day", 0.06));
        Assert.Equal((1.00, 0.30), (answer.Number("coefficient"), Math.Round(answer.Number("crop_in"), 6)));
        Assert.Equal(6.79, answer.Number("holding_gpm_ac"), 0.005);
    }

    // FAO-56, eq. 62 by hand: 1.20 + [0.04 (3 − 2) − 0.004 (30 − 45)] (1/3)^0.3 = 1.272.
    [Fact]
    public void Wind_and_dry_air_raise_the_general_table_from_the_canopy_on()
    {
        Assert.Equal(1.272, Crop("general", 90, ("wind_2m_mps", 3), ("rh_min_pct", 30)).Number("coefficient"), 0.0005);
        Assert.Equal(1.05, Crop("general", 10, ("wind_2m_mps", 3), ("rh_min_pct", 30)).Number("coefficient"));
        Crop("general", 90, ("wind_2m_mps", 3)).Refuses((AlternativeProblems.HalfGiven, "rh_min_pct"));
        Assert.Contains(Crop("sacramento-valley", 90, ("wind_2m_mps", 3)).Value.Cautions, c => c.Contains("were not used", StringComparison.Ordinal));
        Assert.Contains(Crop("sacramento-valley", 200).Value.Cautions, c => c.StartsWith("That day lies after", StringComparison.Ordinal));
    }

    // FAO-56, Table 12: open water under 2 m deep 1.05; 1.05 × 7.62 mm = 8.001 mm.
    [Theory]
    [InlineData("general")]
    [InlineData("sacramento-valley")]
    public void A_flood_that_waits_for_seed_is_open_water(string curve)
    {
        var answer = Crop(curve, -4);
        Assert.Equal((1.05, 8.001), (answer.Number("coefficient"), Math.Round(answer.Number("crop_mm"), 6)));
        Assert.Contains(Crop("general", -4, ("wind_2m_mps", 3), ("rh_min_pct", 30)).Value.Cautions, c => c.StartsWith("Open water", StringComparison.Ordinal));
    }

    private static Outcome<Reckoned> Hour(params (string Key, Datum Value)[] more) => Ask.For("reference-et-hour",
        [("date", "2026-10-01"), ("lat_deg", 16 + (13.0 / 60)), ("lon_deg", -16.25), ("utc_offset_h", -1), ("elev_m", 8), ("wind_height_m", 2), .. more]);

    private static Outcome<Reckoned> Thin(params (string Key, Datum Value)[] more)
    {
        ImmutableArray<(string Key, Datum Value)> usual = [("date", "2026-07-15"), ("lat_deg", 45 + (43.0 / 60)), ("elev_m", 200), ("tmax_c", 26.6), ("tmin_c", 14.8)];
        return Ask.For("reference-et-temps", [.. usual.Where(u => more.All(m => m.Key != u.Key)), .. more]);
    }

    private static Outcome<Reckoned> Crop(string curve, double day, params (string Key, Datum Value)[] more) => Ask.For("crop-water", [("et0_mm", 7.62), ("day", day), ("curve", curve), .. more]);
}
