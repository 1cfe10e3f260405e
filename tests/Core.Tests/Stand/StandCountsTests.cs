using Watersown.Reckon;

namespace Watersown.Stand;

public sealed class StandCountsTests
{
    private static readonly Datum WindBlown = Datum.ListOf(
    [
        Datum.Row(("name", "upwind"), ("acres", 30), ("counts", Ask.List(7, 5, 9, 6, 8, 7))),
        Datum.Row(("name", "middle"), ("acres", 50), ("counts", Ask.List(17, 21, 15, 18, 16, 15))),
        Datum.Row(("name", "lee"), ("acres", 32), ("counts", Ask.List(41, 38, 44, 40, 43, 40))),
    ]);

    // Arithmetic by hand: (30 × 7 + 50 × 17 + 32 × 41) / 112 = 21.18. The plain mean of the zones, 21.67, is wrong.
    [Fact]
    public void A_field_that_the_wind_sorted_is_weighted_by_its_land()
    {
        var outcome = Ask.For("stand-count", ("zones", WindBlown), ("ring_ft2", 1));
        Assert.Equal(21.18, outcome.Number("mean_ft2"), 0.005);
        Assert.Equal([7.0, 17.0, 41.0], outcome.Rows("zones").Select(z => Math.Round(z.Number("mean_ft2"), 9)));
    }

    // By hand: s²/n of the zones 2/6, 5.2/6, 4.8/6; weights 30, 50, 32 over 112: standard error 0.5118, degrees of freedom
    // 9.90 (Satterthwaite), t 2.2315 between the printed 2.262 (9) and 2.228 (10). Zones with t(5) = 2.571.
    [Fact]
    public void The_range_comes_from_the_spread_inside_the_zones()
    {
        var outcome = Ask.For("stand-count", ("zones", WindBlown), ("ring_ft2", 1));
        Assert.Equal(21.1786 - (2.2315 * 0.51182), outcome.Number("low_ft2"), 0.003);
        Assert.Equal(21.1786 + (2.2315 * 0.51182), outcome.Number("high_ft2"), 0.003);
        var zones = outcome.Rows("zones");
        Assert.Equal(7 - (2.571 * Math.Sqrt(2.0 / 6)), zones[0].Number("low_ft2"), 0.001);
        Assert.Equal(17 + (2.571 * Math.Sqrt(5.2 / 6)), zones[1].Number("high_ft2"), 0.001);
        Assert.Equal(41 - (2.571 * Math.Sqrt(4.8 / 6)), zones[2].Number("low_ft2"), 0.001);
        Assert.Equal(9.90, ((Datum.Number)outcome.Value.Working.Lines.Single(l => l.Symbol == "f").Value).Value, 0.01);
    }

    [Fact]
    public void A_thin_zone_is_named_though_the_mean_looks_fine()
    {
        var cautions = Ask.For("stand-count", ("zones", WindBlown), ("ring_ft2", 1)).Value.Cautions;
        Assert.Contains(cautions, c => c.StartsWith("upwind (30 ac) stands at 7 plants/ft²", StringComparison.Ordinal));
        Assert.DoesNotContain(cautions, c => c.StartsWith("middle", StringComparison.Ordinal) || c.StartsWith("lee", StringComparison.Ordinal));
    }

    // Twenty rings with mean 18 and standard deviation 9: 2.093 × 9 / √20 = 4.2 (t from the printed table), said as 18 (14 to 22).
    [Fact]
    public void Twenty_rings_of_a_ragged_stand_leave_four_plants_of_doubt()
    {
        var off = Math.Sqrt(81.0 * 19 / 20);
        var counts = Datum.ListOf(Enumerable.Range(0, 20).Select(i => i % 2 == 0 ? 18 - off : 18 + off));
        var outcome = Ask.For("stand-count", ("zones", Datum.ListOf([Datum.Row(("acres", 100), ("counts", counts))])), ("ring_ft2", 1));
        Assert.Equal(18, outcome.Number("mean_ft2"), 1e-9);
        Assert.Equal(18 - 4.212, outcome.Number("low_ft2"), 0.001);
        Assert.Equal(18 + 4.212, outcome.Number("high_ft2"), 0.001);
    }

    [Fact]
    public void A_zone_with_one_ring_has_no_range_and_says_so()
    {
        var outcome = Ask.For("stand-count",
            ("zones", Datum.ListOf([Datum.Row(("acres", 60), ("counts", Ask.List(20, 22, 18))), Datum.Row(("acres", 40), ("counts", Ask.List(10)))])), ("ring_ft2", 1));
        Assert.Equal(16, outcome.Number("mean_ft2"), 1e-9);
        Assert.Equal(Datum.None, outcome.Answer("low_ft2"));
        Assert.Equal(Datum.None, outcome.Answer("high_ft2"));
        var zones = outcome.Rows("zones");
        Assert.IsType<Datum.Number>(zones[0]["low_ft2"]);
        Assert.Equal(Datum.None, zones[1]["low_ft2"]);
        Assert.Contains(outcome.Value.Cautions, c => c.StartsWith("zone 2 has one ring", StringComparison.Ordinal));
    }

    [Fact]
    public void Rings_that_all_agree_leave_no_width_at_all()
    {
        var outcome = Ask.For("stand-count", ("zones", Datum.ListOf([Datum.Row(("acres", 60), ("counts", Ask.List(20, 20, 20)))])), ("ring_ft2", 1));
        Assert.Equal(20, outcome.Number("low_ft2"), 1e-9);
        Assert.Equal(20, outcome.Number("high_ft2"), 1e-9);
    }

    [Fact]
    public void A_range_does_not_reach_below_an_empty_field() =>
        Assert.Equal(0, Ask.For("stand-count", ("zones", Datum.ListOf([Datum.Row(("acres", 60), ("counts", Ask.List(0, 9)))])), ("ring_ft2", 1)).Number("low_ft2"), 1e-12);

    [Fact]
    public void Every_fault_is_told_at_its_zone() =>
        Ask.For("stand-count", ("zones", Datum.ListOf([Datum.Row(("acres", 0), ("counts", Ask.List(3, -1))), Datum.Row(("acres", 5), ("count", 4))])), ("ring_ft2", 0)).Refuses(
            (ReckonProblems.NotAbove, "zones #1 acres"),
            (ReckonProblems.TooSmall, "zones #1 counts"),
            (ReckonProblems.UnknownKey, "zones #2 count"),
            (ReckonProblems.MissingKey, "zones #2 counts"),
            (ReckonProblems.TooSmall, "ring_ft2"));
}
