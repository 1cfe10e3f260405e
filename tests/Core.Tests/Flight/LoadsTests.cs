namespace Watersown.Flight;

public sealed class LoadsTests
{
    // Worked by hand from the trade's own arithmetic (common practice, no source).
    [Theory]
    [InlineData(20550, 9.17, 10, 2569)]
    [InlineData(11100, 4.96, 5, 2775)]
    [InlineData(12865, 5.74, 6, 2680)]
    [InlineData(17700, 7.90, 8, 2766)]
    public void A_field_is_flown_in_equal_loads(double dryPounds, double exact, int loads, double wetEach)
    {
        var plan = Loads.Equal(DrySeed.FromPounds(dryPounds), 1.25, SoakedSeed.FromPounds(2800));
        Assert.Equal(exact, plan.Exact, 0.005);
        Assert.Equal(loads, plan.Count);
        Assert.Equal(wetEach, plan.Each.Pounds, 0.6);
    }

    [Fact]
    public void A_whole_number_of_loads_is_not_rounded_up_by_floating_dust()
    {
        for (var loads = 1; loads <= 60; loads++)
        {
            var plan = Loads.Equal(DrySeed.FromPounds(loads * 2240.0), 1.25, SoakedSeed.FromPounds(2800));
            Assert.Equal(loads, plan.Count);
        }
    }
}
