namespace Watersown.Weather;

public sealed class MissingWeatherReference
{
    private const double Lyon = 45 + (43.0 / 60);

    // FAO-56, Example 20 and its closing note, read: 45°43′ N, July, 26.6 and 14.8 °C: 5.0 mm; Example 15: 22.3 MJ.
    [Fact]
    public void High_and_low_alone_give_a_day()
    {
        Assert.Equal(5.0, MissingWeather.Hargreaves(196, Lyon, Temperature.FromCelsius(26.6), Temperature.FromCelsius(14.8)).MillimetersPerDay, 0.05);
        Assert.Equal(22.3, MissingWeather.Solar(196, Lyon, Length.FromMeters(200), Temperature.FromCelsius(26.6), Temperature.FromCelsius(14.8)), 0.06);
    }

    // Eq. 52 worked apart for a row of a public daily table, 1 July 2014, 34.4 and 15.6 °C, latitude taken as 47.45°: 7.242 mm.
    [Fact]
    public void A_hot_day_by_the_sound_comes_out_as_worked_apart() =>
        Assert.Equal(7.242, MissingWeather.Hargreaves(182, 47.45, Temperature.FromCelsius(34.4), Temperature.FromCelsius(15.6)).MillimetersPerDay, 0.001);

    // tests/Reference/hargreaves: a geographic information system with its own sun, nine latitudes.
    [Fact]
    public void Another_program_with_its_own_sun_agrees()
    {
        foreach (var row in ReferenceFile.Rows("hargreaves"))
        {
            double Cell(string name) => double.Parse(row[name], System.Globalization.CultureInfo.InvariantCulture);
            var ours = MissingWeather.Hargreaves((int)Cell("day_of_year"), Cell("lat_deg"), Temperature.FromCelsius(Cell("tmax_c")), Temperature.FromCelsius(Cell("tmin_c")));
            Assert.Equal(Cell("et_mm"), ours.MillimetersPerDay, Cell("et_mm") * 0.016);
        }
    }

    // FAO-56, Example 16, read: 13°44′ N, April, 34.8 and 25.6 °C by the sea: 21.9 MJ.
    [Fact]
    public void By_the_sea_the_same_spread_means_more_sun() =>
        Assert.Equal(21.9, MissingWeather.Solar(105, 13 + (44.0 / 60), Length.FromMeters(2), Temperature.FromCelsius(34.8), Temperature.FromCelsius(25.6), Shore.Coast), 0.06);

    // FAO-56, Example 20, read: dew point at the low, wind 1, 2 and 3 m/s: 4.2, 4.56 and 4.8 mm.
    [Theory]
    [InlineData(1, 4.2)]
    [InlineData(2, 4.56)]
    [InlineData(3, 4.8)]
    public void A_day_without_sun_vapor_and_wind(double wind, double millimeters)
    {
        var (high, low) = (Temperature.FromCelsius(26.6), Temperature.FromCelsius(14.8));
        var day = new EvapotranspirationDay
        {
            DayOfYear = 196,
            Latitude = Lyon,
            Elevation = Length.FromMeters(200),
            High = high,
            Low = low,
            Vapor = MissingWeather.VaporByLow(low),
            Wind = Speed.FromMetersPerSecond(wind),
            WindHeight = Length.FromMeters(2),
            Solar = MissingWeather.Solar(196, Lyon, Length.FromMeters(200), high, low),
        };
        Assert.Equal(millimeters, ReferenceEvapotranspiration.Of(day).Rate.MillimetersPerDay, 0.05);
    }

    // FAO-56, Example 4, read: 25.6 and 19.5 °C at 1,200 m, forced draft: 1.91 kPa.
    [Fact]
    public void A_wet_thermometer_tells_the_vapor() =>
        Assert.Equal(1.91, MissingWeather.VaporByWetBulb(Temperature.FromCelsius(25.6), Temperature.FromCelsius(19.5), ReferenceEvapotranspiration.AirPressure(Length.FromMeters(1200))).Kilopascals, 0.005);

    // FAO-56, Example 5, read: 25 and 18 °C, mean of 82 and 54 %: 1.78 kPa.
    [Fact]
    public void The_mean_humidity_is_the_last_choice() =>
        Assert.Equal(1.78, MissingWeather.VaporByMean(Temperature.FromCelsius(25), Temperature.FromCelsius(18), Fraction.FromPercent(68)).Kilopascals, 0.005);
}
