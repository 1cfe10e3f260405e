using Watersown.Season.Crop;
using Watersown.Stand;

namespace Watersown.Season;

/// <summary>S1 sown on Wednesday 6 May, wind three hours later; rings by zone on 18 May.</summary>
public sealed class StandBoardTests
{
    private static readonly DateTimeOffset Monday = PlannedMorning.At(18, 8, 0);

    private static readonly MarkFact[] Rings =
    [
        new RingsCounted("S1", "upwind", Area.FromAcres(30), [7, 5, 9, 6, 8, 7]),
        new RingsCounted("S1", "middle", Area.FromAcres(50), [17, 21, 15, 18, 16, 15]),
        new RingsCounted("S1", "lee", Area.FromAcres(32), [41, 38, 44, 40, 43, 40]),
    ];

    private static SeasonBook Book(params MarkFact[] facts) =>
        SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With([.. facts.Select((f, i) => Marks.At(i + 1, PlannedMorning.At(18, 7, i), f))]), Monday);

    private static StandBoard Board(SeasonBook book) => StandBoards.Of(book, book.State.Farm.Field("S1"), Fraction.FromPercent(20))!;

    // (210 + 850 + 1,312) / 112 = 21.18; the mean of the three, 21.67, is not the field's.
    [Fact]
    public void Zones_are_weighted_by_land_and_the_thin_one_is_named()
    {
        var board = Board(Book(Rings));
        Assert.Equal([7.0, 17.0, 41.0], board.Zones.OrderBy(z => z.Stand.Mean.PerSquareFoot).Select(z => Math.Round(z.Stand.Mean.PerSquareFoot, 9)));
        Assert.Equal(2372.0 / 112, board.Whole.Mean.PerSquareFoot, 1e-9);
        Assert.Equal(65.0 / 3, board.Plain.PerSquareFoot, 1e-9);
        Assert.True(board.Hides);
        Assert.Equal("upwind", Assert.Single(board.Zones, z => z.Thin).Zone.Name);
        Assert.False(board.LandOff);
    }

    // (t s / (0.2 m))² with t(0.975, 5) = 2.571: upwind s² = 2, m = 7: 6.74, so 7 in all, one more; lee is enough.
    [Fact]
    public void Rings_to_go_are_those_that_the_precision_asks_for()
    {
        var board = Board(Book(Rings));
        Assert.Equal([("lee", 0L), ("middle", 0L), ("upwind", 1L)], board.Zones.Select(z => (z.Zone.Name, z.ToGo!.Value)));
        Assert.Null(Assert.Single(Board(Book(new RingsCounted("S1", "upwind", Area.FromAcres(30), [7]))).Zones).ToGo);
    }

    [Fact]
    public void A_larger_ring_counts_for_its_own_land_and_untold_land_is_shared_out()
    {
        var book = Book(new RingsCounted("S1", "upwind", Area.FromAcres(30), [70, 72]) { Ring = Area.FromSquareFeet(10) }, new RingsCounted("S1", "rest", null, [20, 22]));
        var board = Board(book);
        Assert.Equal(7.1, Assert.Single(board.Zones, z => z.Zone.Name == "upwind").Stand.Mean.PerSquareFoot, 1e-9);
        var rest = Assert.Single(board.Zones, z => z.Zone.Name == "rest");
        Assert.Equal((82, true), (Math.Round(rest.Zone.Land.Acres, 9), rest.LandGuessed));
    }

    [Fact]
    public void Zones_that_do_not_add_up_to_the_field_are_said() =>
        Assert.True(Board(Book(new RingsCounted("S1", "upwind", Area.FromAcres(30), [7, 8]), new RingsCounted("S1", "lee", Area.FromAcres(40), [30, 31]))).LandOff);

    [Fact]
    public void No_rings_no_stand() => Assert.Null(StandBoards.Of(Book(new RingsCounted("S1", "upwind", null, [])), PlannedMorning.State().Farm.Field("S1"), Fraction.FromPercent(20)));

    // By hand, California: f(7) = 0.72 + (2/3)(0.14) = 0.81333, f(18) = 0.982; 30 ac × 85 × 0.168667 × $18 = $7,741.80;
    // sowing 30 × 95 = $2,850; 12 days at 0.2 cwt × $18 on 30 ac = $1,296: + $3,595.80. At 1 cwt a day the delay is $6,480: − $1,588.20.
    [Fact]
    public void Only_the_thin_zone_is_sown_again_and_the_published_trials_disagree_in_the_open()
    {
        var book = Book(Rings);
        var ask = new OverseedAsk(PlantDensity.FromPerSquareFoot(18), Mass.FromHundredweights(85), Money.FromDollars(95m), new DateOnly(2026, 5, 18));
        var zone = Assert.Single(OverseedBoards.Of(Board(book), ask, new DateOnly(2026, 5, 6), book.State, own: []));
        Assert.Equal(("upwind", 30.0, 12), (zone.Zone.Zone.Name, Math.Round(zone.Zone.Zone.Land.Acres, 9), zone.DaysLate));
        var california = zone.Views.First(v => v.Region == ResponseRegion.California);
        Assert.Equal(3595.80, (double)california.Trials.Gain.Amount, 0.05);
        Assert.Equal(-1588.20, (double)california.Saying.Gain.Amount, 0.05);
        Assert.False(california.Agree);
        // Flat above 3.7 plants/ft² in Australia: nothing is gained, both costs are lost.
        Assert.Equal(-4146, (double)zone.Views.First(v => v.Region == ResponseRegion.Australia).Trials.Gain.Amount, 0.05);
        Assert.False(zone.AllAgree);
        Assert.Equal(3, zone.Views.Length);
    }

    [Fact]
    public void A_response_of_the_farms_own_stands_beside_the_published_ones_and_one_that_falls_is_not_taken()
    {
        MarkFact Own(double later) => new StandResponseSet([new(PlantDensity.FromPerSquareFoot(0), Fraction.Zero), new(PlantDensity.FromPerSquareFoot(10), Fraction.FromPercent(90)), new(PlantDensity.FromPerSquareFoot(20), Fraction.FromPercent(later))]);
        var book = Book([.. Rings, Own(100)]);
        var ask = new OverseedAsk(PlantDensity.FromPerSquareFoot(18), Mass.FromHundredweights(85), Money.FromDollars(95m), new DateOnly(2026, 5, 18));
        Assert.Null(OverseedBoards.Of(Board(book), ask, new DateOnly(2026, 5, 6), book.State, book.Response)[0].Views[^1].Region);
        Assert.Empty(Book(Own(80)).Response);
    }

    // Optima as published: 25 (California, 2024), 15 to 20 (Mid-South, 2007 and 2017), no difference from 40 to 700 plants/m² (New South Wales).
    [Fact]
    public void Published_responses_are_full_at_their_published_optimum_and_not_before()
    {
        Assert.Equal(1, Share(ResponseRegion.California, 25));
        Assert.Equal(1, Share(ResponseRegion.MidSouth, 15));
        Assert.True(Share(ResponseRegion.California, 15) < 1 && Share(ResponseRegion.MidSouth, 14) < 1);
        Assert.Equal(1, Share(ResponseRegion.Australia, 40 / 10.7639));
        Assert.Equal(12.0 / 14.9, Share(ResponseRegion.Australia, 30 / 10.7639), 0.01);

        static double Share(ResponseRegion region, double stand) => Math.Round(Overseeding.ShareAt(PublishedResponses.Of(region), PlantDensity.FromPerSquareFoot(stand)).Share, 4);
    }
}
