namespace Watersown.Water;

public sealed class BreachTests
{
    [Fact]
    public void Six_feet_with_three_inches_runs_2_25_cfs_and_half_a_25_acre_check_is_gone_in_about_a_day()
    {
        // By hand: 3 × 6 × 0.25^1.5 = 2.25 cfs. 6.25 ac-ft, half of it 3.125; at 4.463 ac-ft a day 0.700 days = 16.8 h.
        // Falling head: (2 × 1,089,000 / 18) × (√2 − 1) / √0.25 = 100,237 s = 27.8 h.
        var time = Of(6, 3, 25);
        Assert.Equal(2.25, time.Flow.CubicFeetPerSecond, 9);
        Assert.Equal(16.8, time.HalfAtFirstRate.TotalHours, 1);
        Assert.Equal(27.8, time.HalfFalling.TotalHours, 1);
    }

    [Fact]
    public void Halving_the_head_in_small_steps_takes_as_long_as_the_closed_form()
    {
        double h = 0.25, seconds = 0;
        while (h > 0.125)
        {
            h -= 3.0 * 6 * Math.Pow(h, 1.5) / (25 * 43560) * 1;
            seconds += 1;
        }

        Assert.Equal(seconds, Of(6, 3, 25).HalfFalling.TotalSeconds, seconds * 0.001);
    }

    [Fact]
    public void A_wider_gap_or_a_smaller_check_is_sooner_and_the_first_rate_is_always_the_sooner_of_the_two() =>
        CsCheck.Check.Sample(CsCheck.Gen.Select(CsCheck.Gen.Double[1, 50], CsCheck.Gen.Double[0.5, 12], CsCheck.Gen.Double[2, 80]), (width, inches, acres) =>
        {
            var time = Of(width, inches, acres);
            Assert.True(time.HalfAtFirstRate < time.HalfFalling);
            Assert.True(Of(width * 2, inches, acres).HalfFalling < time.HalfFalling);
            Assert.True(Of(width, inches, acres / 2).HalfFalling < time.HalfFalling);
        });

    private static BreachTime Of(double feet, double inches, double acres) => Breach.Of(new BreachGap(Length.FromFeet(feet), WaterDepth.FromInches(inches)), Area.FromAcres(acres));
}
