using System.Globalization;
using System.Text.Json;
using Watersown.Documents.Json;

namespace Watersown.Records.Database;

/// <summary>
/// A mark as the book keeps it: its document whole, in one spelling, with what is searched for beside it. What the fact
/// says is not looked at, so that a mark of a newer device is kept like any other.
/// </summary>
public sealed record StoredMark
{
    private StoredMark()
    {
    }

    /// <summary>32 lower-case hexadecimal digits.</summary>
    public required string Id { get; init; }

    public required DateTimeOffset Happened { get; init; }

    public required DateTimeOffset Entered { get; init; }

    public required string By { get; init; }

    public required string Device { get; init; }

    public required string Kind { get; init; }

    /// <summary>Name of the mark that it stands in for.</summary>
    public string? Replaces { get; init; }

    /// <summary>The whole document, JSON.</summary>
    public required string Body { get; init; }

    internal string Sha256 => CanonicalJson.Digest(Body);

    /// <summary>The mark of a document, or everything that keeps it out of the book.</summary>
    public static Outcome<StoredMark> Read(ReadOnlyMemory<byte> json)
    {
        var text = JsonText.Read(json);
        if (text.IsRefused) return Outcome<StoredMark>.Refuse(text.Problems);
        using var document = text.Value;
        return Read(document.RootElement);
    }

    /// <summary>The same of a document that is read already.</summary>
    public static Outcome<StoredMark> Read(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object) return Outcome<StoredMark>.Refuse(Lacks(string.Empty, "an object", "un objeto"));
        var problems = new List<Problem>();
        var id = Text(root, "id", BookLimits.IsMarkId, "32 lower-case hexadecimal digits", "32 cifras hexadecimales minúsculas", problems);
        var by = Text(root, "by", BookLimits.IsName, "a name", "un nombre", problems);
        var device = Text(root, "device", BookLimits.IsName, "a name", "un nombre", problems);
        var kind = Text(root, "kind", BookLimits.IsKind, "a kind such as check-water", "una clase como check-water", problems);
        var replaces = Has(root, "replaces") ? Text(root, "replaces", BookLimits.IsMarkId, "32 lower-case hexadecimal digits", "32 cifras hexadecimales minúsculas", problems) : null;
        var (happened, entered) = (Moment(root, "happened", problems), Moment(root, "entered", problems));
        var body = CanonicalJson.Write(root);
        if (body.Length > BookLimits.MarkBytesMost) problems.Add(BookProblems.MarkTooLarge.At(id, ("value", Kilobytes(body.Length)), ("limit", Kilobytes(BookLimits.MarkBytesMost))));
        if (problems.Count > 0) return Outcome<StoredMark>.Refuse(problems);
        return Outcome<StoredMark>.Of(new() { Id = id, Happened = happened, Entered = entered, By = by, Device = device, Kind = kind, Replaces = replaces, Body = body });
    }

    /// <summary>From the columns of the book, which were checked on the way in.</summary>
    internal static StoredMark Kept(string id, string happened, string entered, string by, string device, string kind, string? replaces, string body) => new()
    {
        Id = id,
        Happened = MomentColumn.Read(happened),
        Entered = MomentColumn.Read(entered),
        By = by,
        Device = device,
        Kind = kind,
        Replaces = replaces,
        Body = body,
    };

    private static bool Has(JsonElement root, string key) => root.TryGetProperty(key, out var found) && found.ValueKind != JsonValueKind.Null;

    private static string Text(JsonElement root, string key, Func<string?, bool> fits, string english, string spanish, List<Problem> problems)
    {
        var text = root.TryGetProperty(key, out var found) && found.ValueKind == JsonValueKind.String ? found.GetString() : null;
        if (!fits(text)) problems.Add(Lacks(key, english, spanish));
        return text ?? string.Empty;
    }

    private static DateTimeOffset Moment(JsonElement root, string key, List<Problem> problems)
    {
        // The offset must stand there: without it the machine's own would be taken.
        if (root.TryGetProperty(key, out var found) && found.ValueKind == JsonValueKind.String && found.GetString() is { Length: >= 17 and <= 40 } text
            && (text.EndsWith('Z') || text[^6] is '+' or '-')
            && DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.None, out var moment))
            return moment;
        problems.Add(Lacks(key, "a moment such as 2026-05-08T04:50:00-07:00", "un momento como 2026-05-08T04:50:00-07:00"));
        return default;
    }

    private static Problem Lacks(string where, string english, string spanish) => BookProblems.MarkLacks.At(where, ("value", english), ("value:es", spanish));

    private static string Kilobytes(int bytes) => (bytes / 1024).ToString(CultureInfo.InvariantCulture) + " KB";
}
