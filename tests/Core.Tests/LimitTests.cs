using System.Reflection;
using Watersown.Flight;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Seed;
using Watersown.Weather;

namespace Watersown;

public sealed class LimitTests
{
    // Common practice of the trade, no source: X cannot be, W unlikely, - fine; one row each side of a limit.
    [Theory]
    [InlineData("gross_ac", 0, "X")]
    [InlineData("gross_ac", 4.9, "W")]
    [InlineData("gross_ac", 5, "-")]
    [InlineData("gross_ac", 400, "-")]
    [InlineData("gross_ac", 401, "W")]
    [InlineData("gross_ac", 2001, "X")]
    [InlineData("net_ac", 0, "X")]
    [InlineData("ferry_mi", 15, "-")]
    [InlineData("ferry_mi", 15.1, "W")]
    [InlineData("drop_ft", 0.6, "-")]
    [InlineData("drop_ft", 0.61, "W")]
    [InlineData("high_spot_in", 3, "-")]
    [InlineData("high_spot_in", 3.1, "W")]
    [InlineData("width_ft", 1.4, "W")]
    [InlineData("width_ft", 8.1, "W")]
    [InlineData("boards_in", -0.1, "X")]
    [InlineData("boards_in", 30, "-")]
    [InlineData("boards_in", 30.1, "X")]
    [InlineData("fill_ft", 0, "X")]
    [InlineData("fill_ft", 0.29, "W")]
    [InlineData("fill_ft", 0.45, "-")]
    [InlineData("fill_ft", 1.21, "W")]
    [InlineData("fill_ft", 3.01, "X")]
    [InlineData("seep_in_day", -0.01, "X")]
    [InlineData("seep_in_day", 0.51, "W")]
    [InlineData("seep_in_day", 3.01, "X")]
    [InlineData("cap_cfs", 0, "X")]
    [InlineData("cap_cfs", 60, "-")]
    [InlineData("cap_cfs", 60.1, "W")]
    [InlineData("running_cfs", -1, "X")]
    [InlineData("season_year", 1989, "X")]
    [InlineData("depth_in", -0.1, "X")]
    [InlineData("depth_in", 14.1, "W")]
    [InlineData("depth_in", 36.1, "X")]
    [InlineData("rate_ac_h", 41, "W")]
    [InlineData("own_delay_usd_ac_day", 31, "W")]
    [InlineData("grain_usd_cwt", -1, "X")]
    [InlineData("grain_usd_cwt", 7.9, "W")]
    [InlineData("grain_usd_cwt", 51, "W")]
    [InlineData("germination_pct", 0, "X")]
    [InlineData("germination_pct", 79, "W")]
    [InlineData("germination_pct", 101, "X")]
    [InlineData("seeds_per_lb", 12_999, "W")]
    [InlineData("seeds_per_lb", 22_001, "W")]
    [InlineData("dry_lb", 0, "X")]
    [InlineData("dry_lb", 120_001, "W")]
    [InlineData("haul_limit_wet_lb", 27_001, "W")]
    [InlineData("wet_factor", 1.09, "W")]
    [InlineData("wet_factor", 1.41, "W")]
    [InlineData("wet_factor", 0.99, "X")]
    [InlineData("rate_dry_lb_ac", 119, "W")]
    [InlineData("rate_dry_lb_ac", 201, "W")]
    [InlineData("hopper_gal", 0, "X")]
    [InlineData("hopper_gal", 1501, "X")]
    [InlineData("working_load_wet_lb", 5001, "W")]
    [InlineData("swath_ft", 29, "W")]
    [InlineData("swath_ft", 91, "W")]
    [InlineData("working_mph", 79, "W")]
    [InlineData("working_mph", 171, "W")]
    [InlineData("sustained_mph", -1, "X")]
    [InlineData("sustained_mph", 46, "W")]
    [InlineData("sustained_mph", 121, "X")]
    [InlineData("high_f", -21, "X")]
    [InlineData("high_f", 131, "X")]
    public void A_figure_is_refused_only_where_it_cannot_be_and_warned_of_where_it_hardly_can(string key, double value, string weight)
    {
        var judged = All.First(l => l.Key == key).Judge(value, "here");
        Assert.Equal(weight, judged?.Kind.Weight switch { ProblemWeight.Refuse => "X", ProblemWeight.Warn => "W", _ => "-" });
    }

    [Theory]
    [InlineData(0, "LIMIT-001")]
    [InlineData(11, "LIMIT-003")]
    [InlineData(1, "LIMIT-004")]
    [InlineData(9, "LIMIT-005")]
    public void Each_way_out_of_a_limit_has_its_own_words(double value, string code) =>
        Assert.Equal(code, new Limit("depth_in", "in") { Above = 0, Most = 10, UsualLeast = 2, UsualMost = 8 }.Judge(value, "here")!.Kind.Code);

    [Fact]
    public void A_least_that_is_itself_allowed_has_its_own_words() =>
        Assert.Equal("LIMIT-002", new Limit("depth_in", "in") { Least = 0 }.Judge(-0.5, "here")!.Kind.Code);

    [Fact]
    public void What_is_usual_lies_inside_what_can_be_for_every_limit()
    {
        Assert.True(All.Length > 60);
        Assert.All(All, l =>
        {
            var least = l.Above ?? l.Least ?? double.NegativeInfinity;
            Assert.True(l.UsualLeast is null || l.UsualLeast >= least, l.Key);
            Assert.True(l.UsualMost is null || l.UsualMost <= (l.Most ?? double.PositiveInfinity), l.Key);
            Assert.True((l.UsualLeast ?? least) < (l.UsualMost ?? l.Most ?? double.PositiveInfinity), l.Key);
        });
    }

    private static Limit[] All { get; } =
        [.. new[] { typeof(LandLimits), typeof(SeedLimits), typeof(FlightLimits), typeof(WeatherLimits), typeof(ScheduleLimits) }
            .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Static))
            .Where(p => p.PropertyType == typeof(Limit))
            .Select(p => (Limit)p.GetValue(null)!)];
}
