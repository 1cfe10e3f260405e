using System.Text;
using Watersown.Records.Database;

namespace Watersown.Database;

public sealed class MarksTests
{
    public static TheoryData<Engine> Engines => Shelf.Engines;

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task What_is_put_in_comes_out_in_order_and_whole(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        var sent = Some.Marks(1, 30);
        var answer = await book.AppendMarksAsync(sent, "ada");
        Assert.Equal(30, answer.Upto);
        Assert.Empty(answer.Refused);
        Assert.Equal(Enumerable.Range(1, 30).Select(n => new KeptId(Some.Id(n), n)), answer.Kept);
        var kept = await book.MarksAfterAsync(0, 100);
        Assert.Equal(sent, kept.Select(k => k.Mark));
        Assert.All(kept, k => Assert.Equal("ada", k.Sender));
        Assert.Equal([29L, 30L], (await book.MarksAfterAsync(28, 100)).Select(k => k.Seq));
        Assert.Equal([1L, 2L], (await book.MarksAfterAsync(0, 2)).Select(k => k.Seq));
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_mark_sent_twice_is_kept_once_under_the_same_number(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        await book.AppendMarksAsync(Some.Marks(1, 3));
        // The same says the same however its JSON is laid out.
        var spaced = StoredMark.Read(Encoding.UTF8.GetBytes("\n " + Encoding.UTF8.GetString(Some.Json(2)).Replace(",", " ,\n", StringComparison.Ordinal))).Value;
        var again = await book.AppendMarksAsync([Some.Mark(4), spaced, Some.Mark(4)]);
        Assert.Equal([new KeptId(Some.Id(4), 4), new KeptId(Some.Id(2), 2), new KeptId(Some.Id(4), 4)], again.Kept);
        Assert.Equal(4, again.Upto);
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_mark_under_a_name_that_is_taken_is_refused_alone(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        await book.AppendMarksAsync([Some.Mark(1)]);
        var answer = await book.AppendMarksAsync([Some.Mark(1, "ck 5 dry"), Some.Mark(2), Some.Mark(2, "other")]);
        Assert.Equal([new KeptId(Some.Id(2), 2)], answer.Kept);
        Assert.Equal([Some.Id(1), Some.Id(2)], answer.Refused.Select(r => r.Id));
        Assert.All(answer.Refused, r => Assert.Equal(BookProblems.MarkDiffers, Assert.Single(r.Problems).Kind));
        Assert.Equal([Some.Mark(1), Some.Mark(2)], (await book.MarksAfterAsync(0, 9)).Select(k => k.Mark));
    }
}
