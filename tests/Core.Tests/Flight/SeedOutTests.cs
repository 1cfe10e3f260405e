namespace Watersown.Flight;

public sealed class SeedOutTests
{
    [Fact]
    public void Seed_left_over_is_a_light_gate_or_acres_missed()
    {
        // Willow Run: 137 ac at 150 lb dry, 25,687 lb wet in, 1,900 left.
        var sum = SeedOuts.Of(SoakedSeed.FromPounds(25687), SoakedSeed.FromPounds(1900), 1.25, Area.FromAcres(137), SeedRate.FromPoundsPerAcre(150));
        Assert.Equal(23787, sum.Out.Pounds, 1e-6);
        Assert.Equal(138.9, sum.Laid.PoundsPerAcre, 0.05);
        Assert.Equal(1900 / 1.25 / 150, sum.Missed!.Value.Acres, 0.01);
        Assert.False(sum.WithinError);
    }

    [Fact]
    public void A_trailer_that_carried_more_than_was_asked_leaves_no_gap()
    {
        var sum = SeedOuts.Of(SoakedSeed.FromPounds(25687 + 1900), SoakedSeed.FromPounds(1900), 1.25, Area.FromAcres(137), SeedRate.FromPoundsPerAcre(150));
        Assert.True(sum.WithinError);
        Assert.InRange(sum.Laid.PoundsPerAcre, 149.9, 150.1);
    }

    [Fact]
    public void More_out_than_asked_misses_nothing_and_says_by_how_much()
    {
        var sum = SeedOuts.Of(SoakedSeed.FromPounds(27000), SoakedSeed.Zero, 1.25, Area.FromAcres(137), SeedRate.FromPoundsPerAcre(150));
        Assert.Null(sum.Missed);
        Assert.Equal((27000 / 1.25 / 137 / 150) - 1, sum.Off, 1e-9);
    }
}
