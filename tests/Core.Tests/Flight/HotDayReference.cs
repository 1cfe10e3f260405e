namespace Watersown.Flight;

/// <summary>Thin air against a page of mountain-flying rules (read): +116 % at 9,000 ft with a fixed propeller, weight squared.</summary>
public sealed class HotDayReference
{
    [Theory]
    [InlineData(9000, "fixed", 2.16)]
    [InlineData(8000, "fixed", 1.96)]
    [InlineData(1000, "fixed", 1.12)]
    [InlineData(8000, "constant-speed", 1.80)]
    [InlineData(10_000, "constant-speed", 2.10)]
    [InlineData(0, "constant-speed", 1)]
    [InlineData(-1000, "constant-speed", 1)]
    public void Distance_grows_with_density_altitude(double feet, string propeller, double factor) =>
        Assert.Equal(factor, Ask.For("hot-strip", ("density_altitude_ft", feet), ("takeoff_lb", 9000), ("propeller", propeller)).Number("distance_factor"), 1e-9);

    // Read: 10 % more weight is 21 % more distance. Derived: at 2,850 ft 1.285 and 0.882 of the weight.
    [Fact]
    public void The_same_distance_takes_the_root_of_the_factor_off_the_weight()
    {
        Assert.Equal(1 / 1.1, HotDay.SameDistance(Mass.FromKilograms(1), 1.21).Kilograms, 1e-12);
        var answer = Ask.For("hot-strip", ("density_altitude_ft", 2850), ("takeoff_lb", 10_000));
        Assert.Equal(1.285, answer.Number("distance_factor"), 1e-9);
        Assert.Equal(8820, answer.Number("same_distance_lb"), 2.0);
        Assert.Equal(1180, answer.Number("lighter_lb"), 2.0);
    }
}
