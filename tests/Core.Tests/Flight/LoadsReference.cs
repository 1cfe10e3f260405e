namespace Watersown.Flight;

/// <summary>Loads against the trade's own arithmetic: common practice, no source, unless marked.</summary>
public sealed class LoadsReference
{
    // 118 ac × 150 lb = 17,700 lb dry, × 1.25 = 22,125 lb soaked, ÷ 2,800 = 7.90: 8 loads.
    [Fact]
    public void Two_gates_goes_in_eight_equal_loads()
    {
        var answer = Ask.For("loads", ("net_ac", 118), ("rate_dry_lb_ac", 150), ("wet_factor", 1.25), ("load_limit_wet_lb", 2800));
        Assert.Equal(17_700, answer.Number("dry_lb"), 1e-6);
        Assert.Equal(22_125, answer.Number("wet_lb"), 1e-6);
        Assert.Equal(7.90, answer.Number("exact_loads"), 0.005);
        Assert.Equal(8, answer.Number("loads"));
        Assert.Equal(2765.6, answer.Number("wet_lb_per_load"), 0.05);
        Assert.Equal(2212.5, answer.Number("dry_lb_per_load"), 0.05);
        Assert.Equal(0.90, answer.Number("last_load_fraction"), 0.005);
        Assert.Equal(22_125.0 / 7, answer.Number("wet_lb_with_one_fewer"), 0.001);
    }

    // 150 acres at 165 lb with a hopper of about 1,650 lb is 15 loads when all is counted on one weight basis.
    [Fact]
    public void One_hundred_fifty_acres_at_165_pounds_are_fifteen_loads_of_1650_on_one_weight_basis()
    {
        var answer = Ask.For("loads", ("net_ac", 150), ("rate_dry_lb_ac", 165), ("wet_factor", 1), ("load_limit_wet_lb", 1650));
        Assert.Equal(15, answer.Number("exact_loads"), 1e-9);
        Assert.Equal(15, answer.Number("loads"));
        Assert.Equal(1, answer.Number("last_load_fraction"), 1e-9);
        Assert.Equal(10, 150 / answer.Number("loads"), 1e-9);
        Assert.Contains(answer.Value.Cautions, c => c.Contains("flown dry", StringComparison.Ordinal));
    }

    // The same seed soaked at 1.25 weighs 30,937.5 lb: 18.75 hoppers of 1,650 lb soaked, so 19 loads.
    [Fact]
    public void The_same_field_takes_nineteen_loads_when_the_1650_pounds_are_soaked()
    {
        var answer = Ask.For("loads", ("net_ac", 150), ("rate_dry_lb_ac", 165), ("wet_factor", 1.25), ("load_limit_wet_lb", 1650));
        Assert.Equal(18.75, answer.Number("exact_loads"), 1e-9);
        Assert.Equal(19, answer.Number("loads"));
        Assert.Equal(0.75, answer.Number("last_load_fraction"), 1e-9);
    }

    // Worked on paper for other fields: exact and whole, at 2,800 lb soaked and 1.25.
    [Theory]
    [InlineData(142, 150, 9.51, 10)]
    [InlineData(96, 155, 6.64, 7)]
    [InlineData(61, 155, 4.22, 5)]
    [InlineData(178, 145, 11.52, 12)]
    [InlineData(97, 150, 6.50, 7)]
    [InlineData(38, 180, 3.05, 4)]
    [InlineData(46, 165, 3.39, 4)]
    public void Fields_of_every_size(double acres, double rate, double exact, int loads)
    {
        var answer = Ask.For("loads", ("net_ac", acres), ("rate_dry_lb_ac", rate), ("wet_factor", 1.25), ("load_limit_wet_lb", 2800));
        Assert.Equal(exact, answer.Number("exact_loads"), 0.0055);
        Assert.Equal(loads, answer.Number("loads"));
    }

    // 160 ac at 200 lb as loaded with 2,000 lb: 16 loads (derived); about 10 acres a load (California Rice Research Board, read).
    [Fact]
    public void About_ten_acres_a_load()
    {
        var answer = Ask.For("loads", ("net_ac", 160), ("rate_dry_lb_ac", 160), ("wet_factor", 1.25), ("load_limit_wet_lb", 2000));
        Assert.Equal(16, answer.Number("loads"));
        Assert.Equal(10, 160 / answer.Number("loads"), 1e-9);
    }

    // 137 ac × 150 lb: 9.17 loads. Nine would be 2,854 lb soaked each; the last of ten only 17 % of a load.
    [Fact]
    public void A_short_last_load_is_told_with_what_one_fewer_would_weigh()
    {
        var answer = Ask.For("loads", ("net_ac", 137), ("rate_dry_lb_ac", 150), ("wet_factor", 1.25), ("load_limit_wet_lb", 2800));
        Assert.Equal(2569, answer.Number("wet_lb_per_load"), 0.5);
        Assert.Equal(2854, answer.Number("wet_lb_with_one_fewer"), 0.5);
        Assert.Contains(answer.Value.Cautions, c => c.Contains("17 % of a load", StringComparison.Ordinal) && c.Contains("2,854 lb soaked", StringComparison.Ordinal));
    }
}
