namespace Watersown.Weather;

/// <summary>FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes, Smith; FAO, 1998): printed figures, read.</summary>
public sealed class HumidityReference
{
    // Example 3 (24.5, 15 °C), Example 4 (wet bulb 19.5 °C), Examples 5 and 6 (18, 25 °C), Example 17, Example 18, Example 19.
    [Theory]
    [InlineData(24.5, 3.075)]
    [InlineData(15, 1.705)]
    [InlineData(19.5, 2.267)]
    [InlineData(18, 2.064)]
    [InlineData(25, 3.168)]
    [InlineData(21.5, 2.564)]
    [InlineData(12.3, 1.431)]
    [InlineData(38, 6.625)]
    [InlineData(28, 3.780)]
    public void Saturation_agrees_to_the_last_printed_digit(double celsius, double kilopascals) =>
        Assert.Equal(kilopascals, Humidity.Saturation(Temperature.FromCelsius(celsius)).Kilopascals, 0.0006);

    // Example 17: 34.8 and 25.6 °C.
    [Theory]
    [InlineData(34.8, 5.56)]
    [InlineData(25.6, 3.28)]
    [InlineData(26.6, 3.48)]
    [InlineData(14.8, 1.68)]
    public void Saturation_agrees_with_two_digits(double celsius, double kilopascals) =>
        Assert.Equal(kilopascals, Humidity.Saturation(Temperature.FromCelsius(celsius)).Kilopascals, 0.0051);

    // Example 3: the mean of the day is 2.39, not the 2.30 of the mean temperature.
    [Theory]
    [InlineData(24.5, 15, 2.39)]
    [InlineData(34.8, 25.6, 4.42)]
    [InlineData(26.6, 14.8, 2.58)]
    public void The_days_saturation_is_the_mean_of_high_and_low(double high, double low, double kilopascals)
    {
        var mean = Humidity.MeanSaturation(Temperature.FromCelsius(high), Temperature.FromCelsius(low));
        Assert.Equal(kilopascals, mean.Kilopascals, 0.0051);
        Assert.True(mean > Humidity.Saturation(Temperature.FromCelsius((high + low) / 2)));
    }

    // Example 5: 25 and 18 °C, 54 and 82 %. Example 18: 21.5 and 12.3 °C, 63 and 84 %.
    [Theory]
    [InlineData(25, 18, 82, 54, 1.70, 0.0051)]
    [InlineData(21.5, 12.3, 84, 63, 1.409, 0.0006)]
    public void Vapor_follows_from_the_two_humidities(double high, double low, double most, double least, double kilopascals, double tolerance) =>
        Assert.Equal(kilopascals, Humidity.FromRelative(Temperature.FromCelsius(high), Temperature.FromCelsius(low), Fraction.FromPercent(most), Fraction.FromPercent(least)).Kilopascals, tolerance);

    // Eq. 14 turned around, derived: 2.85 kPa is a dew point of 23.24 °C.
    [Fact]
    public void A_dew_point_tells_the_vapor() =>
        Assert.Equal(2.85, Humidity.FromDewPoint(Temperature.FromCelsius(23.237215)).Kilopascals, 1e-6);

    // Example 17 (30.2 °C), Example 18 (16.9 °C), Example 19 (38 °C), Example 20 (20.7 °C).
    [Theory]
    [InlineData(30.2, 0.246)]
    [InlineData(16.9, 0.122)]
    [InlineData(38, 0.358)]
    [InlineData(20.7, 0.150)]
    public void The_slope_agrees(double celsius, double slope) =>
        Assert.Equal(slope, Humidity.Slope(Temperature.FromCelsius(celsius)), 0.0006);

    // Example 2 (1,800 m), Example 4 (1,200 m), Example 18 (100 m).
    [Theory]
    [InlineData(1800, 81.8)]
    [InlineData(1200, 87.9)]
    [InlineData(100, 100.1)]
    [InlineData(2, 101.3)]
    public void Air_presses_less_on_higher_ground(double meters, double kilopascals) =>
        Assert.Equal(kilopascals, ReferenceEvapotranspiration.AirPressure(Length.FromMeters(meters)).Kilopascals, 0.05);

    // Example 2 (1,800 m), Example 18 (100 m), Example 19 (8 m), Example 20 (200 m). Example 17 prints 0.0674 where eqs 7 and 8
    // give 0.06735.
    [Theory]
    [InlineData(1800, 0.054, 0.0005)]
    [InlineData(100, 0.0666, 0.00005)]
    [InlineData(8, 0.0673, 0.00006)]
    [InlineData(200, 0.066, 0.0005)]
    [InlineData(2, 0.0674, 0.0001)]
    public void The_psychrometric_constant_agrees(double meters, double gamma, double tolerance) =>
        Assert.Equal(gamma, ReferenceEvapotranspiration.Psychrometric(ReferenceEvapotranspiration.AirPressure(Length.FromMeters(meters))), tolerance);
}
