using System.Globalization;
using System.Text;
using Watersown.Records.Database;

namespace Watersown.Database;

/// <summary>Valid things for a book, so that a test says only what matters to it.</summary>
internal static class Some
{
    public static string Id(int number) => number.ToString("x32", CultureInfo.InvariantCulture);

    public static StoredMark Mark(int number, string note = "ck 5 wet", string device = "phone of Ada") => StoredMark.Read(Json(number, note, device)).Value;

    public static ImmutableArray<StoredMark> Marks(int from, int count) => [.. Enumerable.Range(from, count).Select(n => Mark(n))];

    public static byte[] Json(int number, string note = "ck 5 wet", string device = "phone of Ada") => Encoding.UTF8.GetBytes(
        $$"""{ "id": "{{Id(number)}}", "happened": "2026-05-08T04:50:00-07:00", "entered": "2026-05-08T04:51:30-07:00", "by": "Ada", "device": "{{device}}", "sure": "told", "kind": "note", "fact": { "text": "{{note}}" } }""");

    public static byte[] Photo(int size = 400, byte fill = 7)
    {
        var bytes = Enumerable.Repeat(fill, size).ToArray();
        ((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]).CopyTo(bytes);
        return bytes;
    }
}
