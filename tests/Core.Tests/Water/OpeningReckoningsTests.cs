namespace Watersown.Water;

/// <summary>The formulas themselves are checked in <c>Hydraulics/OpeningsReference</c>.</summary>
public sealed class OpeningReckoningsTests
{
    [Fact]
    public void A_gate_two_feet_wide_and_one_open_passes_its_flow()
    {
        var answer = Ask.For("drowned-gate", ("width_ft", 2), ("height_ft", 1), ("difference_ft", 0.5));
        Assert.Equal(6.92, answer.Number("cfs"), 0.001);
        Assert.Equal(answer.Number("cfs") * 448.831, answer.Number("gpm"), 0.01);
        Assert.Empty(answer.Value.Cautions);
        Assert.NotEmpty(Ask.For("drowned-gate", ("width_ft", 2), ("height_ft", 1), ("difference_ft", 0.1)).Value.Cautions);
    }

    // 40 ft at an inch: 3.0876 × 40 × (1/12)^1.5 = 2.971 cfs, 5.893 ac-ft a day; 0.85 of it is 2.525.
    [Fact]
    public void Forty_feet_of_levee_an_inch_under_water_lose_three_cfs()
    {
        var answer = Ask.For("levee-overtop", ("length_ft", 40), ("head_in", 1));
        Assert.Equal(2.971, answer.Number("cfs_most"), 0.001);
        Assert.Equal(2.525, answer.Number("cfs_least"), 0.001);
        Assert.Equal(5.893, answer.Number("acft_day"), 0.001);
    }
}
