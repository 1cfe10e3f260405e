using CsCheck;

namespace Watersown.Flight.Laying;

public sealed class PassOrderTests
{
    // Derived: twelve passes, six apart.
    [Fact]
    public void Twelve_passes_six_apart() => Assert.Equal([1, 7, 2, 8, 3, 9, 4, 10, 5, 11, 6, 12], PassOrder.Racetrack(12, 6));

    [Fact]
    public void Every_pass_is_flown_once_and_a_racetrack_keeps_its_distance() => Gen.Select(Gen.Int[1, 300], Gen.Int[1, 40]).Sample((passes, offset) =>
    {
        var order = PassOrder.Racetrack(passes, offset);
        Assert.Equal(Enumerable.Range(1, passes), order.Order());
        if (passes < 2 * offset) Assert.Equal(PassOrder.BackAndForth(passes), order);
        else Assert.True(order.Zip(order.Skip(1)).Count(pair => Math.Abs(pair.Second - pair.First) < offset - 1) < passes / (2.0 * offset)); // from one racetrack to the one beside it
    });

    [Fact]
    public void The_turn_that_was_timed_is_told_back_and_a_half_circle_is_shorter() => Gen.Select(Gen.Double[20, 60], Gen.Double[10, 25]).Sample((seconds, spacing) =>
    {
        var reach = TurnReach.Of(TimeSpan.FromSeconds(seconds), Speed.FromMilesPerHour(120), Length.FromMeters(spacing));
        Assert.Equal(seconds, reach.Time(Length.FromMeters(spacing)).TotalSeconds, 1e-4);
        Assert.True(reach.Time(Length.FromMeters(spacing) * reach.Offset(Length.FromMeters(spacing))) < TimeSpan.FromSeconds(seconds));
    });

    // Derived: a bulb of 39.7 s at 120 mph over 18 m is one of 293.5 m radius, and 33 passes off is the first plain half circle.
    [Fact]
    public void A_timed_bulb_tells_its_radius()
    {
        var reach = TurnReach.Of(TimeSpan.FromSeconds(2130 / 53.6448), Speed.FromMilesPerHour(120), Length.FromMeters(18));
        Assert.Equal(293.5, reach.Radius.Meters, 0.2);
        Assert.Equal(33, reach.Offset(Length.FromMeters(18)));
    }
}
