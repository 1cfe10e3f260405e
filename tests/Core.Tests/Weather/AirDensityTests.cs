using CsCheck;
using Watersown.Reckon;

namespace Watersown.Weather;

public sealed class AirDensityTests
{
    [Fact]
    public void On_a_standard_day_density_altitude_is_the_elevation() =>
        Gen.Double[-1000, 15_000].Sample(feet =>
        {
            var height = Length.FromFeet(feet);
            var answer = AirDensity.DensityAltitude(height, StandardAtmosphere.SeaLevel, StandardAtmosphere.TemperatureAt(height), null);
            Assert.Equal(feet, answer.Feet, 0.5); // the table's own constants hang together to 1 part in 10⁵
        });

    [Fact]
    public void Hotter_lower_pressure_and_damper_air_never_feels_lower() =>
        Gen.Select(Gen.Double[0, 45], Gen.Double[0, 10], Gen.Double[960, 1040], Gen.Double[0, 15]).Sample((celsius, warmer, hectopascals, fall) =>
        {
            static double Feet(double t, double p, double? dew) => AirDensity.DensityAltitude(
                Length.FromFeet(300), Pressure.FromHectopascals(p), Temperature.FromCelsius(t), dew is { } d ? Temperature.FromCelsius(d) : null).Feet;
            var here = Feet(celsius, hectopascals, null);
            Assert.True(Feet(celsius + warmer, hectopascals, null) >= here);
            Assert.True(Feet(celsius, hectopascals - fall, null) >= here);
            Assert.True(Feet(celsius, hectopascals, celsius - 5) > here);
        });

    [Fact]
    public void A_dew_point_above_the_air_is_refused() =>
        Ask.For("density-altitude", ("elev_ft", 100), ("pressure_hpa", 1013.25), ("temp_c", 20), ("dewpoint_c", 25)).Refuses((ReckonProblems.Impossible, "dewpoint_c"));

    [Fact]
    public void It_says_when_air_was_taken_as_dry_and_that_it_is_no_leave_to_fly()
    {
        var dry = Ask.For("density-altitude", ("elev_ft", 100), ("pressure_hpa", 1013.25), ("temp_c", 20)).Value.Cautions;
        var damp = Ask.For("density-altitude", ("elev_ft", 100), ("pressure_hpa", 1013.25), ("temp_c", 20), ("dewpoint_c", 10)).Value.Cautions;
        Assert.Equal(damp.Length + 1, dry.Length);
        Assert.Contains(damp, c => c.Contains("never a leave to fly", StringComparison.Ordinal));
    }
}
