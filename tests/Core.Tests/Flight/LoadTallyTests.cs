using CsCheck;

namespace Watersown.Flight;

public sealed class LoadTallyTests
{
    // By hand: 16,081 = 5 × 2,680 + 2,681; 25,687 = 3 × 2,568 + 7 × 2,569.
    [Theory]
    [InlineData(16081, 6, 2680, 5, 2681)]
    [InlineData(25687, 10, 2568, 3, 2569)]
    [InlineData(18600, 1, 18600, 1, 18600)]
    [InlineData(12000, 5, 2400, 5, 2400)]
    public void What_does_not_divide_goes_one_pound_each_into_the_last_loads(int total, int loads, int each, int plain, int last)
    {
        var shares = LoadTally.Shares(total, loads);
        Assert.Equal(plain, shares.Count(s => s == each));
        Assert.Equal(last, shares[^1]);
        Assert.Equal(total, shares.Sum());
    }

    [Fact]
    public void Loads_as_printed_add_up_to_the_field_exactly_and_none_exceeds_the_limit() =>
        Gen.Select(Gen.Double[50, 60000], Gen.Double[1.0, 1.5], Gen.Int[1500, 6000]).Sample((dry, factor, limit) =>
        {
            var plan = Loads.Equal(DrySeed.FromPounds(dry), factor, SoakedSeed.FromPounds(limit));
            int wet = (int)Math.Round(dry * factor), seed = (int)Math.Round(dry);
            var shares = LoadTally.Shares(wet, plan.Count);
            var running = LoadTally.SoFar(seed, shares);
            return shares.Sum() == wet && running[^1] == seed && running.Zip(running.Skip(1)).All(p => p.First <= p.Second)
                && shares.Max() - shares.Min() <= 1
                && shares.Max() <= limit + 1; // rounding the field's weight up may cost one pound in one load
        });

    [Fact]
    public void A_negative_weight_or_no_load_is_a_fault_of_the_program()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => LoadTally.Shares(-1, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => LoadTally.Shares(10, 0));
    }
}
