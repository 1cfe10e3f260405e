namespace Watersown.Flight;

/// <summary>
/// The fall of seed against figures worked by an independent Runge-Kutta integration of the same equations (derived), at an
/// airspeed of 120 mph.
/// </summary>
public sealed class ThrowReference
{
    private const double Speed120 = 53.6448;

    // Height m, falling speed m/s; throw m, time s, drift m in 3 m/s across.
    [Theory]
    [InlineData(9.144, 5.8, 10.88, 2.210, 6.02)]
    [InlineData(9.144, 6.5, 12.98, 2.106, 5.59)]
    [InlineData(9.144, 7.5, 16.02, 2.003, 5.11)]
    [InlineData(9.144, 8.5, 19.05, 1.932, 4.73)]
    [InlineData(12.192, 5.8, 11.01, 2.738, 7.60)]
    [InlineData(12.192, 6.5, 13.22, 2.580, 7.00)]
    [InlineData(12.192, 7.5, 16.47, 2.423, 6.35)]
    [InlineData(12.192, 8.5, 19.76, 2.315, 5.84)]
    [InlineData(15.24, 5.8, 11.06, 3.264, 9.17)]
    [InlineData(15.24, 6.5, 13.34, 3.051, 8.41)]
    [InlineData(15.24, 7.5, 16.73, 2.835, 7.57)]
    [InlineData(15.24, 8.5, 20.20, 2.686, 6.93)]
    [InlineData(25, 5.8, 11.10, 4.946, 14.22)]
    [InlineData(25, 6.5, 13.44, 4.553, 12.91)]
    [InlineData(25, 7.5, 17.03, 4.140, 11.47)]
    [InlineData(25, 8.5, 20.82, 3.844, 10.37)]
    public void Throw_time_and_drift(double height, double terminal, double along, double seconds, double drift)
    {
        var still = Seed(height, terminal, 0, 0);
        Assert.Equal(along, still.Number("throw_m"), 0.006);
        Assert.Equal(seconds, still.Number("fall_s"), 0.001);
        Assert.Equal(0, still.Number("drift_m"), 1e-12);
        Assert.Equal(drift, Seed(height, terminal, 0, 3).Number("drift_m"), 0.006);
    }

    [Theory]
    [InlineData(1, 2.33)]
    [InlineData(2, 4.67)]
    [InlineData(4, 9.34)]
    [InlineData(5, 11.67)]
    [InlineData(6.7, 15.65)]
    public void Drift_grows_with_the_wind_across(double across, double drift) => Assert.Equal(drift, Seed(12.192, 6.5, 0, across).Number("drift_m"), 0.02);

    [Theory]
    [InlineData(5, 26.12)]
    [InlineData(-5, 0.32)]
    public void Wind_along_carries_the_throw(double along, double meters) => Assert.Equal(meters, Seed(12.192, 6.5, along, 0).Number("throw_m"), 0.02);

    // From 12 m.
    [Theory]
    [InlineData(100, 12.43)]
    [InlineData(120, 13.21)]
    [InlineData(140, 13.87)]
    public void Throw_hardly_depends_on_the_speed(double mph, double meters) =>
        Assert.Equal(meters, Throw.Of(new SeedRelease(Length.FromMeters(12), Speed.FromMilesPerHour(mph), Speed.FromMetersPerSecond(6.5))).Along.Meters, 0.006);

    // Derived: lag 0.5 s; still air, 5 m/s from ahead and from behind.
    [Theory]
    [InlineData(0, 40.04)]
    [InlineData(-5, 24.64)]
    [InlineData(5, 55.44)]
    public void The_gate_is_commanded_so_far_before_the_edge(double along, double lead) =>
        Assert.Equal(lead, Ask.For("throw", [.. Keys(12.192, 6.5, along, 0), ("gate_lag_s", 0.5)]).Number("gate_lead_m"), 0.05);

    // Derived: 10 mph from behind and from ahead at 120 mph.
    [Theory]
    [InlineData(10, 0.9231)]
    [InlineData(-10, 1.0909)]
    [InlineData(5, 0.9600)]
    [InlineData(-15, 1.1429)]
    public void A_fixed_gate_sows_thin_with_the_wind_and_thick_against_it(double tailMph, double rate) =>
        Assert.Equal(rate, Seed(12.192, 6.5, Speed.FromMilesPerHour(tailMph).MetersPerSecond, 0).Number("fixed_gate_rate"), 0.0001);

    private static Outcome<Reckon.Reckoned> Seed(double height, double terminal, double along, double across) => Ask.For("throw", Keys(height, terminal, along, across));

    private static (string Key, Datum Value)[] Keys(double height, double terminal, double along, double across) =>
        [("height_m", height), ("airspeed_mps", Speed120), ("terminal_mps", terminal), ("wind_along_mps", along), ("wind_across_mps", across)];
}
