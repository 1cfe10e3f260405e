using Watersown.Shapes;

namespace Watersown.Flight.Cover;

public sealed class CoverageTests
{
    private static readonly ImmutableArray<PlanePart> Strip = SomeFlight.Rectangle(100, 200);

    // Lines at 10, 30, 53, 70 and 90 m with a swath of 20 m leave 40 to 43 m bare and sow 60 to 63 m twice: arithmetic.
    [Fact]
    public void A_pass_three_meters_off_skips_three_meters_and_overlaps_three()
    {
        var cover = SomeFlight.Cover(Strip, SomeFlight.North(200, 10, 30, 53, 70, 90), 20);
        Assert.Equal(3, cover.Shares.SkipShare.Percent, 0.1);
        Assert.Equal(94, cover.Shares.SingleShare.Percent, 0.1);
        Assert.Equal(3, cover.Shares.OverlapShare.Percent, 0.1);
        Assert.Equal(3, 100 * cover.Shares.ExcessRatio, 0.1);
        Assert.Equal(0, cover.Shares.OffFieldShare.Percent, 0.01);
        Assert.Equal(20_000, cover.Shares.Field.SquareMeters, 1e-6);
        Assert.Equal(600, cover.Shares.Skipped.Area.SquareMeters, 1e-6);

        // Two long sides of 200 m and two short ones of 3 m, a quarter of a meter to each.
        Assert.Equal(406 * 0.25, cover.Shares.Skipped.Error.SquareMeters, 1e-6);
    }

    [Fact]
    public void The_skip_is_a_place_to_walk_to_between_the_two_passes_that_left_it()
    {
        var place = Assert.Single(SomeFlight.Cover(Strip, SomeFlight.North(200, 10, 30, 53, 70, 90), 20).ThinPlaces);
        Assert.Equal(1, place.Rank);
        Assert.Equal(600, place.Area.SquareMeters, 1e-6);
        Assert.Equal(41.5, place.Middle.East, 1e-6);
        Assert.Equal(100, place.Middle.North, 1e-6);
        Assert.Equal(0, place.Heading.Degrees, 1e-6);
        Assert.Equal(200, place.Long.Meters, 1e-6);
        Assert.Equal(3, place.Wide.Meters, 1e-6);
        Assert.Equal([1, 2], place.NearestRuns.Order());
    }

    [Fact]
    public void Bare_pieces_a_step_apart_are_one_place_and_far_ones_are_two()
    {
        // Bare ground 20 m wide with a bridge flown across it.
        static ImmutableArray<ImmutableArray<PlanePoint>> Bridged(double wide) => [.. SomeFlight.North(200, 10, 30, 70, 90), [new(50, 90), new(50, 90 + wide)]];
        Assert.Equal([198 * 20], SomeFlight.Cover(Strip, Bridged(2), 20).ThinPlaces.Select(p => Math.Round(p.Area.SquareMeters)));
        Assert.Equal([100 * 20, 90 * 20], SomeFlight.Cover(Strip, Bridged(10), 20).ThinPlaces.Select(p => Math.Round(p.Area.SquareMeters)));
    }

    [Fact]
    public void Slivers_are_counted_but_nobody_is_sent_to_them()
    {
        var cover = SomeFlight.Cover(Strip, [.. SomeFlight.North(200, 10, 30, 50, 70), [new(90, 0), new(90, 199)]], 20);
        Assert.Equal(20, cover.Shares.Skipped.Area.SquareMeters, 1e-6);
        Assert.Single(cover.ThinPlaces);
        Assert.Empty(SomeFlight.Cover(Strip, [.. SomeFlight.North(200, 10, 30, 50, 70), [new(90, 0), new(90, 199)]], 20, new CoverOptions { LeastPlace = Area.FromSquareMeters(21) }).ThinPlaces);
    }

    [Fact]
    public void What_is_flown_beyond_the_edge_is_off_the_field()
    {
        ImmutableArray<ImmutableArray<PlanePoint>> runs = [.. new double[] { 10, 30, 50, 70, 90 }.Select(e => (ImmutableArray<PlanePoint>)[new PlanePoint(e, -50), new PlanePoint(e, 200)])];
        var shares = SomeFlight.Cover(Strip, runs, 20).Shares;
        Assert.Equal(25_000, shares.Swept.SquareMeters, 1e-6);
        Assert.Equal(5_000, shares.Outside.Area.SquareMeters, 1e-6);
        Assert.Equal(20, shares.OffFieldShare.Percent, 1e-9);
    }

    [Fact]
    public void A_hole_is_no_part_of_the_field()
    {
        ImmutableArray<PlanePart> pond = [new PlanePart(Strip[0].Outer, [[new(40, 80), new(60, 80), new(60, 120), new(40, 120)]])];
        var cover = SomeFlight.Cover(pond, SomeFlight.North(200, 10, 30, 70, 90), 20);
        Assert.Equal(20_000 - 800, cover.Shares.Field.SquareMeters, 1e-6);
        Assert.Equal((200 * 20) - 800, cover.Shares.Skipped.Area.SquareMeters, 1e-6);
        Assert.False(cover.IsInside(100, 200));
        Assert.True(cover.IsInside(100, 100));
        Assert.Equal(0, cover.CountAt(100, 100));
        Assert.Equal(1, cover.CountAt(20, 100));
    }

    [Fact]
    public void Fixes_where_a_line_bends_back_within_the_swath_are_left_out_and_the_ground_counts_once()
    {
        ImmutableArray<PlanePoint> jumpy = [.. Enumerable.Range(0, 401).Select(i => new PlanePoint(50 + (i % 2), i * 0.5))];
        var cover = SomeFlight.Cover(Strip, [jumpy], 20);
        Assert.InRange(cover.FixesLeftOut, 1, 400);
        Assert.Equal(20, cover.Shares.SingleShare.Percent, 2.0);
        Assert.Equal(0, cover.Shares.OverlapShare.Percent, 0.2);
    }

    [Fact]
    public void A_run_that_turns_round_covers_the_ground_again()
    {
        ImmutableArray<PlanePoint> there = [new(50, 0), new(50, 100), new(50, 200), new(50, 100.5), new(50, 0)];
        var shares = SomeFlight.Cover(Strip, [there], 20).Shares;
        Assert.Equal(20, shares.OverlapShare.Percent, 0.1);
        Assert.Equal(80, shares.SkipShare.Percent, 0.1);
    }

    [Fact]
    public void Nothing_flown_is_refused() =>
        Assert.Equal([CoverProblems.NothingFlown], Coverage.Of(Strip, [[new(1, 1)], []], Length.FromMeters(20)).Problems.Select(p => p.Kind));

    [Fact]
    public void More_cells_than_are_held_are_refused() =>
        Assert.Equal([CoverProblems.TooManyCells], Coverage.Of(SomeFlight.Rectangle(5000, 5000), SomeFlight.North(10, 5), Length.FromMeters(20)).Problems.Select(p => p.Kind));

    [Fact]
    public void Cells_that_hide_the_swath_are_refused() =>
        Assert.Equal([CoverProblems.CellTooLarge], Coverage.Of(Strip, SomeFlight.North(10, 5), Length.FromMeters(20), new CoverOptions { Cell = Length.FromMeters(6) }).Problems.Select(p => p.Kind));

    [Fact]
    public void A_field_too_small_for_a_cell_is_refused() =>
        Assert.Equal([CoverProblems.NoLand], Coverage.Of(SomeFlight.Rectangle(0.1, 0.1), SomeFlight.North(10, 5), Length.FromMeters(20)).Problems.Select(p => p.Kind));

    [Fact]
    public void Ground_flown_over_more_often_than_a_count_holds_is_refused()
    {
        Assert.Equal([CoverProblems.FlownTooOften], Coverage.Of(Strip, SomeFlight.North(200, Enumerable.Repeat(50.0, 256)), Length.FromMeters(20)).Problems.Select(p => p.Kind));
        Assert.Equal(255, SomeFlight.Cover(Strip, SomeFlight.North(200, Enumerable.Repeat(50.0, 255)), 20).CountAt(100, 100));

        // As many passes, but no cell under more than half of them.
        Assert.Equal(150, SomeFlight.Cover(Strip, SomeFlight.North(200, Enumerable.Range(0, 300).Select(i => i % 2 == 0 ? 10.0 : 90.0)), 20).CountAt(20, 100));
    }
}
