using CsCheck;
using Watersown.Weather;

namespace Watersown.Water;

/// <summary>Lean of a check under wind. Figures worked outside this program from the stress and balance of the Coastal Engineering Manual.</summary>
public sealed class WindSetupTests
{
    [Fact]
    public void Four_inches_over_a_quarter_mile_leans_by_nearly_three()
    {
        // U 10 m/s, fetch 400 m, h 0.1016 m: ends 0.0603 and 0.1336 m.
        var water = WindSetup.Of(Speed.FromMetersPerSecond(10), Length.FromMeters(400), WaterDepth.FromMeters(0.1016));
        Assert.Equal((0.0603, 0.1336), (Math.Round(water.Upwind.Meters, 4), Math.Round(water.Downwind.Meters, 4)));
        Assert.Equal(Length.Zero, water.Bare);
    }

    [Fact]
    public void Two_inches_leave_the_upwind_end_bare()
    {
        // h 0.0508 m: 103.2 m dry.
        var water = WindSetup.Of(Speed.FromMetersPerSecond(10), Length.FromMeters(400), WaterDepth.FromMeters(0.0508));
        Assert.Equal(103.2, water.Bare.Meters, 0.1);
        Assert.Equal(WaterDepth.Zero, water.Upwind);
    }

    [Theory]
    [InlineData(10, 1.3)]
    [InlineData(15, 2.0)]
    [InlineData(20, 2.8)]
    [InlineData(25, 3.6)]
    public void The_depth_below_which_a_quarter_mile_goes_bare(double mph, double inches)
    {
        Assert.True(Quarter(mph, inches - 0.06).Bare > Length.Zero);
        Assert.Equal(Length.Zero, Quarter(mph, inches + 0.06).Bare);
    }

    // Formulas for the freeboard of dams, which are on the safe side: IS 6512:1984 by a worked sheet, read, 177.8 km/h over 11 km, 18.39 m: 0.3 m (0.305);
    // and U² F / (1400 D), from memory, 50 mph over 5 mi, 20 ft: 0.446 ft. They tell the rise at the lee shore, half of the lean.
    [Theory]
    [InlineData(49.389, 11_000, 18.3875, 0.305)]
    [InlineData(22.352, 8046.7, 6.096, 0.1361)]
    public void It_stays_under_what_dams_are_built_for_and_above_half_of_it(double wind, double fetch, double depth, double rise)
    {
        var lean = WindSetup.Of(Speed.FromMetersPerSecond(wind), Length.FromMeters(fetch), WaterDepth.FromMeters(depth));
        Assert.InRange(lean.Downwind.Meters - depth, rise / 2, rise);
    }

    [Fact]
    public void Water_is_kept_and_stronger_wind_leans_it_more() =>
        Gen.Select(Gen.Double[0, 20], Gen.Double[30, 800], Gen.Double[0.02, 0.25]).Sample((wind, fetch, depth) =>
        {
            var water = WindSetup.Of(Speed.FromMetersPerSecond(wind), Length.FromMeters(fetch), WaterDepth.FromMeters(depth));
            var m = 1.2 * 0.001 * (1.1 + (0.035 * wind)) * wind * wind / (998.2 * 9.81);
            double stored = 0;
            const int slices = 4000;
            for (var i = 0; i < slices; i++)
            {
                var x = ((i + 0.5) / slices * fetch) - water.Bare.Meters;
                stored += (x < 0 ? 0 : Math.Sqrt((water.Upwind.Meters * water.Upwind.Meters) + (2 * m * x))) / slices;
            }

            Assert.Equal(depth, stored, depth * 0.002);
            Assert.True(WindSetup.Of(Speed.FromMetersPerSecond(wind + 1), Length.FromMeters(fetch), WaterDepth.FromMeters(depth)).Downwind >= water.Downwind);
        });

    [Fact]
    public void The_index_of_a_windy_day_is_the_sum_by_hand()
    {
        // Sown 07:05. 20 mph from 09:40 for 8 h 20: 64 × 8.3333 × (1 − 6.75 / 72) = 483.3; 22 mph for 11 h: 100 × 11 × (1 − 16.4167 / 72) = 849.2.
        // 1,000 ft, 2 in: (483.33 + 849.19) × 1,000.
        var sown = new DateTimeOffset(2026, 5, 6, 7, 5, 0, TimeSpan.FromHours(-7));
        BlownHours Blow(DateTimeOffset from, DateTimeOffset until, double mph) => new(from, until, new Wind(from, Speed.FromMilesPerHour(mph), Speed.FromMilesPerHour(mph + 10)), Length.FromFeet(1000));
        ImmutableArray<BlownHours> hours = [Blow(sown, At(6, 9, 40), 4), Blow(At(6, 9, 40), At(6, 18, 0), 20), Blow(At(6, 18, 0), At(7, 5, 0), 22)];
        Assert.Equal(1_332_500, SettleIndex.Of(sown, WaterDepth.FromInches(2), hours), 100.0);
        Assert.Equal(SettleIndex.Of(sown, WaterDepth.FromInches(2), hours) * 1.5, SettleIndex.Of(sown, WaterDepth.FromInches(3), hours), 1e-6);
        Assert.Equal(0, SettleIndex.Of(sown.AddDays(-4), WaterDepth.FromInches(2), hours));
    }

    private static DateTimeOffset At(int day, int hour, int minute) => new(2026, 5, day, hour, minute, 0, TimeSpan.FromHours(-7));

    private static LeaningWater Quarter(double mph, double inches) => WindSetup.Of(Speed.FromMilesPerHour(mph), Length.FromFeet(1320), WaterDepth.FromInches(inches));
}
