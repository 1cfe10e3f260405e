using Watersown.Weather;

namespace Watersown.Water;

public sealed class PondTemperatureTests
{
    // Heat balance worked by hand for two days at 39.4° N; it meets the measured 1.10 times the reference (Montazar et al. 2017) and
    // water warmer than the air by 2.6 °C on the mean (Sharifi et al. 2018, six fields, planting to booting).
    [Theory]
    [InlineData(130, 26.5, 10.5, 9, 26.5, 21.808, 6.299, 1.141)]
    [InlineData(166, 31, 14, 11, 28.5, 24.582, 7.639, 1.125)]
    public void A_bare_flood_is_warmer_than_the_air(int dayOfYear, double high, double low, double dew, double solar, double water, double evaporation, double overReference)
    {
        var day = Day(dayOfYear, high, low, dew, solar);
        var pond = PondTemperature.OfDay(day);
        Assert.Equal(water, pond.Water.Celsius, 0.002);
        Assert.Equal(evaporation, pond.Evaporation.MillimetersPerDay, 0.002);
        Assert.Equal(overReference, pond.Evaporation / ReferenceEvapotranspiration.Of(day).Rate, 0.002);
        Assert.InRange(pond.Water.Celsius - ((high + low) / 2), 2.6 - 1.5, 2.6 + 1.5);
    }

    // Brady, Graves and Geyer 1969, worked by hand: dew point 9 °C, 312.5 W/m², 3 m/s.
    [Fact]
    public void Still_water_is_pulled_to_its_balance()
    {
        var (water, pull) = PondTemperature.Equilibrium(Temperature.FromCelsius(9), 312.5, Speed.FromMetersPerSecond(3));
        Assert.Equal(22.25, water.Celsius, 0.01);
        Assert.Equal(23.59, pull, 0.01);
    }

    // τ = ρ c h / K and 1 / √(1 + (ωτ)²), by hand, K 27.
    [Theory]
    [InlineData(0.0508, 2.19, 0.868)]
    [InlineData(0.1016, 4.38, 0.658)]
    [InlineData(0.1270, 5.47, 0.573)]
    public void Deeper_water_swings_less(double meters, double hours, double swing)
    {
        var response = PondTemperature.Response(WaterDepth.FromMeters(meters), 27);
        Assert.Equal(hours, response.TotalHours, 0.005);
        Assert.Equal(swing, PondTemperature.DailySwing(response), 0.005);
    }

    private static EvapotranspirationDay Day(int dayOfYear, double high, double low, double dew, double solar) => new()
    {
        DayOfYear = dayOfYear,
        Latitude = 39.4,
        Elevation = Length.FromMeters(20),
        High = Temperature.FromCelsius(high),
        Low = Temperature.FromCelsius(low),
        Vapor = Humidity.FromDewPoint(Temperature.FromCelsius(dew)),
        Wind = Speed.FromMetersPerSecond(2.5),
        WindHeight = Length.FromMeters(2),
        Solar = solar,
    };
}
