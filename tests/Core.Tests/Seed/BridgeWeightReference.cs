using Watersown.Reckon;

namespace Watersown.Seed;

/// <summary>The federal bridge formula (FHWA, as repeated in guides).</summary>
public sealed class BridgeWeightReference
{
    [Theory]
    [InlineData(4, 2, 34_000, 34_000)]
    [InlineData(48, 5, 78_000, 78_000)]
    [InlineData(51, 5, 79_875, 80_000)]
    [InlineData(36, 4, 66_000, 66_000)]
    public void What_a_group_of_axles_may_weigh(double span, int axles, double formula, double most)
    {
        var answer = Ask.For("bridge-weight", ("axle_span_ft", span), ("axles", axles));
        Assert.Equal(formula, answer.Number("formula_lb"), 1e-6);
        Assert.Equal(most, answer.Number("most_lb"), 1e-6);
    }

    // Derived: 80,000 lb less 32,000 lb empty leave 48,000 lb of soaked seed, 24 loads of 2,000 lb.
    [Fact]
    public void What_is_left_for_seed()
    {
        Assert.Equal(48_000, Ask.For("bridge-weight", ("axle_span_ft", 70), ("axles", 5), ("empty_lb", 32_000)).Number("seed_wet_lb"), 1e-6);
        Ask.For("bridge-weight", ("axle_span_ft", 4), ("axles", 2), ("empty_lb", 40_000)).Refuses((ReckonProblems.Impossible, "empty_lb"));
    }
}
