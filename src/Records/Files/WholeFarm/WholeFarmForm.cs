using Watersown.Documents.Json;
using Watersown.Records.Database;

namespace Watersown.Records.Files.WholeFarm;

/// <summary>Names of the parts of a whole-farm file, and how large each may be. docs/schema/whole-farm.md tells the same in words.</summary>
internal static class WholeFarmForm
{
    public const string Name = "watersown-farm";

    public const int Version = 1;

    public const string Manifest = "manifest.json";
    public const string Farm = "farm.json";
    public const string FarmList = "farms.jsonl";
    public const string Marks = "marks.jsonl";
    public const string PlanList = "plans.jsonl";
    public const string PhotoList = "photos.jsonl";
    public const string AccountList = "accounts.jsonl";

    /// <summary>Parts of one file; a farm of a hundred fields with a photo each day is under a tenth.</summary>
    public const int PartsMost = 60_000;

    /// <summary>All parts unpacked, together.</summary>
    public const long BytesMost = 4L * 1024 * 1024 * 1024;

    /// <summary>Bytes of a list other than the marks, which are never held all at once.</summary>
    public const long ListBytesMost = 64L * 1024 * 1024;

    /// <summary>Bytes of one line: a mark with what is told beside it.</summary>
    public const int LineBytesMost = BookLimits.MarkBytesMost + 4096;

    /// <summary>Unpacked over packed size; text packs up to about 30 times, a trap a thousand times.</summary>
    public const int RatioMost = 200;

    public static ImmutableArray<string> Lists { get; } = [FarmList, Marks, PlanList, PhotoList, AccountList];

    public static string FarmOf(long version, long newest) => version == newest ? Farm : "farms/" + Plain(version) + ".json";

    public static string PlanOf(long number) => "plans/" + Plain(number) + ".json";

    public static string PhotoOf(string id, string mediaType) => "photos/" + id + (mediaType switch { "image/jpeg" => ".jpg", "image/png" => ".png", _ => ".webp" });

    /// <summary>Most bytes of a part, by its name.</summary>
    public static long BytesMostOf(string part) => part switch
    {
        Marks => BytesMost,
        _ when Lists.Contains(part, StringComparer.Ordinal) => ListBytesMost,
        _ when part.StartsWith("photos/", StringComparison.Ordinal) => BookLimits.AttachmentBytesMost,
        _ => JsonText.MaxBytes,
    };

    private static string Plain(long number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
