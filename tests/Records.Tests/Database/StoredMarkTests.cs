using System.Text;
using CsCheck;
using Watersown.Records.Database;

namespace Watersown.Database;

public sealed class StoredMarkTests
{
    [Fact]
    public void A_mark_of_a_kind_nobody_knows_is_read_whole()
    {
        var mark = Read("""{"id":"0123456789abcdef0123456789abcdef","kind":"moon-phase","by":"Ada","device":"d","happened":"2026-05-08T04:50:00.5-07:00","entered":"2026-05-08T12:00Z","new":{"z":1.50,"a":[true,null]},"replaces":null}""").Value;
        Assert.Equal("moon-phase", mark.Kind);
        Assert.Null(mark.Replaces);
        Assert.Equal(new DateTimeOffset(2026, 5, 8, 11, 50, 0, 500, TimeSpan.Zero), mark.Happened);
        Assert.Equal("""{"by":"Ada","device":"d","entered":"2026-05-08T12:00Z","happened":"2026-05-08T04:50:00.5-07:00","id":"0123456789abcdef0123456789abcdef","kind":"moon-phase","new":{"a":[true,null],"z":1.50},"replaces":null}""", mark.Body);
        Assert.Equal(mark, Read(mark.Body).Value);
    }

    [Fact]
    public void Everything_that_is_missing_is_said_at_once()
    {
        var read = Read("""{"id":"ABC","kind":"No Kind","happened":"2026-05-08T04:50:00","replaces":7}""");
        Assert.Equal(["id", "by", "device", "kind", "replaces", "happened", "entered"], read.Problems.Select(p => p.Where));
        Assert.All(read.Problems, p => Assert.Equal(BookProblems.MarkLacks, p.Kind));
        Assert.Equal(BookProblems.MarkLacks, Assert.Single(Read("[]").Problems).Kind);
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
