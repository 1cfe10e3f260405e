using CsCheck;

namespace Watersown.Season;

public sealed class LogbookProperties
{
    [Fact]
    public void Joining_three_logbooks_in_any_order_gives_the_same_marks() => Gen.Select(AnyMark.Mark.Array, AnyMark.Mark.Array, AnyMark.Mark.Array).Sample((a, b, c) =>
    {
        Logbook x = Logbook.Empty.With(a), y = Logbook.Empty.With(b), z = Logbook.Empty.With(c);
        var one = x.Merge(y).Merge(z).Marks;
        Assert.Equal(one, z.Merge(y).Merge(x).Marks);
        Assert.Equal(one, x.Merge(y.Merge(z)).Marks);
        Assert.Equal(one, y.Merge(x.Merge(z)).Merge(x).Merge(y).Marks);
    });

    [Fact]
    public void A_mark_that_is_there_already_changes_nothing() => AnyMark.Several.Sample(marks =>
    {
        var book = Logbook.Empty.With(marks);
        Assert.Same(book, book.With(marks));
        Assert.Same(book, book.Merge(book));
    });

    [Fact]
    public void What_was_known_only_grows() => Gen.Select(AnyMark.Several, Gen.Int[0, 8000], Gen.Int[0, 2000]).Sample((marks, from, more) =>
    {
        var book = Logbook.Empty.With(marks);
        var then = PlannedMorning.At(5, 0).AddMinutes(from);
        var early = book.KnownAt(then);
        var late = book.KnownAt(then.AddMinutes(more));
        Assert.All(early.Marks, m => Assert.True(late.Has(m.Id)));
        Assert.All(book.Marks, m => Assert.Equal(m.Entered <= then, early.Has(m.Id)));
    });

    [Theory]
    [InlineData("0123456789abcdef0123456789abcdef", true)]
    [InlineData("0123456789ABCDEF0123456789ABCDEF", false)]
    [InlineData("0123456789abcdef", false)]
    [InlineData("", false)]
    public void A_name_is_32_small_hexadecimal_digits(string text, bool holds) => Assert.Equal(holds, MarkId.Holds(text));
}
