namespace Watersown.Flight;

/// <summary>
/// The time budget worked by hand. Derived: each term follows from counting; the formula's source is cited from memory.
/// </summary>
public sealed class WorkRateReference
{
    private const double Speed120 = 53.6448;

    [Fact]
    public void The_base_case_takes_85_seconds_a_hectare()
    {
        var answer = Work();
        Assert.Equal(85.287, answer.Number("s_per_ha"), 0.001);
        Assert.Equal(42.210, answer.Number("ha_per_h"), 0.001);
        Assert.Equal(104.30, answer.Number("ac_per_h"), 0.01);
        Assert.Equal(28.000, answer.Number("loading_s_per_ha"), 0.001);
        Assert.Equal(26.098, answer.Number("ferry_s_per_ha"), 0.001);
        Assert.Equal(0, answer.Number("moving_s_per_ha"), 1e-12);
        Assert.Equal(20.833, answer.Number("turning_s_per_ha"), 0.001);
        Assert.Equal(10.356, answer.Number("sowing_s_per_ha"), 0.001);
    }

    [Fact]
    public void Moving_between_fields_adds_its_term()
    {
        var answer = Work(between: 2000);
        Assert.Equal(0.932, answer.Number("moving_s_per_ha"), 0.001);
        Assert.Equal(86.219, answer.Number("s_per_ha"), 0.001);
        Assert.Equal(41.754, answer.Number("ha_per_h"), 0.001);
    }

    [Theory]
    [InlineData("ferry_m", 500, 56.66)]
    [InlineData("ferry_m", 1000, 53.03)]
    [InlineData("ferry_m", 2000, 47.00)]
    [InlineData("ferry_m", 5000, 35.06)]
    [InlineData("ferry_m", 8000, 27.95)]
    [InlineData("ferry_m", 10_000, 24.63)]
    [InlineData("ferry_m", 20_000, 15.44)]
    [InlineData("pass_m", 200, 24.36)]
    [InlineData("pass_m", 400, 33.92)]
    [InlineData("pass_m", 1600, 48.08)]
    [InlineData("pass_m", 3200, 51.68)]
    [InlineData("turn_s", 20, 45.95)]
    [InlineData("turn_s", 45, 37.62)]
    [InlineData("turnaround_s", 60, 50.50)]
    [InlineData("turnaround_s", 90, 45.98)]
    [InlineData("turnaround_s", 180, 36.26)]
    [InlineData("turnaround_s", 300, 28.28)]
    [InlineData("load_kg", 450, 25.83)]
    [InlineData("load_kg", 1130, 48.47)]
    [InlineData("load_kg", 1500, 56.56)]
    [InlineData("load_kg", 2000, 64.83)]
    public void One_input_changed_from_the_base_case(string key, double value, double hectaresPerHour)
    {
        var given = Base();
        given[key] = value;
        Assert.Equal(hectaresPerHour, Run(given).Number("ha_per_h"), 0.01);
    }

    // Field 800 × 500 m in whole passes: 28 passes of 302.4 kg.
    [Theory]
    [InlineData(900, 14, 4083.4, 35.26)]
    [InlineData(910, 10, 3276.0, 43.96)]
    public void Ten_kilograms_across_a_whole_pass_change_the_day(double load, int loads, double seconds, double hectaresPerHour)
    {
        var given = Base();
        given["load_kg"] = load;
        var answer = Run(given);
        Assert.Equal(loads, answer.Number("whole_pass_loads"));
        Assert.Equal(hectaresPerHour, answer.Number("whole_pass_ha_per_h"), 0.01);
        Assert.Equal(seconds, 40 / answer.Number("whole_pass_ha_per_h") * 3600, 0.5);
    }

    [Fact]
    public void It_names_the_load_that_would_make_one_more_pass()
    {
        var answer = Work();
        Assert.Equal(907.2, answer.Number("next_load_kg"), 1e-6);
        Assert.Contains(answer.Value.Cautions, c => c.Contains("7.2 kg more", StringComparison.Ordinal));
    }

    // Strip guide of an aerial operator (read): 40 km in about 13 min is 184.6 km/h.
    [Fact]
    public void Forty_kilometers_in_13_minutes_is_185_kilometers_an_hour() =>
        Assert.Equal(13, (Length.FromKilometers(40) / Speed.FromKilometersPerHour(184.6)).TotalMinutes, 0.01);

    // Trade magazine, 2015 (read): turns of 20 to 45 s, 30 s a fair mean; share of sowing in sowing and turning derived.
    [Theory]
    [InlineData(200, 11.1)]
    [InlineData(400, 19.9)]
    [InlineData(800, 33.2)]
    [InlineData(1600, 49.9)]
    [InlineData(3200, 66.5)]
    public void Long_passes_spend_more_of_the_time_sowing(double pass, double percent)
    {
        var given = Base();
        given["pass_m"] = pass;
        var answer = Run(given);
        Assert.Equal(percent, 100 * answer.Number("sowing_s_per_ha") / (answer.Number("sowing_s_per_ha") + answer.Number("turning_s_per_ha")), 0.06);
    }

    private static Outcome<Reckon.Reckoned> Work(double between = 0)
    {
        var given = Base();
        given["between_fields_m"] = between;
        return Run(given);
    }

    private static Outcome<Reckon.Reckoned> Run(Dictionary<string, double> given) => Ask.For("work-rate", [.. given.Select(g => (g.Key, (Datum)g.Value))]);

    private static Dictionary<string, double> Base() => new(StringComparer.Ordinal)
    {
        ["rate_wet_kg_ha"] = 210,
        ["load_kg"] = 900,
        ["turnaround_s"] = 120,
        ["ferry_m"] = 3000,
        ["ferry_mps"] = Speed120,
        ["between_fields_m"] = 0,
        ["field_ha"] = 40,
        ["turn_s"] = 30,
        ["swath_m"] = 18,
        ["pass_m"] = 800,
        ["sowing_mps"] = Speed120,
    };
}
