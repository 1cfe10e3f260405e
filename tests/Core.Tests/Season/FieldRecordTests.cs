using Watersown.Growth;
using Watersown.Season.FieldRecords;
using Watersown.Wording;

namespace Watersown.Season;

public sealed class FieldRecordTests
{
    [Fact]
    public void A_record_says_what_is_missing_until_nothing_is()
    {
        var before = Of(Fold(), "N3");
        Assert.Contains(RecordGap.Sown, before.Missing);
        Assert.Contains(RecordGap.Tickets, before.Missing);
        Assert.False(before.Complete);
        var after = Of(Fold(Whole()), "N3");
        Assert.Empty(after.Missing);
        Assert.True(after.Complete);
    }

    [Fact]
    public void The_page_says_complete_only_where_it_is_and_promises_nothing()
    {
        var (open, whole) = (Page(Fold()), Page(Fold(Whole())));
        Assert.Contains("MISSING", open, StringComparison.Ordinal);
        Assert.Contains("COMPLETE", whole, StringComparison.Ordinal);
        foreach (var word in (string[])["eligible", "covered", "insured for", "you may"]) Assert.DoesNotContain(word, open + whole, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("ring the agent", whole, StringComparison.Ordinal);
        Assert.Contains("14,880", whole, StringComparison.Ordinal);
    }

    [Fact]
    public void Land_sown_again_is_listed_and_not_added()
    {
        var book = Fold(
            new FieldSown("N3") { Land = Area.FromAcres(60), Dry = DrySeed.FromPounds(9000) },
            new FieldSown("N3") { Land = Area.FromAcres(20), Dry = DrySeed.FromPounds(1000), Resow = true });
        var days = SownDays.Of(book);
        var mine = days.Where(d => d.Field == "N3").ToList();
        Assert.Equal([60, 20], mine.Select(d => Math.Round(d.Land.Acres, 6)));
        Assert.Equal(mine[0].Together, mine[1].Together);
        Assert.Equal(days.Where(d => d.Sowing is not { Resow: true }).Sum(d => d.Land.Acres), days[^1].Together.Acres, 1e-6);
    }

    [Fact]
    public void Seed_of_a_lot_cannot_be_more_at_the_end_than_at_the_beginning()
    {
        Assert.All(SeedChain.All(Fold()), c => Assert.True(c.Holds, c.ToString()));
        var chain = SeedChain.All(Fold(new FieldSown("N3") { Batch = "B-08", Dry = DrySeed.FromPounds(40_000) })).Single(c => c.Lot == "E-1 lot 2");
        Assert.True(chain.SpentTooMuch);
        var weighed = SeedChain.All(Fold(new TrailerSeen("3") { Batch = "B-08", Weighed = SoakedSeed.FromPounds(90_000) })).Single(c => c.Lot == "E-1 lot 2");
        Assert.True(weighed.LoadedTooMuch);
    }

    private static MarkFact[] Whole() =>
    [
        new FieldCorrected("N3") { Certified = Area.FromAcres(95.8) },
        new FieldSown("N3") { Batch = "B-08", Dry = DrySeed.FromPounds(14_880) },
        new RingsCounted("N3", "middle", Area.FromAcres(96), [21, 18, 24, 20]),
        new StageSeen("N3", new StagePoint(CropStage.Heading)),
        new BoardsOut("N3"),
        new FieldCut("N3"),
        new GrainTicketed("1", Mass.FromPounds(1_000_000), Mass.FromPounds(20_000), Fraction.FromPercent(20)) { Variety = "E-1", Parts = [new("N3", Fraction.One)] },
    ];

    private static string Page(SeasonBook book) => PageText.Of(RecordPage.Of(PlannedMorning.Plan(), book, Of(book, "N3"), Language.English));

    private static FieldRecord Of(SeasonBook book, string code) => FieldRecord.All(book).Single(r => r.Field.Code == code);

    private static SeasonBook Fold(params MarkFact[] facts) =>
        SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(facts.Select((f, i) => Marks.At(i + 1, PlannedMorning.At(9, 5).AddDays(i * 16), f))), new DateTimeOffset(2026, 10, 30, 5, 0, 0, TimeSpan.FromHours(-7)));
}
