namespace Watersown.Weather;

/// <summary>The worked days of two publications, with the figures printed on the way, asked for as a user would.</summary>
public sealed class ReferenceEvapotranspirationReference
{
    // FAO-56, Example 18, Uccle, 6 July, 50°48′ N, 100 m, read: high 21.5, low 12.3, 84 and 63 %, 10 km/h at 10 m, 9.25 h of sun.
    [Fact]
    public void A_day_at_uccle_comes_out_as_printed()
    {
        var answer = Ask.For("reference-et",
            ("date", "2001-07-06"), ("lat_deg", 50.8), ("elev_m", 100), ("tmax_c", 21.5), ("tmin_c", 12.3), ("rh_max_pct", 84), ("rh_min_pct", 63),
            ("wind_mps", 10 / 3.6), ("wind_height_m", 10), ("sunshine_h", 9.25));
        Assert.Equal(3.88, answer.Number("et0_mm"), 0.006);
        Assert.Equal(3.88 / 25.4, answer.Number("et0_in"), 0.0003);
        Assert.Equal(13.28, answer.Number("net_radiation_mj"), 0.006);
        Assert.Equal(41.09, answer.Number("extraterrestrial_mj"), 0.005);
        foreach (var (symbol, printed, tolerance) in new[]
        {
            ("J", 187, 0), ("u2", 2.078, 0.0006), ("γ", 0.0666, 0.00005), ("Δ", 0.122, 0.0005), ("es", 1.997, 0.0006), ("ea", 1.409, 0.0006),
            ("Ra", 41.09, 0.005), ("N", 16.1, 0.05), ("Rs", 22.07, 0.005), ("Rso", 30.90, 0.005), ("Rns", 17.0, 0.006), ("Rnl", 3.71, 0.005), ("Rn", 13.28, 0.006), ("ETo", 3.88, 0.006),
        })
        {
            Assert.Equal(printed, Line(answer, symbol), tolerance);
        }
    }

    // FAO-56, Example 17, Bangkok, April, 13°44′ N, 2 m, read: high 34.8, low 25.6, 2.85 kPa, 2 m/s, 8.5 h of sun, 0.14 MJ into the ground.
    [Fact]
    public void A_month_at_bangkok_comes_out_as_printed()
    {
        const double latitude = 13 + (44 / 60.0);
        var above = SunEnergy.Extraterrestrial(105, latitude);
        var water = ReferenceEvapotranspiration.Of(new EvapotranspirationDay
        {
            DayOfYear = 105,
            Latitude = latitude,
            Elevation = Length.FromMeters(2),
            High = Temperature.FromCelsius(34.8),
            Low = Temperature.FromCelsius(25.6),
            Vapor = Pressure.FromKilopascals(2.85),
            Wind = Speed.FromMetersPerSecond(2),
            WindHeight = Length.FromMeters(2),
            Solar = SunEnergy.FromSunshine(8.5, SunEnergy.DaylightHours(105, latitude), above),
            SoilHeat = 0.14,
        });
        Assert.Equal(17.44, water.NetShortwave, 0.005);
        Assert.Equal(3.11, water.NetLongwave, 0.005);
        Assert.Equal(14.33, water.NetRadiation, 0.006);
        Assert.Equal(4.42, water.Saturation.Kilopascals, 0.005);
        Assert.Equal(5.72, water.Rate.MillimetersPerDay, 0.006);
    }

    // FAO-56, Example 20, Lyon, July, 45°43′ N, 200 m, read: only temperatures, so dew point at the low, 22.29 MJ/m² from the
    // range of temperature, and three winds.
    [Theory]
    [InlineData(1, 4.2, 0.05)]
    [InlineData(2, 4.56, 0.006)]
    [InlineData(3, 4.8, 0.05)]
    public void A_day_at_lyon_comes_out_as_printed(double wind, double millimeters, double tolerance)
    {
        var answer = Ask.For("reference-et",
            ("date", "2001-07-15"), ("lat_deg", 45 + (43 / 60.0)), ("elev_m", 200), ("tmax_c", 26.6), ("tmin_c", 14.8), ("dewpoint_c", 14.8),
            ("wind_mps", wind), ("wind_height_m", 2), ("solar_mj", 22.289635));
        Assert.Equal(196, Line(answer, "J"));
        Assert.Equal(1.68, Line(answer, "ea"), 0.005);
        Assert.Equal(30.58, Line(answer, "Rso"), 0.006);
        Assert.Equal(3.68, Line(answer, "Rnl"), 0.006);
        Assert.Equal(13.48, answer.Number("net_radiation_mj"), 0.006);
        Assert.Equal(millimeters, answer.Number("et0_mm"), tolerance);
    }

    // ASCE-EWRI, The ASCE Standardized Reference Evapotranspiration Equation, 2005, Appendix C, Greeley, Colorado, July 2000, short
    // crop, read in a document that reproduces it: 40.41° N, 1,462.4 m, wind at 3 m. The same form with a solar constant of 4.92 per
    // hour and a radiation constant of 4.901e-9; the printed vapor has two decimals, which is 0.02 mm on the first day.
    [Theory]
    [InlineData("2000-07-01", 32.4, 10.9, 1.27, 22.4, 1.94, 32.43, 3.96, 13.31, 5.71)]
    [InlineData("2000-07-02", 33.6, 12.2, 1.19, 26.8, 2.14, 32.39, 5.45, 15.20, 6.71)]
    [InlineData("2000-07-03", 32.6, 14.8, 1.40, 23.3, 2.06, 32.36, 4.15, 13.78, 5.98)]
    [InlineData("2000-07-04", 33.8, 11.8, 1.18, 29.0, 1.97, 32.32, 6.14, 16.19, 6.86)]
    [InlineData("2000-07-05", 32.7, 15.9, 1.59, 27.9, 2.98, 32.27, 5.15, 16.33, 7.03)]
    [InlineData("2000-07-06", 36.3, 15.8, 1.58, 29.2, 2.37, 32.23, 5.67, 16.83, 7.50)]
    [InlineData("2000-07-07", 35.5, 16.7, 1.13, 23.2, 2.43, 32.18, 4.71, 13.15, 7.03)]
    [InlineData("2000-07-08", 34.4, 18.3, 1.38, 22.1, 1.95, 32.13, 4.02, 13.00, 6.16)]
    [InlineData("2000-07-09", 32.7, 15.1, 1.38, 26.5, 1.75, 32.08, 5.16, 15.27, 6.20)]
    [InlineData("2000-07-10", 32.7, 15.7, 1.59, 27.7, 2.31, 32.02, 5.15, 16.15, 6.61)]
    public void Ten_days_at_greeley_come_out_as_printed(string date, double high, double low, double vapor, double solar, double wind, double clear, double back, double net, double millimeters)
    {
        var answer = Ask.For("reference-et",
            ("date", date), ("lat_deg", 40.41), ("elev_m", 1462.4), ("tmax_c", high), ("tmin_c", low), ("vapour_kpa", vapor),
            ("wind_mps", wind), ("wind_height_m", 3), ("solar_mj", solar));
        Assert.Equal(clear, Line(answer, "Rso"), 0.025);
        Assert.Equal(back, Line(answer, "Rnl"), 0.025);
        Assert.Equal(net, answer.Number("net_radiation_mj"), 0.04);
        Assert.Equal(millimeters, answer.Number("et0_mm"), 0.025);
    }

    // FAO-56, Example 14 (10 m), read; ASCE-EWRI 2005, Appendix C (3 m), read in a document that reproduces it.
    [Theory]
    [InlineData(3.2, 10, 2.4, 0.05)]
    [InlineData(1, 10, 0.748, 0.0005)]
    [InlineData(1, 3, 0.921, 0.0005)]
    [InlineData(1, 2, 1.0, 0.0005)]
    public void Wind_is_brought_down_to_two_meters(double wind, double height, double atTwo, double tolerance) =>
        Assert.Equal(atTwo, ReferenceEvapotranspiration.WindAtTwoMeters(Speed.FromMetersPerSecond(wind), Length.FromMeters(height)).MetersPerSecond, tolerance);

    [Fact]
    public void Wind_at_the_ground_has_no_profile() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ReferenceEvapotranspiration.WindAtTwoMeters(Speed.FromMetersPerSecond(1), Length.FromMeters(0.05)));

    private static double Line(Outcome<Reckon.Reckoned> answer, string symbol) =>
        ((Datum.Number)answer.Value.Working.Lines.Single(l => l.Symbol == symbol).Value).Value;
}
