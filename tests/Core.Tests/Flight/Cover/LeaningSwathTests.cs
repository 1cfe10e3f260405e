using Watersown.Shapes;

namespace Watersown.Flight.Cover;

public sealed class LeaningSwathTests
{
    private static CoverShares Shares(ImmutableArray<ImmutableArray<PlanePoint>> runs, double right) =>
        SomeFlight.Cover(SomeFlight.Rectangle(100, 200), runs, 20, new CoverOptions { Right = Length.FromMeters(right) }).Shares;

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(-4)]
    [InlineData(15)]
    public void A_swath_that_leans_sweeps_what_a_straight_one_would_from_lines_moved_by_as_much(double right)
    {
        // All flown north, so that the right is east: lines so far west of where the swath's middle is meant to lie.
        var there = Shares(SomeFlight.North(200, 10 - right, 30 - right, 53 - right, 70 - right, 90 - right), right);
        var middle = Shares(SomeFlight.North(200, 10, 30, 53, 70, 90), 0);
        Assert.Equal((middle.Skipped, middle.Single, middle.Overlapped, middle.Excess), (there.Skipped, there.Single, there.Overlapped, there.Excess));
        Assert.Equal(middle.Swept.SquareMeters, there.Swept.SquareMeters, 1e-6);
        Assert.Equal(3, there.SkipShare.Percent, 0.1);
    }

    [Fact]
    public void Flown_back_and_forth_a_leaning_swath_leaves_twice_its_lean_at_every_other_seam()
    {
        // Lines 20 m apart, the swath 2 m right of each: right sides meet with 4 m doubled, left sides with 4 m bare. Of the four
        // seams two are of each kind; the outermost passes leave 2 m of the field's west side bare and sweep 2 m off its east side.
        var runs = SomeFlight.North(200, 10, 30, 50, 70, 90).Select((r, i) => i % 2 == 0 ? r : [.. r.Reverse()]).ToImmutableArray();
        var shares = Shares(runs, 2);
        Assert.Equal((2 + 4 + 4) / 100.0, shares.SkipShare.Share, 0.001);
        Assert.Equal((4 + 4) / 100.0, shares.OverlapShare.Share, 0.001);
    }

    [Fact]
    public void Exact_areas_are_those_of_the_rectangles()
    {
        // A field 100 m wide under swaths of 20 m about 10, 30, 53, 70 and 90 m: 3 m bare, 3 m twice, the rest once.
        var outlines = SwathOutlines.Of(SomeFlight.North(200, 10, 30, 53, 70, 90), Length.FromMeters(20), Length.Zero);
        var areas = LayerAreas.Of(SomeFlight.Rectangle(100, 200), outlines);
        Assert.Equal(600, areas.None.SquareMeters, 1e-6);
        Assert.Equal(600, areas.More.SquareMeters, 1e-6);
        Assert.Equal(18_800, areas.Once.SquareMeters, 1e-6);
        Assert.Equal(20_000, LayerAreas.Of(SomeFlight.Rectangle(100, 200), []).None.SquareMeters, 1e-6);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(33)]
    [InlineData(120)]
    public void Cells_count_what_the_outlines_hold_within_the_error_they_tell(double heading)
    {
        var land = SomeFlight.Rectangle(300, 200);
        var runs = SomeFlight.Logged(land, 15, heading, 0.4);
        var shares = SomeFlight.Cover(land, runs, 15).Shares;
        var exact = LayerAreas.Of(land, SwathOutlines.Of(runs, Length.FromMeters(15), Length.Zero));
        Assert.Equal(exact.None.SquareMeters, shares.Skipped.Area.SquareMeters, shares.Skipped.Error.SquareMeters);
        Assert.Equal(exact.Once.SquareMeters, shares.Single.Area.SquareMeters, shares.Single.Error.SquareMeters);
        Assert.Equal(exact.More.SquareMeters, shares.Overlapped.Area.SquareMeters, shares.Overlapped.Error.SquareMeters);
    }
}
