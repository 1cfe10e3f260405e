namespace Watersown.Water;

public sealed class InfiltrationReference
{
    // Chow, Maidment and Mays 1988, Example 4.3.1, from memory: silt loam, 30 % saturated, one hour: 3.17 cm, 1.81 cm/h.
    [Fact]
    public void Silt_loam_drinks_as_printed()
    {
        var soil = Infiltration.Textures.Single(t => t.Texture == "silt loam");
        var deficit = Infiltration.SuctionDeficit(soil, Fraction.FromShare(0.30));
        var drunk = Infiltration.Drunk(soil.Conductivity, deficit, TimeSpan.FromHours(1));
        Assert.Equal(56.8, deficit.Millimeters, 0.1);
        Assert.Equal(31.7, drunk.Millimeters, 0.06);
        Assert.Equal(18.1, Infiltration.Rate(soil.Conductivity, deficit, drunk).MillimetersPerDay / 24, 0.06);
    }

    // The same book, Example 4.4.1, from memory: rain of 1 and 5 cm/h stands after 10.5 and 0.17 h.
    [Theory]
    [InlineData(1, 10.5, 0.05)]
    [InlineData(5, 0.17, 0.005)]
    public void Rain_stands_after_a_while(double centimetersPerHour, double hours, double within) =>
        Assert.Equal(hours, Infiltration.TimeToPond(PerHour(0.65), WaterDepth.FromMillimeters(56.74536), PerHour(centimetersPerHour))!.Value.TotalHours, within);

    // Rawls et al. 1983, clay, half saturated: 3.459 cm after a day, then 0.0828 cm/h (by hand from the law).
    [Fact]
    public void A_dry_clay_drinks_most_on_its_first_day()
    {
        var clay = Infiltration.Textures.Single(t => t.Texture == "clay");
        var deficit = Infiltration.SuctionDeficit(clay, Fraction.FromShare(0.5));
        var drunk = Infiltration.Drunk(clay.Conductivity, deficit, TimeSpan.FromDays(1));
        Assert.Equal(34.59, drunk.Millimeters, 0.01);
        Assert.Equal(0.828, Infiltration.Rate(clay.Conductivity, deficit, drunk).MillimetersPerDay / 24, 0.001);
    }

    // A student's worked sheet, read, with the silty clay of Rawls et al. 1983 at Se 0.45: 0.264 and 0.375 cm after 0.1 and 0.2 h, then 1.337 and 0.955 cm/h.
    [Theory]
    [InlineData(0.1, 0.264, 1.337)]
    [InlineData(0.2, 0.375, 0.955)]
    public void Silty_clay_drinks_as_a_worked_sheet_says(double hours, double centimeters, double perHour)
    {
        var soil = Infiltration.Textures.Single(t => t.Texture == "silty clay");
        var deficit = Infiltration.SuctionDeficit(soil, Fraction.FromShare(0.45));
        var drunk = Infiltration.Drunk(soil.Conductivity, deficit, TimeSpan.FromHours(hours));
        Assert.Equal(centimeters, drunk.Millimeters / 10, 0.0016);
        Assert.Equal(perHour, Infiltration.Rate(soil.Conductivity, deficit, drunk).MillimetersPerDay / 240, 0.0016);
    }

    [Fact]
    public void What_was_drunk_solves_the_law_at_any_time()
    {
        var deficit = WaterDepth.FromMillimeters(60);
        foreach (var hours in new[] { 0.001, 0.1, 1, 24, 2400 })
        {
            var f = Infiltration.Drunk(PerHour(0.03), deficit, TimeSpan.FromHours(hours)).Millimeters;
            Assert.Equal(0.3 * hours, f - (60 * Math.Log(1 + (f / 60))), 1e-7 * (1 + f));
        }
    }

    // (0.475 − 0.30) × 8 in = 1.4 in.
    [Fact]
    public void A_worked_layer_takes_up_what_it_lacks() =>
        Assert.Equal(1.4, Infiltration.Deficit(Fraction.FromShare(0.475), Fraction.FromShare(0.30), WaterDepth.FromInches(8)).Inches, 1e-9);

    private static DepthRate PerHour(double centimeters) => DepthRate.FromMillimetersPerDay(centimeters * 240);
}
