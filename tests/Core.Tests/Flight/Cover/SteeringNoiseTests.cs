namespace Watersown.Flight.Cover;

public sealed class SteeringNoiseTests
{
    // s / √π over S 18 m, worked by hand: 0.2821, 0.9403, ... and in percent as below.
    [Theory]
    [InlineData(0.3, 0.940)]
    [InlineData(0.5, 1.567)]
    [InlineData(1.0, 3.134)]
    [InlineData(2.0, 6.269)]
    public void Unsteady_steering_skips_its_deviation_over_the_root_of_pi_at_each_seam(double sigma, double percent) =>
        Assert.Equal(percent, SteeringNoise.SkippedShare(Length.FromMeters(sigma), Length.FromMeters(18)).Percent, 0.001);

    // A million seams drawn: the mean has a standard error of 0.826 s / 1,000, and five of them are allowed.
    [Fact]
    public void Drawn_seams_skip_as_much()
    {
        var chance = new Random(11);
        double skipped = 0, before = SomeFlight.Normal(chance);
        for (var i = 0; i < 1_000_000; i++)
        {
            var next = SomeFlight.Normal(chance);
            skipped += Math.Max(0, next - before);
            before = next;
        }

        Assert.Equal(skipped / 1e6, SteeringNoise.SkippedAtSeam(Length.FromMeters(1)).Meters, 5 * 0.826e-3);
    }

    // 600 passes with offsets drawn, each for its whole length: standard error 0.826 × 0.5 / √599 m at a seam, 0.094 % of the land; three are allowed.
    [Fact]
    public void Flown_passes_with_such_offsets_skip_and_overlap_as_much()
    {
        var chance = new Random(5);
        var field = SomeFlight.Rectangle(600 * 18, 10);
        var runs = SomeFlight.North(10, Enumerable.Range(0, 600).Select(i => 9 + (18.0 * i) + (0.5 * SomeFlight.Normal(chance))));
        var shares = SomeFlight.Cover(field, runs, 18, new CoverOptions { Cell = Length.FromMeters(0.1) }).Shares;
        var expected = SteeringNoise.SkippedShare(Length.FromMeters(0.5), Length.FromMeters(18)).Percent;
        Assert.Equal(expected, shares.SkipShare.Percent, 3 * 0.094);
        Assert.Equal(expected, shares.OverlapShare.Percent, 3 * 0.094);
    }

    // Published: CEP = 0.589 (σN + σE), US National Research Council, 1995; 98.2 % within 2 drms. The rest by hand.
    [Fact]
    public void Words_for_position_errors_turn_into_one_another()
    {
        var error = new PositionError(Length.FromMeters(1));
        Assert.Equal(1.1774, error.Cep.Meters, 1e-4);
        Assert.Equal(0.589 * 2, error.Cep.Meters, 1e-3);
        Assert.Equal(1.4142, error.Drms.Meters, 1e-4);
        Assert.Equal(2.4477, error.R95.Meters, 1e-4);
        Assert.Equal(2.8284, error.TwiceDrms.Meters, 1e-4);
        Assert.Equal(50, error.Within(error.Cep).Percent, 1e-9);
        Assert.Equal(63.21, error.Within(error.Drms).Percent, 0.01);
        Assert.Equal(95, error.Within(error.R95).Percent, 1e-9);
        Assert.Equal(98.17, error.Within(error.TwiceDrms).Percent, 0.01);
        Assert.Equal(2.079, error.R95 / error.Cep, 1e-3);
    }

    [Fact]
    public void Each_word_leads_back_to_the_same_error()
    {
        var error = new PositionError(Length.FromMeters(0.7));
        PositionError[] back = [PositionError.FromCep(error.Cep), PositionError.FromDrms(error.Drms), PositionError.FromR95(error.R95), PositionError.FromTwiceDrms(error.TwiceDrms)];
        Assert.All(back, b => Assert.Equal(0.7, b.Sigma.Meters, 1e-12));
    }
}
