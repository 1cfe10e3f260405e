namespace Watersown.Weather;

/// <summary>FAO Irrigation and Drainage Paper 56 (FAO, 1998): printed figures, read. Latitudes in degrees and minutes there.</summary>
public sealed class SunEnergyReference
{
    private const double Bangkok = 13 + (44 / 60.0);
    private const double Uccle = 50.8;
    private const double Lyon = 45 + (43 / 60.0);
    private const double Rio = -22.9;

    // Example 8: 20° S, 3 September.
    [Fact]
    public void Distance_and_declination_agree()
    {
        Assert.Equal(0.985, SunEnergy.RelativeDistance(246), 0.0005);
        Assert.Equal(0.120, SunEnergy.Declination(246), 0.0005);
        Assert.Equal(1.0001, SunEnergy.RelativeDistance(274), 0.00005); // Example 19
        Assert.Equal(-0.0753, SunEnergy.Declination(274), 0.00005);
    }

    // Examples 8, 10, 15, 17, 18, 20.
    [Theory]
    [InlineData(246, -20.0, 32.2, 0.05)]
    [InlineData(135, Rio, 25.1, 0.05)]
    [InlineData(196, Lyon, 40.55, 0.006)]
    [InlineData(105, Bangkok, 38.06, 0.005)]
    [InlineData(187, Uccle, 41.09, 0.005)]
    public void Energy_at_the_top_of_the_air_agrees(int day, double latitude, double megajoules, double tolerance) =>
        Assert.Equal(megajoules, SunEnergy.Extraterrestrial(day, latitude), tolerance);

    // Examples 9, 10, 17, 18.
    [Theory]
    [InlineData(246, -20.0, 11.7, 0.05)]
    [InlineData(135, Rio, 10.9, 0.05)]
    [InlineData(105, Bangkok, 12.31, 0.005)]
    [InlineData(187, Uccle, 16.1, 0.05)]
    public void Daylight_agrees(int day, double latitude, double hours, double tolerance) =>
        Assert.Equal(hours, SunEnergy.DaylightHours(day, latitude), tolerance);

    // Example 10 (220 h in 31 days), 17, 18.
    [Theory]
    [InlineData(135, Rio, 220 / 31.0, 14.5, 0.05)]
    [InlineData(105, Bangkok, 8.5, 22.65, 0.005)]
    [InlineData(187, Uccle, 9.25, 22.07, 0.005)]
    public void Sunshine_tells_the_energy_at_the_ground(int day, double latitude, double sunshine, double megajoules, double tolerance) =>
        Assert.Equal(megajoules, SunEnergy.FromSunshine(sunshine, SunEnergy.DaylightHours(day, latitude), SunEnergy.Extraterrestrial(day, latitude)), tolerance);

    // Examples 16 and 17 (2 m), 18 (100 m), 20 (200 m).
    [Theory]
    [InlineData(105, Bangkok, 2, 28.54, 0.006)]
    [InlineData(187, Uccle, 100, 30.90, 0.005)]
    [InlineData(196, Lyon, 200, 30.58, 0.006)]
    public void A_clear_sky_agrees(int day, double latitude, double elevation, double megajoules, double tolerance) =>
        Assert.Equal(megajoules, SunEnergy.ClearSky(SunEnergy.Extraterrestrial(day, latitude), Length.FromMeters(elevation)), tolerance);

    // Examples 11 and 12: Rio in May, clear sky as 0.75 of the top of the air. Printed 3.5 and, left over, 7.6.
    [Fact]
    public void What_goes_back_to_the_sky_agrees_over_a_month()
    {
        var above = SunEnergy.Extraterrestrial(135, Rio);
        var solar = SunEnergy.FromSunshine(220 / 31.0, SunEnergy.DaylightHours(135, Rio), above);
        var back = SunEnergy.NetLongwave(Temperature.FromCelsius(25.1), Temperature.FromCelsius(19.1), Pressure.FromKilopascals(2.1), solar / (0.75 * above));
        Assert.Equal(3.5, back, 0.05);
        Assert.Equal(11.1, SunEnergy.NetShortwave(solar), 0.05);
        Assert.Equal(7.6, SunEnergy.NetShortwave(solar) - back, 0.05);
    }

    // Example 16: Bangkok in April with 21.9 MJ/m² estimated from temperature.
    [Fact]
    public void What_goes_back_to_the_sky_agrees_where_sunshine_is_not_known()
    {
        var above = SunEnergy.Extraterrestrial(105, Bangkok);
        const double solar = 21.932589;
        var back = SunEnergy.NetLongwave(Temperature.FromCelsius(34.8), Temperature.FromCelsius(25.6), Pressure.FromKilopascals(2.85), solar / (0.75 * above));
        Assert.Equal(3.0, back, 0.05);
        Assert.Equal(16.9, SunEnergy.NetShortwave(solar), 0.05);
        Assert.Equal(13.9, SunEnergy.NetShortwave(solar) - back, 0.05);
    }

    // Derived: −tan f tan d passes 1 or −1 beyond the polar circles.
    [Theory]
    [InlineData(80, 172, 24, 1)]
    [InlineData(80, 355, 0, 0)]
    [InlineData(-80, 355, 24, 1)]
    [InlineData(90, 172, 24, 1)]
    public void Beyond_the_polar_circles_the_day_is_whole_or_none(double latitude, int day, double hours, int energy)
    {
        Assert.Equal(hours, SunEnergy.DaylightHours(day, latitude), 1e-9);
        Assert.Equal(energy, Math.Sign(Math.Round(SunEnergy.Extraterrestrial(day, latitude), 9)));
    }

    [Fact]
    public void More_sunshine_than_day_counts_as_the_whole_day() =>
        Assert.Equal(SunEnergy.FromSunshine(12, 12, 40), SunEnergy.FromSunshine(13, 12, 40));

    [Fact]
    public void Without_any_day_there_is_no_energy() => Assert.Equal(0, SunEnergy.FromSunshine(0, 0, 0));
}
