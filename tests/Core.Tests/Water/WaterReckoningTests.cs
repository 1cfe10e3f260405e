using Watersown.Reckon;

namespace Watersown.Water;

/// <summary>Calculations about standing water as they are asked for by name.</summary>
public sealed class WaterReckoningTests
{
    private static readonly ImmutableArray<(string Key, Datum Value)> May =
    [
        ("date", "2026-05-10"), ("lat_deg", 39.4), ("elev_m", 20), ("tmax_c", 26.5), ("tmin_c", 10.5), ("dewpoint_c", 9), ("wind_mps", 2.5), ("wind_height_m", 2), ("solar_mj", 26.5),
    ];

    // Heat balance worked apart: 21.808 °C, 6.299 mm, 1.141 times the reference.
    [Fact]
    public void A_bare_flood_in_may()
    {
        var answer = Ask.For("pond-temperature", [.. May, ("depth_in", 4)]);
        Assert.Equal(21.808, answer.Number("water_c"), 0.002);
        Assert.Equal(71.254, answer.Number("water_f"), 0.004);
        Assert.Equal(3.308, answer.Number("over_air_c"), 0.002);
        Assert.Equal(6.299, answer.Number("evaporation_mm"), 0.002);
        Assert.Equal(1.141, answer.Number("over_reference"), 0.002);
    }

    // Twice as deep takes twice as long: τ = ρ c h / K. The swing by hand: 1 / √(1 + (2π τ / 24)²).
    [Fact]
    public void Deep_water_follows_the_night_less()
    {
        var (low, deep) = (Ask.For("pond-temperature", [.. May, ("depth_in", 4)]), Ask.For("pond-temperature", [.. May, ("depth_in", 8)]));
        Assert.Equal(low.Number("response_h") * 2, deep.Number("response_h"), 1e-4);
        Assert.Equal(1 / Math.Sqrt(1 + Math.Pow(2 * Math.PI * deep.Number("response_h") / 24, 2)), deep.Number("swing"), 1e-6);
        Assert.True(deep.Number("swing") < low.Number("swing"));
    }

    [Fact]
    public void What_cannot_be_true_of_a_day_is_refused_here_too() =>
        Ask.For("pond-temperature", [.. May.Where(m => m.Key != "dewpoint_c"), ("dewpoint_c", 27), ("depth_in", 4)]).Refuses((Weather.WeatherProblems.MoreVaporThanHeld, "dewpoint_c"));

    // Salt balance by hand: 0.6 (5/2)^(0.30/0.35) = 1.316 dS/m after (5 − 2) / 0.35 = 8.571 days.
    [Fact]
    public void A_pond_that_goes_down()
    {
        var answer = Salt(5, 0.30, 0.05, ("to_in", 2));
        Assert.Equal(1.316, answer.Number("salt_ds"), 0.001);
        Assert.Equal(8.571, answer.Number("days"), 0.001);
        Assert.Equal(new Datum.Flag(false), answer.Answer("over_threshold"));
        Salt(5, 0.30, 0.05, ("to_in", 6)).Refuses((ReckonProblems.TooLarge, "to_in"));
        Assert.Equal(Datum.None, Salt(5, 0, 0, ("to_in", 2)).Answer("days"));
    }

    // Salt balance by hand, 125 mm, 7.6 and 1.8 mm a day: 1.489 after 30 days, 2.066 after 60, 3.133 in the end.
    [Theory]
    [InlineData(30, 1.489, false)]
    [InlineData(60, 2.066, true)]
    public void A_pond_that_is_kept_level(double days, double salt, bool over)
    {
        var answer = Salt(125 / 25.4, 7.6 / 25.4, 1.8 / 25.4, ("inflow_ds", 0.6), ("days", days));
        Assert.Equal(salt, answer.Number("salt_ds"), 0.001);
        Assert.Equal(3.133, answer.Number("end_ds"), 0.001);
        Assert.Equal(new Datum.Flag(over), answer.Answer("over_threshold"));
        Assert.Equal(Datum.None, Salt(5, 0.3, 0, ("inflow_ds", 0.6), ("days", days)).Answer("end_ds"));
    }

    // Green and Ampt with the clay of Rawls et al. 1983, half full, by hand: 3.459 cm in a day, then 0.0828 cm/h. 0.5 × 0.385 × 8 in = 1.54 in.
    [Fact]
    public void A_clay_drinks_most_on_its_first_day()
    {
        var answer = Ask.For("infiltration", ("texture", "clay"), ("saturation_pct", 50), ("hours", 24), ("layer_in", 8));
        Assert.Equal(3.459 / 2.54, answer.Number("drunk_in"), 0.0005);
        Assert.Equal(0.0828 * 24 / 2.54, answer.Number("rate_in_day"), 0.001);
        Assert.Equal(1.54, answer.Number("layer_takes_in"), 1e-9);
        Assert.Equal(Datum.None, answer.Answer("stands_after_h"));
    }

    // Chow, Maidment and Mays 1988, Example 4.4.1, from memory: silt loam, 30 % full, 1 cm/h stands after 10.5 h.
    [Fact]
    public void Rain_stands_after_a_while()
    {
        var answer = Ask.For("infiltration", ("texture", "silt-loam"), ("saturation_pct", 30), ("hours", 1), ("rain_in_h", 1 / 2.54));
        Assert.Equal(10.5, answer.Number("stands_after_h"), 0.05);
        Assert.Equal(Datum.None, Ask.For("infiltration", ("texture", "sand"), ("saturation_pct", 30), ("hours", 1), ("rain_in_h", 1 / 2.54)).Answer("stands_after_h"));
    }

    // By hand: 3 × 6 × 0.25^1.5 = 2.25 cfs; 16.8 h at that rate, 27.8 h with the head falling.
    [Fact]
    public void A_levee_that_is_out()
    {
        var answer = Ask.For("levee-breach", ("check_ac", 25));
        Assert.Equal(2.25, answer.Number("cfs"), 1e-9);
        Assert.Equal(16.8, answer.Number("half_h"), 0.05);
        Assert.Equal(27.8, answer.Number("half_falling_h"), 0.05);
        Assert.Equal(2 * answer.Number("cfs"), Ask.For("levee-breach", ("check_ac", 25), ("width_ft", 12)).Number("cfs"), 1e-9);
    }

    private static Outcome<Reckoned> Salt(double depth, double air, double ground, params (string Key, Datum Value)[] more) =>
        Ask.For("pond-salt", [("start_ds", 0.6), ("depth_in", depth), ("et_in_day", air), ("perc_in_day", ground), .. more]);
}
