namespace Watersown.Weather;

public sealed class HourlyEvapotranspirationReference
{
    // FAO-56, Example 19, N'Diaye, 16°13′ N 16°15′ W, 8 m, 1 October, read: 14 to 15 h, 38 °C, 52 %, 3.3 m/s, 2.450 MJ.
    [Fact]
    public void An_afternoon_hour_comes_out_as_printed()
    {
        var hour = Hour(14.5, 38, 0.52, 3.3, 2.45);
        var water = HourlyEvapotranspiration.Of(hour);
        Assert.Equal(0.682, HourlyEvapotranspiration.SunAngle(hour), 0.0005);
        Assert.Equal(3.543, water.Extraterrestrial, 0.0006);
        Assert.Equal(2.658, water.ClearSky, 0.0006);
        Assert.Equal(0.137, water.NetLongwave, 0.0006);
        Assert.Equal(1.749, water.NetRadiation, 0.0006);
        Assert.Equal(0.175, water.SoilHeat, 0.0006);
        Assert.Equal(0.63, water.Rate.MillimetersPerDay / 24, 0.005);
    }

    // The same, 2 to 3 h: 28 °C, 90 %, 1.9 m/s, no sun, clearness taken as 0.8.
    [Fact]
    public void A_night_hour_comes_out_as_printed()
    {
        var water = HourlyEvapotranspiration.Of(Hour(2.5, 28, 0.90, 1.9, 0));
        Assert.Equal(0, water.Extraterrestrial);
        Assert.Equal(0.100, water.NetLongwave, 0.0006);
        Assert.Equal(-0.050, water.SoilHeat, 0.0006);
        Assert.Equal(0.00, water.Rate.MillimetersPerDay / 24, 0.005);
    }

    // The hours of a day make the day: eq. 28 summed is eq. 21.
    [Theory]
    [InlineData(39.4, 130)]
    [InlineData(-20, 246)]
    [InlineData(60, 172)]
    public void Hours_of_sun_add_up_to_the_day(double latitude, int dayOfYear)
    {
        var hours = Enumerable.Range(0, 24).Sum(h => HourlyEvapotranspiration.Extraterrestrial(Hour(h + 0.5, 20, 0.5, 2, 1) with { Latitude = latitude, DayOfYear = dayOfYear }));
        Assert.Equal(SunEnergy.Extraterrestrial(dayOfYear, latitude), hours, 1e-9);
    }

    private static EvapotranspirationHour Hour(double middle, double celsius, double humidity, double wind, double solar) => new()
    {
        DayOfYear = 274,
        Middle = middle,
        Latitude = 16 + (13.0 / 60),
        Longitude = -(16 + (15.0 / 60)),
        ZoneLongitude = -15,
        Elevation = Length.FromMeters(8),
        Air = Temperature.FromCelsius(celsius),
        Vapor = Humidity.Saturation(Temperature.FromCelsius(celsius)) * humidity,
        Wind = Speed.FromMetersPerSecond(wind),
        WindHeight = Length.FromMeters(2),
        Solar = solar,
    };
}
