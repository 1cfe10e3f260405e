namespace Watersown.Weather;

/// <summary>Thin air against the standard atmosphere's own table and worked days.</summary>
public sealed class AirDensityReference
{
    // US Standard Atmosphere, 1976, as printed on two reference pages: 5,000 ft 41.17 °F, 12.228 psia, 0.86167.
    // Other rows derived from its defining equations; 1,000, 5,000 and 10,000 ft agree with the printed table to rounding.
    [Theory]
    [InlineData(0, 59.00, 14.696, 1.00000)]
    [InlineData(1_000, 55.43, 14.173, 0.97106)]
    [InlineData(2_000, 51.87, 13.664, 0.94277)]
    [InlineData(3_000, 48.30, 13.171, 0.91512)]
    [InlineData(5_000, 41.17, 12.228, 0.86167)]
    [InlineData(8_000, 30.47, 10.916, 0.78602)]
    [InlineData(10_000, 23.34, 10.107, 0.73848)]
    public void The_standard_atmosphere_is_as_printed(double feet, double fahrenheit, double psia, double density)
    {
        var height = Length.FromFeet(feet);
        Assert.Equal(fahrenheit, StandardAtmosphere.TemperatureAt(height).Fahrenheit, 0.01);
        Assert.Equal(psia, StandardAtmosphere.PressureAt(height).PoundsPerSquareInch, 0.001);
        Assert.Equal(density, StandardAtmosphere.DensityRatioAt(height), 0.00001);
        Assert.Equal(feet, StandardAtmosphere.HeightOf(StandardAtmosphere.PressureAt(height)).Feet, 1e-6);
        Assert.Equal(feet, StandardAtmosphere.HeightOfDensity(StandardAtmosphere.DensityRatioAt(height)).Feet, 1e-6);
    }

    // Derived by hand: dry air, altimeter setting. Hot day at 100 ft; the same at 1010 hPa and 32 °C; a high strip.
    [Theory]
    [InlineData(100, 1013.25, 38, 2722)]
    [InlineData(100, 1010, 32, 2176)]
    [InlineData(5000, 1013.25, 30, 7801)]
    public void A_hot_strip_feels_high(double feet, double hectopascals, double celsius, double densityAltitude) =>
        Assert.Equal(densityAltitude, Ask.For("density-altitude", ("elev_ft", feet), ("pressure_hpa", hectopascals), ("temp_c", celsius)).Number("density_altitude_ft"), 5.0);

    // Derived with virtual temperature (formula from memory): dew point 15 °C adds 214 ft to the hot day.
    [Fact]
    public void Humid_air_is_thinner_still()
    {
        var answer = Ask.For("density-altitude", ("elev_ft", 100), ("pressure_hpa", 1013.25), ("temp_c", 38), ("dewpoint_c", 15));
        Assert.Equal(2936, answer.Number("density_altitude_ft"), 5.0);
        Assert.Equal(0.9169, answer.Number("density_ratio"), 0.0001);
    }

    // US National Weather Service form: 145,366.45 (1 - (P/1013.25)^0.190284) ft; read second-hand.
    [Theory]
    [InlineData(1010)]
    [InlineData(990)]
    [InlineData(1030)]
    public void Pressure_altitude_agrees_with_the_weather_service(double hectopascals) =>
        Assert.Equal(
            145_366.45 * (1 - Math.Pow(hectopascals / 1013.25, 0.190284)),
            AirDensity.PressureAltitude(Length.Zero, Pressure.FromHectopascals(hectopascals)).Feet,
            0.5);

    // Shortcut from memory: pressure altitude + 118.8 ft for each degree above standard; coarse, within 7 %.
    [Fact]
    public void The_pocket_shortcut_comes_near()
    {
        var standard = StandardAtmosphere.TemperatureAt(Length.FromFeet(100)).Celsius;
        var shortcut = 100 + (118.8 * (38 - standard));
        Assert.Equal(2856, shortcut, 5.0);
        Assert.InRange(shortcut / 2722, 1, 1.07);
    }
}
