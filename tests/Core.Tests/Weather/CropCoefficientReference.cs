namespace Watersown.Weather;

public sealed class CropCoefficientReference
{
    // FAO-56, Example 27, read: 1.20 from the table, 2 m tall; 1.3 m/s and 75 % give 1.07, 4.6 m/s and 44 % give 1.30.
    [Theory]
    [InlineData(1.3, 75, 1.07)]
    [InlineData(4.6, 44, 1.30)]
    public void Wind_and_dry_air_raise_it(double wind, double humidity, double coefficient) =>
        Assert.Equal(coefficient, CropCoefficient.InClimate(1.20, Speed.FromMetersPerSecond(wind), Fraction.FromPercent(humidity), Length.FromMeters(2)), 0.005);

    // FAO-56, Tables 11 and 12: rice 1.05, 1.20, 0.90 to 0.60; 30, 30, 60, 30 days.
    [Theory]
    [InlineData(0, 1.05)]
    [InlineData(30, 1.05)]
    [InlineData(45, 1.125)]
    [InlineData(60, 1.20)]
    [InlineData(120, 1.20)]
    [InlineData(135, 0.975)]
    [InlineData(150, 0.75)]
    [InlineData(200, 0.75)]
    public void It_runs_straight_between_the_stages(double day, double coefficient) => Assert.Equal(coefficient, CropCoefficient.General.On(day), 1e-12);

    // Montazar et al. 2017: 145 days; 1.10, 1.00, 0.80.
    [Fact]
    public void The_measured_valley_uses_less_under_the_canopy()
    {
        Assert.Equal(145, CropCoefficient.SacramentoValley.Days);
        Assert.Equal([1.10, 1.00, 0.80], [CropCoefficient.SacramentoValley.On(0), CropCoefficient.SacramentoValley.On(90), CropCoefficient.SacramentoValley.On(145)]);
    }
}
