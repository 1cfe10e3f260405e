namespace Watersown.Water;

public sealed class DryOutTests
{
    // Derived by hand: (depth − high spot) / loss. The first four are one invented pump's fields, high spots 1.2 in.
    [Theory]
    [InlineData(4.0, 1.2, 0.28, 10.0)]
    [InlineData(3.5, 1.2, 0.28, 8.2)]
    [InlineData(2.5, 1.2, 0.28, 4.6)]
    [InlineData(2.5, 1.2, 0.44, 2.95)]
    [InlineData(2.0, 1.2, 0.44, 1.8)]
    [InlineData(5.0, 2.0, 0.35, 8.571)]
    public void Bare_soil_shows_when_the_surface_has_fallen_to_the_high_spots(double depth, double highSpot, double loss, double days) =>
        Assert.Equal(days, Dry(depth, highSpot, loss).Number("days_to_bare"), 0.05);

    [Fact]
    public void The_answer_keeps_its_digits() =>
        Assert.Equal(3.0 / 0.35, Dry(5, 2, 0.35).Number("days_to_bare"), 1e-9);

    [Fact]
    public void With_nothing_lost_it_never_dries()
    {
        var answer = Dry(2.5, 1.2, 0);
        Assert.Equal(Datum.None, answer.Answer("days_to_bare"));
        Assert.Contains(answer.Value.Cautions, c => c.StartsWith("With nothing lost it never dries out", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1.2)]
    [InlineData(0.4)]
    public void High_spots_that_stand_out_are_bare_now(double depth)
    {
        var answer = Dry(depth, 1.2, 0.28);
        Assert.Equal(0, answer.Number("days_to_bare"));
        Assert.Contains("The highest soil is bare already.", answer.Value.Cautions, StringComparer.Ordinal);
    }

    [Fact]
    public void A_loss_too_small_to_matter_is_never() =>
        Assert.Null(DryOut.TimeToBare(WaterDepth.FromInches(60), WaterDepth.Zero, DepthRate.FromInchesPerDay(1e-200)));

    private static Outcome<Reckon.Reckoned> Dry(double depth, double highSpot, double loss) =>
        Ask.For("dry-out", ("depth_in", depth), ("high_spot_in", highSpot), ("loss_in_day", loss));
}
