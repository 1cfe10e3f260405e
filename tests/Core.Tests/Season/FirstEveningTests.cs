using Watersown.Schedule;
using Watersown.Season.Ground;

namespace Watersown.Season;

public sealed class FirstEveningTests
{
    private static readonly DateTimeOffset Now = PlannedMorning.Now;

    [Fact]
    public void Soaking_means_all_seed_of_the_field_in_a_batch_named_after_it()
    {
        var book = Book();
        var fact = FirstEvening.InSoak(book, "H4");
        Assert.Equal(("B-H4", "E-2"), (fact.Batch, fact.Variety));
        Assert.Equal(17_550, fact.Dry!.Value.Pounds, 6);
        Assert.Equal("H4", Assert.Single(fact.MeantFor));
        var after = Book(Marks.At(1, Now.AddHours(-2), fact));
        Assert.Equal(BatchPlace.InSoak, after.Batch("B-H4")!.Place);
        Assert.Equal("B-H4-2", FirstEvening.InSoak(after, "H4").Batch);
        Assert.True(FirstEvening.IsSoaking(after, "H4"));
        Assert.False(FirstEvening.IsSoaking(book, "H4"));
        // A farm that has not said which variety it sows can still say that it soaks.
        var bare = Book(Marks.At(1, Now.AddHours(-2), new BatchInSoak("B-H2") { MeantFor = ["H2"] }));
        Assert.True(FirstEvening.IsSoaking(bare, "H2"));
        Assert.False(FirstEvening.IsSoaking(bare, "H4"));
    }

    [Fact]
    public void One_tap_a_field_leaves_no_field_without_a_word()
    {
        var ground = PlannedMorning.State();
        ground = ground with { Batches = [], Fields = [.. ground.Fields.Select(f => new FieldSeason(f.Code, f.Rate, FieldStage.Unworked) { StageUntold = true, Variety = f.Variety })] };
        Assert.All(LandBoard.Of(SeasonFold.Fold(ground, Logbook.Empty, Now)), r => Assert.Equal(GroundLook.Unknown, r.Look));
        var taps = ground.Fields.Select((f, i) => Marks.At(i + 1, Now.AddMinutes(-i), i % 3 == 0 ? new FieldSown(f.Code) : new StageReached(f.Code, i % 3 == 1 ? FieldStage.Full : FieldStage.Unworked)));
        var rows = LandBoard.Of(SeasonFold.Fold(ground, Logbook.Empty.With(taps), Now));
        Assert.Equal([10, 9, 9], new[] { GroundLook.Sown, GroundLook.Full, GroundLook.Dry }.Select(look => rows.Count(r => r.Look == look)));
    }

    private static SeasonBook Book(params Mark[] marks) => SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(marks), Now);
}
