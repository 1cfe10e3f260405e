using CsCheck;
using Watersown.Reckon;

namespace Watersown.Weather;

public sealed class ReferenceReckoningTests
{
    private static readonly ImmutableArray<(string Key, Datum Value)> Day =
    [
        ("date", "2026-05-10"), ("lat_deg", 39.4), ("elev_m", 20), ("tmax_c", 26.5), ("tmin_c", 10.5), ("wind_mps", 2.5), ("wind_height_m", 2),
    ];

    // Derived: FAO-56 eq. 6 worked apart for 10 May at 39.4° N, 20 m, dew point 9 °C, 26.5 MJ/m².
    [Fact]
    public void A_may_day_in_a_warm_valley_takes_five_and_a_half_millimeters() =>
        Assert.Equal(5.519, With(("dewpoint_c", 9), ("solar_mj", 26.5)).Number("et0_mm"), 0.002);

    // The vapor of 9 °C by FAO-56 eq. 11, worked by hand: 0.6108 exp(155.43 / 246.3) = 1.1481.
    [Fact]
    public void Dew_point_and_vapor_say_the_same() =>
        Assert.Equal(With(("dewpoint_c", 9), ("solar_mj", 26.5)).Number("et0_mm"), With(("vapour_kpa", 1.14808), ("solar_mj", 26.5)).Number("et0_mm"), 0.001);

    [Fact]
    public void Every_choice_left_open_is_told_with_all_else() =>
        Ask.For("reference-et", ("date", "May"), ("lat_deg", 91), ("rh_max_pct", 80), ("wind_mps", 2), ("wind_height_m", 0)).Refuses(
            (ReckonProblems.WrongSort, "date"),
            (ReckonProblems.TooLarge, "lat_deg"),
            (ReckonProblems.TooSmall, "wind_height_m"),
            (ReckonProblems.MissingKey, "elev_m"),
            (ReckonProblems.MissingKey, "tmax_c"),
            (ReckonProblems.MissingKey, "tmin_c"),
            (AlternativeProblems.HalfGiven, "rh_min_pct"),
            (AlternativeProblems.NoneGiven, "solar_mj sunshine_h"));

    [Fact]
    public void What_cannot_be_true_together_is_told_all_at_once() =>
        Ask.For("reference-et",
            ("date", "2026-05-10"), ("lat_deg", 39.4), ("elev_m", 20), ("tmax_c", 10), ("tmin_c", 20), ("rh_max_pct", 30), ("rh_min_pct", 60),
            ("wind_mps", 2), ("wind_height_m", 2), ("sunshine_h", 20)).Refuses(
                (WeatherProblems.LowAboveHigh, "tmin_c"),
                (WeatherProblems.LeastHumidityAboveMost, "rh_min_pct"),
                (WeatherProblems.SunshineBeyondDay, "sunshine_h"));

    [Fact]
    public void More_vapor_than_air_can_hold_is_refused()
    {
        With(("dewpoint_c", 27), ("solar_mj", 26.5)).Refuses((WeatherProblems.MoreVaporThanHeld, "dewpoint_c"));
        With(("vapour_kpa", 4), ("solar_mj", 26.5)).Refuses((WeatherProblems.MoreVaporThanHeld, "vapour_kpa"));
    }

    [Fact]
    public void More_energy_than_reaches_the_air_is_refused() =>
        With(("dewpoint_c", 9), ("solar_mj", 45)).Refuses((WeatherProblems.MoreThanReachesTheAir, "solar_mj"));

    [Fact]
    public void Two_ways_of_the_same_are_refused() =>
        With(("dewpoint_c", 9), ("vapour_kpa", 1.1), ("solar_mj", 20), ("sunshine_h", 9)).Refuses(
            (AlternativeProblems.SeveralGiven, "vapour_kpa dewpoint_c"),
            (AlternativeProblems.SeveralGiven, "solar_mj sunshine_h"));

    [Theory]
    [InlineData("solar_mj", 35, "More sun than a clear sky gives")]
    [InlineData("sunshine_h", 14.1, "More sunshine than the plain day length")]
    [InlineData("sunshine_h", 9, "estimated from sunshine")]
    public void What_is_doubtful_is_said(string key, double value, string caution) =>
        Assert.Contains(With(("dewpoint_c", 9), (key, value)).Value.Cautions, c => c.Contains(caution, StringComparison.Ordinal));

    [Fact]
    public void A_calm_day_is_said_to_run_low() =>
        Assert.Contains(
            Ask.For("reference-et", [.. Day.Where(d => d.Key != "wind_mps"), ("wind_mps", 0.2), ("dewpoint_c", 9), ("solar_mj", 20)]).Value.Cautions,
            c => c.StartsWith("Under 0.5 m/s", StringComparison.Ordinal));

    [Fact]
    public void Polar_night_gives_an_answer_and_says_what_it_assumed()
    {
        var answer = Ask.For("reference-et",
            ("date", "2026-12-21"), ("lat_deg", 75), ("elev_m", 20), ("tmax_c", -10), ("tmin_c", -20), ("dewpoint_c", -21), ("wind_mps", 2), ("wind_height_m", 2), ("solar_mj", 0));
        Assert.True(double.IsFinite(answer.Number("et0_mm")));
        Assert.Equal(0, answer.Number("extraterrestrial_mj"), 1e-9);
        Assert.Contains(answer.Value.Cautions, c => c.StartsWith("The sun does not rise", StringComparison.Ordinal));
    }

    [Fact]
    public void More_sun_takes_more_water() =>
        Gen.Select(Gen.Double[5, 30], Gen.Double[0.1, 2]).Sample((solar, more) =>
            With(("dewpoint_c", 9), ("solar_mj", solar + more)).Number("et0_mm") > With(("dewpoint_c", 9), ("solar_mj", solar)).Number("et0_mm"));

    private static Outcome<Reckoned> With(params (string Key, Datum Value)[] more) => Ask.For("reference-et", [.. Day, .. more]);
}
