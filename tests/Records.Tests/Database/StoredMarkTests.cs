using System.Text;
using CsCheck;
using Watersown.Records.Database;

namespace Watersown.Database;

public sealed class StoredMarkTests
{
    [Fact]
    public void A_mark_of_a_kind_nobody_knows_is_read_whole()
    {
        var mark = Read("""{"id":"0123456789abcdef0123456789abcdef","kind":"moon-phase","by":"Ada","device":"d","happened":"2026-05-08T04:50:00.5-07:00","entered":"2026-05-08T12:00:00Z","sure":"told","fact":{"z":1.50,"a":[true,null]},"new":7}""").Value;
        Assert.Equal("moon-phase", mark.Kind);
        Assert.Null(mark.Replaces);
        Assert.Equal(new DateTimeOffset(2026, 5, 8, 11, 50, 0, 500, TimeSpan.Zero), mark.Happened);
        Assert.Equal("""{"by":"Ada","device":"d","entered":"2026-05-08T12:00:00Z","fact":{"a":[true,null],"z":1.50},"happened":"2026-05-08T04:50:00.5-07:00","id":"0123456789abcdef0123456789abcdef","kind":"moon-phase","new":7,"sure":"told"}""", mark.Body);
        Assert.Equal(mark, Read(mark.Body).Value);
    }

    [Fact]
    public void Everything_that_is_missing_is_said_at_once()
    {
        var read = Read("""{"id":"ABC","kind":"No Kind","happened":"2026-05-08T04:50:00","replaces":7}""");
        Assert.Equal(["by", "device", "entered", "fact", "happened", "id", "replaces", "sure"], read.Refusals.Select(p => p.Where).Distinct().Order(StringComparer.Ordinal));
        Assert.True(Read("[]").IsRefused);
    }

    [Fact]
    public void What_the_book_has_no_room_for_is_said_at_its_place()
    {
        var good = Encoding.UTF8.GetString(Some.Json(1));
        Assert.Equal([("by", BookProblems.MarkLacks), ("kind", BookProblems.MarkLacks)], Read(good.Replace("Ada\", \"device", new string('q', 101) + "\", \"device", StringComparison.Ordinal).Replace("\"note\"", "\"No Kind\"", StringComparison.Ordinal)).Problems.Select(p => (p.Where, p.Kind)));
    }

    [Fact]
    public void A_mark_as_long_as_a_book_is_refused() =>
        Assert.Equal(BookProblems.MarkTooLarge, Assert.Single(StoredMark.Read(Some.Json(1, new string('a', 200_000))).Problems).Kind);

    [Fact]
    public void Noise_never_throws()
    {
        Gen.Byte.Array[0, 60].Sample(bytes => StoredMark.Read(bytes).IsRefused);
        var good = Some.Json(1);
        Gen.Select(Gen.Int[0, good.Length - 1], Gen.Byte).Sample((at, value) =>
        {
            var bad = (byte[])good.Clone();
            bad[at] = value;
            _ = StoredMark.Read(bad);
        });
    }

    private static Outcome<StoredMark> Read(string json) => StoredMark.Read(Encoding.UTF8.GetBytes(json));
}
