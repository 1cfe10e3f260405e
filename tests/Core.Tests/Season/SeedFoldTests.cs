using Watersown.Schedule;

namespace Watersown.Season;

public sealed class SeedFoldTests
{
    private static readonly DateTimeOffset Six = PlannedMorning.At(8, 6);

    [Fact]
    public void A_batch_drained_is_drained_from_then()
    {
        var batch = Fold(Marks.At(1, Six.AddMinutes(30), new BatchDrained("B-08"))).State.Batches.Single(b => b.Code == "B-08");
        Assert.Equal(48.5, (batch.Drained - batch.InSoak)!.Value.TotalHours, 9);
    }

    [Fact]
    public void Drained_before_it_went_in_is_asked_about_and_left_out()
    {
        var book = Fold(Marks.At(1, PlannedMorning.At(8, 5), new BatchDrained("B-09")));
        Assert.Equal([SeasonProblems.DrainedBeforeSoak], Kinds(book));
        Assert.Null(book.State.Batches.Single(b => b.Code == "B-09").Drained);
    }

    [Fact]
    public void A_new_batch_takes_its_variety_from_its_lot_and_its_seed_from_the_store()
    {
        var ground = PlannedMorning.State();
        ground = ground with { Lots = [.. ground.Lots.Select(l => l.Code == "E-1 lot 2" ? l with { InHand = DrySeed.FromPounds(40450) } : l)] };
        var book = SeasonFold.Fold(ground, Logbook.Empty.With(Marks.At(1, Six, new BatchInSoak("B-10") { Lot = "E-1 lot 2", Dry = DrySeed.FromPounds(15450), MeantFor = ["R4"] })), Six.AddHours(1));
        var batch = book.State.Batches.Single(b => b.Code == "B-10");
        Assert.Equal(("E-1", Six, "R4"), (batch.Variety, batch.InSoak, batch.MeantFor.Single()));
        Assert.Equal(25000, book.State.Lots.Single(l => l.Code == "E-1 lot 2").InHand!.Value.Pounds, 6);
        Assert.Equal(BatchPlace.InSoak, book.Batch("B-10")!.Place);
    }

    [Fact]
    public void A_batch_without_a_weight_is_kept_but_not_planned_with()
    {
        var book = Fold(Marks.At(1, Six, new BatchInSoak("B-10") { Lot = "E-1 lot 2" }));
        Assert.Equal([SeasonProblems.BatchUnclear], Kinds(book));
        Assert.DoesNotContain(book.State.Batches, b => b.Code == "B-10");
        Assert.NotNull(book.Batch("B-10"));
    }

    [Fact]
    public void More_seed_than_a_lot_had_is_asked_about()
    {
        var ground = PlannedMorning.State();
        ground = ground with { Lots = [.. ground.Lots.Select(l => l with { InHand = DrySeed.FromPounds(10_000) })] };
        var book = SeasonFold.Fold(ground, Logbook.Empty.With(Marks.At(1, Six, new BatchInSoak("B-10") { Lot = "E-1 lot 2", Dry = DrySeed.FromPounds(15450) })), Six.AddHours(1));
        Assert.Equal([SeasonProblems.SeedShort], Kinds(book));
    }

    [Fact]
    public void A_dumped_batch_is_gone()
    {
        var book = Fold(Marks.At(1, Six, new BatchDumped("B-07a", null)));
        Assert.DoesNotContain(book.State.Batches, b => b.Code == "B-07a");
        Assert.Equal((BatchPlace.Dumped, 15450), (book.Batch("B-07a")!.Place, Math.Round(book.Batch("B-07a")!.Dumped.Pounds, 6)));
    }

    [Fact]
    public void A_batch_used_on_another_field_leaves_the_rest()
    {
        // B-08 was for Tin Barn, 14,880 lb dry; Crooked Box takes 83 ac at 155 lb: 12,865, and 2,015 are stranded.
        var book = Fold(Marks.At(1, PlannedMorning.At(9, 7), new FieldSown("S2") { Batch = "B-08" }));
        Assert.Equal(2015, book.State.Batches.Single(b => b.Code == "B-08").Dry.Pounds, 6);
        Assert.Equal(12865, book.Batch("B-08")!.Sown.Pounds, 6);
        Assert.False(book.Batch("B-08")!.Assumed);
    }

    [Fact]
    public void The_only_batch_meant_for_a_field_is_taken_as_sown_on_it_and_it_is_said()
    {
        var book = Fold(Marks.At(1, PlannedMorning.At(9, 7), new StageReached("N3", FieldStage.Sown)));
        Assert.DoesNotContain(book.State.Batches, b => b.Code == "B-08");
        Assert.True(book.Batch("B-08")!.Assumed);
        Assert.Equal(BatchPlace.Sown, book.Batch("B-08")!.Place);
    }

    [Fact]
    public void The_loads_of_a_trailer_are_the_seed_of_its_batch()
    {
        Mark Load(int id, double pounds) => Marks.At(id, PlannedMorning.At(9, 7).AddMinutes(10 * id), new LoadGone("R4", id) { Trailer = "3", Soaked = SoakedSeed.FromPounds(pounds) });
        var book = Fold(Load(1, 2500), Load(2, 2500));
        Assert.Equal(4000, book.Batch("B-08")!.Sown.Pounds, 6);
        Assert.Equal([1, 2], book.Field("R4").Loads.Select(l => l.Number!.Value));
        // What the sowing says it took beats the sum of its loads.
        var said = Fold(Load(1, 2500), Load(2, 2500), Marks.At(9, PlannedMorning.At(9, 9), new FieldSown("R4") { Dry = DrySeed.FromPounds(14000) }));
        Assert.Equal(14000, said.Batch("B-08")!.Sown.Pounds, 6);
    }

    [Fact]
    public void A_weighed_trailer_weighs_its_batch()
    {
        var book = Fold(Marks.At(1, Six, new TrailerSeen("3") { Weighed = SoakedSeed.FromPounds(18100) }));
        Assert.Equal(18100, book.State.Batches.Single(b => b.Code == "B-08").Weighed!.Value.Pounds, 6);
        Assert.Equal(("B-08", "3"), (book.Trailer("3")!.Batch, book.Trailer("3")!.Number));
    }

    [Fact]
    public void A_trailer_told_to_hold_another_live_batch_is_asked_about()
    {
        var book = Fold(Marks.At(1, Six, new TrailerSeen("3") { Batch = "B-09", Place = "strip" }));
        Assert.Equal([SeasonProblems.TrailerHolds], Kinds(book));
        Assert.Empty(book.State.Batches.Single(b => b.Code == "B-08").Trailers);
        Assert.Equal(["5", "3"], book.State.Batches.Single(b => b.Code == "B-09").Trailers);
        // An empty one may well.
        Assert.Empty(Fold(Marks.At(1, Six, new BatchDumped("B-08", null)), Marks.At(2, Six.AddHours(1), new TrailerSeen("3") { Batch = "B-09" })).Doubts);
    }

    [Fact]
    public void What_is_left_in_the_trailer_beats_the_sum()
    {
        var book = Fold(
            Marks.At(1, PlannedMorning.At(9, 7), new FieldSown("N3")),
            Marks.At(2, PlannedMorning.At(9, 9), new SeedLeft("3", SoakedSeed.FromPounds(1900)) { Field = "N3" }));
        Assert.Equal(1520, book.Batch("B-08")!.Remaining!.Value.Pounds, 6);
        Assert.Equal(1900, book.Field("N3").Left!.Value.Pounds, 6);
    }

    [Fact]
    public void More_sown_than_went_in_is_asked_about() =>
        Assert.Equal([SeasonProblems.SeedOverdrawn], Kinds(Fold(Marks.At(1, PlannedMorning.At(9, 7), new FieldSown("N3") { Batch = "B-08", Dry = DrySeed.FromPounds(15_300) }))));

    [Fact]
    public void A_batch_that_nobody_soaked_is_kept_to_be_confirmed() =>
        Assert.Equal([SeasonProblems.UnknownBatch, SeasonProblems.BatchUnclear], Kinds(Fold(Marks.At(1, Six, new BatchDrained("B-99")))));

    [Fact]
    public void A_sowing_that_the_farm_knew_of_takes_no_seed_again() =>
        Assert.Equal(14880, Fold(Marks.At(1, PlannedMorning.At(2, 7), new FieldSown("N1") { Batch = "B-08" })).State.Batches.Single(b => b.Code == "B-08").Dry.Pounds, 6);

    private static IEnumerable<ProblemKind> Kinds(SeasonBook book) => book.Doubts.Select(d => d.Problem.Kind);

    private static SeasonBook Fold(params Mark[] marks) => SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(marks), PlannedMorning.At(12, 0));
}
