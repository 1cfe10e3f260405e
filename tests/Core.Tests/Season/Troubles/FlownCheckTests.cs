using Watersown.Land;

namespace Watersown.Season.Troubles;

public sealed class FlownCheckTests
{
    private static readonly DateTimeOffset Monday = PlannedMorning.At(11, 9, 0);

    private static TrackLooked Look => new("S3", Length.FromFeet(50), Area.FromAcres(137))
    {
        Skip = Fraction.FromPercent(100 * 10.13 / 137),
        SkipError = Fraction.FromPercent(0.2),
        Overlap = Fraction.Zero,
        OffField = Fraction.Zero,
        Passes = 41,
        Places = [new BarePlace(new GeoPoint(39.2, -121.9), Area.FromAcres(10.13), Bearing.FromDegrees(0))],
    };

    private static SeasonBook Book(params MarkFact[] facts)
    {
        MarkFact[] sowing = [new TrailerSeen("6") { Field = "S3", Weighed = SoakedSeed.FromPounds(25687) }, new FieldSown("S3"), new SeedLeft("6", SoakedSeed.FromPounds(1900)) { Field = "S3" }];
        var log = Logbook.Empty.With([.. sowing.Concat(facts).Select((f, i) => Marks.At(i + 1, PlannedMorning.At(11, 5, i), f))]);
        return SeasonFold.Fold(PlannedMorning.State(), log, Monday);
    }

    [Fact]
    public void The_skip_of_the_track_is_the_seed_that_was_left()
    {
        var matches = FlownChecks.Of(Book(Look, new FlightBilled("S3") { Land = Area.FromAcres(137) }), "S3")!;
        Assert.True(matches.Missing!.Agree);
        Assert.False(matches.Billed!.Agree);
        Assert.Equal(10.13, matches.Billed.Gap.Acres, 0.01);
    }

    [Fact]
    public void Bare_places_are_on_the_list_ten_days_after_sowing_until_somebody_looked()
    {
        var due = Assert.Single(ScoutList.Of(Book(Look), null), d => d.Reason == ScoutReason.Skipped);
        Assert.Equal(("S3", new DateOnly(2026, 5, 21)), (due.Field.Code, due.Due));
        Assert.Equal(new GeoPoint(39.2, -121.9), due.Place);
        Assert.Equal(0, due.Run!.Value.Degrees);
    }

    [Fact]
    public void A_track_taken_back_says_nothing()
    {
        Assert.Null(FlownChecks.Of(Book(), "S3"));
        var log = Logbook.Empty.With([Marks.At(1, PlannedMorning.At(11, 5, 0), Look), Marks.At(2, PlannedMorning.At(11, 6, 0), new Withdrawn()).Replacing(1)]);
        var book = SeasonFold.Fold(PlannedMorning.State(), log, Monday);
        Assert.Null(FlownChecks.Of(book, "S3"));
        Assert.DoesNotContain(ScoutList.Of(book, null), d => d.Reason == ScoutReason.Skipped);
    }
}
