using CsCheck;
using Watersown.Schedule;

namespace Watersown.Season;

public sealed class SeasonFoldProperties
{
    private static readonly SeasonState Ground = PlannedMorning.State();

    private static readonly DateTimeOffset Later = PlannedMorning.At(14, 0);

    [Fact]
    public void Logbooks_joined_in_any_order_tell_the_same_season() => Gen.Select(AnyMark.Mark.Array[0, 20], AnyMark.Mark.Array[0, 20], AnyMark.Mark.Array[0, 20]).Sample((a, b, c) =>
    {
        Logbook x = Logbook.Empty.With(a), y = Logbook.Empty.With(b), z = Logbook.Empty.With(c);
        var one = Marks.All(SeasonFold.Fold(Ground, x.Merge(y).Merge(z), Later));
        Assert.Equal(one, Marks.All(SeasonFold.Fold(Ground, z.Merge(x.Merge(y)).Merge(y), Later)));
        Assert.Equal(one, Marks.All(SeasonFold.Fold(Ground, y.Merge(z).Merge(x), Later)));
    });

    [Fact]
    public void Marks_shuffled_tell_the_same_season_as_marks_in_order() => Gen.Select(AnyMark.Several, Gen.Int).Sample((marks, seed) =>
    {
        var shuffled = marks.ToArray();
        new Random(seed).Shuffle(shuffled);
        var book = Logbook.Empty;
        foreach (var mark in shuffled) book = book.With(mark).With(mark);
        Assert.Equal(Marks.All(SeasonFold.Fold(Ground, Logbook.Empty.With(marks), Later)), Marks.All(SeasonFold.Fold(Ground, book, Later)));
    });

    [Fact]
    public void A_mark_taken_back_is_as_if_it_had_never_been_put_down() => Gen.Select(AnyMark.Several, AnyMark.Fact, Gen.Int[0, 8000]).Sample((marks, fact, minute) =>
    {
        var at = PlannedMorning.At(5, 0).AddMinutes(minute);
        var mark = Marks.At(1000, at, fact is Withdrawn ? new Noted("x", null) : fact);
        var without = Logbook.Empty.With(marks);
        var undone = without.With(mark, Marks.At(1001, at.AddMinutes(3), new Withdrawn()).Replacing(1000));
        Assert.Equal(Marks.Seen(SeasonFold.Fold(Ground, without, Later)), Marks.Seen(SeasonFold.Fold(Ground, undone, Later)));
    });

    [Fact]
    public void A_correction_is_as_if_it_had_been_said_so_at_once() => Gen.Select(AnyMark.Several, AnyMark.Fact, AnyMark.Fact, Gen.Int[0, 8000]).Sample((marks, wrong, right, minute) =>
    {
        if (wrong is Withdrawn || right is Withdrawn or FaultFound) return;
        var at = PlannedMorning.At(5, 0).AddMinutes(minute);
        var book = Logbook.Empty.With(marks);
        var corrected = book.With(Marks.At(1000, at, wrong), Marks.At(1001, at, right).Replacing(1000));
        Assert.Equal(Marks.Seen(SeasonFold.Fold(Ground, book.With(Marks.At(1001, at, right)), Later)), Marks.Seen(SeasonFold.Fold(Ground, corrected, Later)));
    });

    [Fact]
    public void Marks_that_happen_later_change_nothing_yet() => Gen.Select(AnyMark.Several, Gen.Int[0, 8000]).Sample((marks, minute) =>
    {
        var now = PlannedMorning.At(5, 0).AddMinutes(minute);
        // A correction is knowledge of its own, so only plain marks can be left out.
        ImmutableArray<Mark> plain = [.. marks.Where(m => m.Replaces is null && m.Fact is not Withdrawn)];
        Assert.Equal(
            Marks.Seen(SeasonFold.Fold(Ground, Logbook.Empty.With(plain.Where(m => m.Happened <= now)), now)),
            Marks.Seen(SeasonFold.Fold(Ground, Logbook.Empty.With(plain), now)));
    });

    [Fact]
    public void A_season_without_marks_is_the_farm_as_told() =>
        Assert.Equal(
            Marks.Seen(new SeasonBook { State = Ground with { Now = Later }, Ground = Ground, Log = Logbook.Empty, Now = Later }),
            string.Join('\n', Marks.Seen(SeasonFold.Fold(Ground, Logbook.Empty, Later)).Split('\n').Take(Marks.Seen(new SeasonBook { State = Ground with { Now = Later }, Ground = Ground, Log = Logbook.Empty, Now = Later }).Split('\n').Length)));

    [Fact]
    public void Every_mark_has_its_line_and_every_line_its_mark() => AnyMark.Several.Sample(marks =>
    {
        var book = SeasonFold.Fold(Ground, Logbook.Empty.With(marks), Later);
        Assert.Equal(book.Log.Marks, book.Story.Select(l => l.Mark));
        Assert.All(book.Story.Where(l => l.Standing == Standing.Replaced && l.By is not null), l => Assert.True(book.Log.Has(l.By!.Value)));
        Assert.Equal(marks.Count(m => m.Fact.AboutField is not null), book.Fields.Sum(f => f.Story.Count(l => l.Mark.Fact is not FaultMended)));
    });
}
