using CsCheck;

namespace Watersown.Season.Troubles;

public sealed class TrailerCheckTests
{
    private static readonly DateTimeOffset Now = PlannedMorning.At(10, 5, 50);

    [Fact]
    public void Every_batch_against_every_field_stops_where_varieties_differ_and_passes_where_they_are_alike()
    {
        var book = Book();
        var pairs = 0;
        foreach (var batch in book.State.Batches)
        {
            foreach (var field in book.State.Fields)
            {
                var check = TrailerCheck.Of(book, null, batch.Trailers[0], field.Code);
                // The rows of the farm, not the code under test, say which seed is which.
                Assert.Equal(batch.Variety == field.Variety ? TrailerVerdict.Passes : TrailerVerdict.Stops, check.Verdict);
                pairs++;
            }
        }

        Assert.Equal(4 * 28, pairs);
    }

    [Fact]
    public void Unlike_words_always_stop_like_ones_always_pass_and_a_missing_one_never_passes() =>
        Gen.Select(Gen.String[Gen.Char['A', 'I'], 1, 3], Gen.String[Gen.Char['A', 'I'], 1, 3]).Sample((seed, wanted) =>
        {
            Assert.Equal(seed == wanted ? TrailerVerdict.Passes : TrailerVerdict.Stops, TrailerCheck.Compare(seed, wanted));
            Assert.Equal(TrailerVerdict.Passes, TrailerCheck.Compare(" " + seed.ToLowerInvariant(), seed));
            Assert.All(new[] { null, "", "  " }, nothing => Assert.Equal(TrailerVerdict.ToConfirm, TrailerCheck.Compare(nothing, wanted)));
            Assert.All(new[] { null, "", "  " }, nothing => Assert.Equal(TrailerVerdict.ToConfirm, TrailerCheck.Compare(seed, nothing)));
        });

    [Fact]
    public void Trailer_5_for_R4_stops_and_offers_N4()
    {
        var check = TrailerCheck.Of(Book(), PlannedMorning.Plan(), "5", "R4");
        Assert.Equal((TrailerVerdict.Stops, "B-09", "E-2", "E-1", "N4"), (check.Verdict, check.Batch, check.Seed, check.Wanted, check.Fits[0]));
        Assert.True(check.IsHeld);
    }

    [Theory]
    [InlineData("9", "R4", TrailerGap.Trailer)]
    [InlineData("12", "R4", TrailerGap.Seed)]
    [InlineData("5", "Z9", TrailerGap.Field)]
    public void What_nobody_told_is_to_be_confirmed_and_says_what_is_missing(string trailer, string field, TrailerGap gap)
    {
        var check = TrailerCheck.Of(Book(new TrailerSeen("12") { Place = "gate" }), null, trailer, field);
        Assert.Equal((TrailerVerdict.ToConfirm, gap), (check.Verdict, check.Gap));
    }

    [Fact]
    public void An_override_holds_for_that_trailer_field_and_seed_only_and_can_be_taken_back()
    {
        var given = new Overridden("E-2 seed for an E-1 field", "Odalie Marrowfen", "landlord agreed") { Trailer = "5", Field = "R4", Batch = "B-09" };
        Assert.Equal("landlord agreed", TrailerCheck.Of(Book(given), null, "5", "R4").Override?.Reason);
        Assert.False(TrailerCheck.Of(Book(given), null, "5", "R4").IsHeld);
        Assert.True(TrailerCheck.Of(Book(given), null, "5", "R5").IsHeld);
        Assert.True(TrailerCheck.Of(Book(given with { Batch = "B-10" }), null, "5", "R4").IsHeld);
        var log = Logbook.Empty.With([Marks.At(1, Now, given), Marks.At(2, Now, new Withdrawn()).Replacing(1)]);
        Assert.True(TrailerCheck.Of(SeasonFold.Fold(PlannedMorning.State(), log, Now), null, "5", "R4").IsHeld);
    }

    [Fact]
    public void Right_variety_meant_for_another_field_passes_and_says_so() =>
        Assert.Equal(["N3"], TrailerCheck.Of(Book(), null, "3", "R4").MeantFor);

    private static SeasonBook Book(params MarkFact[] facts) =>
        SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(facts.Select((f, i) => Marks.At(i + 1, Now, f))), Now);
}
