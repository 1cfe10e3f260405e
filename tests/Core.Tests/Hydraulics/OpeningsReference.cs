namespace Watersown.Hydraulics;

/// <summary>Water through openings and over flat tops against the published forms, worked apart from the product.</summary>
public sealed class OpeningsReference
{
    // US Bureau of Reclamation, Water Measurement Manual, eq. 9-1 with C = 0.61; derived: the form computed apart with g 32.174.
    [Theory]
    [InlineData(1, 0.2, 2.188)]
    [InlineData(2, 0.5, 6.920)]
    public void An_opening_under_water_passes_what_the_manual_says(double squareFeet, double difference, double cfs) =>
        Assert.Equal(cfs, Openings.Submerged(Area.FromSquareFeet(squareFeet), WaterDepth.FromFeet(difference)).CubicFeetPerSecond, 0.001);

    // Bos 1989: critical flow over a broad crest, (2/3) √(2g/3) = 3.0876 in feet; derived.
    [Fact]
    public void A_flat_top_has_the_coefficient_of_critical_flow() =>
        Assert.Equal(3.0876, Openings.FlatTop(WaterDepth.FromFeet(1), Length.FromFeet(1)).CubicFeetPerSecond, 0.0001);

    [Fact]
    public void Four_times_the_difference_is_twice_the_flow_and_four_times_the_head_eight_times()
    {
        var opening = Area.FromSquareFeet(3);
        Assert.Equal(2, Openings.Submerged(opening, WaterDepth.FromFeet(0.8)) / Openings.Submerged(opening, WaterDepth.FromFeet(0.2)), 1e-12);
        Assert.Equal(8, Openings.FlatTop(WaterDepth.FromInches(4), Length.FromFeet(7)) / Openings.FlatTop(WaterDepth.FromInches(1), Length.FromFeet(7)), 1e-12);
    }

    [Fact]
    public void Water_that_runs_back_is_not_reckoned() => Assert.Throws<ArgumentOutOfRangeException>(() => Openings.Submerged(Area.FromSquareFeet(1), WaterDepth.FromFeet(-0.1)));
}
