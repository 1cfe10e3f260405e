namespace Watersown.Weather;

public sealed class StandardizedEvapotranspirationReference
{
    private static readonly Length Greeley = Length.FromMeters(1462.4);

    // ASCE-EWRI 2005, Appendix C, a station in Colorado, July 2000, as reproduced elsewhere: 40.41° N, 1,462.4 m, wind at 3 m.
    [Theory]
    [InlineData(183, 32.4, 10.9, 1.27, 22.4, 1.94, 13.31, 5.71, 7.34)]
    [InlineData(184, 33.6, 12.2, 1.19, 26.8, 2.14, 15.20, 6.71, 8.68)]
    [InlineData(185, 32.6, 14.8, 1.40, 23.3, 2.06, 13.78, 5.98, 7.65)]
    [InlineData(186, 33.8, 11.8, 1.18, 29.0, 1.97, 16.19, 6.86, 8.73)]
    [InlineData(187, 32.7, 15.9, 1.59, 27.9, 2.98, 16.33, 7.03, 9.07)]
    [InlineData(188, 36.3, 15.8, 1.58, 29.2, 2.37, 16.83, 7.50, 9.60)]
    [InlineData(189, 35.5, 16.7, 1.13, 23.2, 2.43, 13.15, 7.03, 9.56)]
    [InlineData(190, 34.4, 18.3, 1.38, 22.1, 1.95, 13.00, 6.16, 7.99)]
    [InlineData(191, 32.7, 15.1, 1.38, 26.5, 1.75, 15.27, 6.20, 7.68)]
    [InlineData(192, 32.7, 15.7, 1.59, 27.7, 2.31, 16.15, 6.61, 8.28)]
    public void Days_come_out_as_printed(int dayOfYear, double high, double low, double vapor, double solar, double wind, double net, double grass, double tall)
    {
        var day = new EvapotranspirationDay
        {
            DayOfYear = dayOfYear,
            Latitude = 40.41,
            Elevation = Greeley,
            High = Temperature.FromCelsius(high),
            Low = Temperature.FromCelsius(low),
            Vapor = Pressure.FromKilopascals(vapor),
            Wind = Speed.FromMetersPerSecond(wind),
            WindHeight = Length.FromMeters(3),
            Solar = solar,
        };
        // The sun is printed to 0.1 MJ, which leaves 0.04 in the net radiation and 0.03 mm.
        Assert.Equal(net, StandardizedEvapotranspiration.NetRadiation(day), 0.05);
        Assert.Equal(grass, StandardizedEvapotranspiration.OfDay(day, ReferenceSurface.Short).MillimetersPerDay, 0.03);
        Assert.Equal(tall, StandardizedEvapotranspiration.OfDay(day, ReferenceSurface.Tall).MillimetersPerDay, 0.03);
    }

    // The same appendix: 16 h and 21 h of day 183, 13 h and 20 h of day 184, from the printed net radiation.
    [Theory]
    [InlineData(30.9, 1.09, 4.07, 1.441, 0.61, 0.82)]
    [InlineData(22.9, 1.20, 1.04, -0.016, 0.04, 0.06)]
    [InlineData(31.8, 0.98, 2.76, 2.239, 0.79, 0.97)]
    [InlineData(25.9, 1.17, 3.27, -0.120, 0.10, 0.14)]
    public void Hours_come_out_as_printed(double celsius, double vapor, double windAtThree, double net, double grass, double tall)
    {
        var wind = ReferenceEvapotranspiration.WindAtTwoMeters(Speed.FromMetersPerSecond(windAtThree), Length.FromMeters(3));
        double Hour(ReferenceSurface surface) => StandardizedEvapotranspiration.OfHour(surface, Temperature.FromCelsius(celsius), Pressure.FromKilopascals(vapor), wind, Greeley, net).MillimetersPerDay / 24;
        Assert.Equal(grass, Hour(ReferenceSurface.Short), 0.0051);
        Assert.Equal(tall, Hour(ReferenceSurface.Tall), 0.0051);
    }

    // Net radiation of the same hours, from what the station read: 40.41° N, 104.78° W, standard time of 105° W. At 21 h the sky is as clear as it was before
    // dusk, which there was as dark as the standard lets it count: 0.3.
    [Theory]
    [InlineData(183, 15.5, 30.9, 1.09, 2.24, 0.8, 1.441)]
    [InlineData(184, 12.5, 31.8, 0.98, 3.34, 0.8, 2.239)]
    [InlineData(183, 20.5, 22.9, 1.20, 0.00, 0.3, -0.016)]
    public void Net_radiation_of_an_hour_comes_out_as_printed(int dayOfYear, double middle, double celsius, double vapor, double solar, double before, double net)
    {
        // The sun is printed to 0.01 MJ: 0.005 of it moves the net radiation by 0.77 + 1.35 × 0.3 / 2.9 of that at most.
        Assert.Equal(net, StandardizedEvapotranspiration.NetRadiation(Hour(dayOfYear, middle, celsius, vapor, solar, before)), 0.005);
    }

    [Fact]
    public void While_the_sun_is_low_the_clearness_before_counts_and_a_sensor_in_the_dusk_does_not()
    {
        // 19.5 h on day 184: the sun stands under 0.3 rad; printed net radiation −0.120 with 0.03 of sun and what had been carried since the afternoon.
        Assert.InRange(HourlyEvapotranspiration.SunHeight(Hour(184, 19.5, 25.9, 1.17, 0.03, 0.6)), -0.05, 0.3);
        double Net(double solar, double before) => StandardizedEvapotranspiration.NetRadiation(Hour(184, 19.5, 25.9, 1.17, solar, before));
        Assert.Equal(0.77 * 0.02, Net(0.05, 0.6) - Net(0.03, 0.6), 1e-9);
        Assert.InRange(-0.120, Net(0.03, 1), Net(0.03, 0.3));
    }

    private static EvapotranspirationHour Hour(int dayOfYear, double middle, double celsius, double vapor, double solar, double before) => new()
    {
        DayOfYear = dayOfYear,
        Middle = middle,
        Latitude = 40.41,
        Longitude = -104.78,
        ZoneLongitude = -105,
        Elevation = Greeley,
        Air = Temperature.FromCelsius(celsius),
        Vapor = Pressure.FromKilopascals(vapor),
        Wind = Speed.FromMetersPerSecond(2),
        WindHeight = Length.FromMeters(3),
        Solar = solar,
        NightClearness = before,
    };
}
