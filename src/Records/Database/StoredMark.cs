using System.Globalization;
using System.Text.Json;
using Watersown.Documents.Json;
using Watersown.Documents.Logbooks;
using Watersown.Season;

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
        var head = MarkReading.ReadHead(root);
        return head.HasValue ? Of(root, head.Value) : Outcome<StoredMark>.Refuse(head.Problems);
    }

    /// <summary>A mark that was read already, with the document it was read from.</summary>
    /// <param name="root">The document, which is what is kept.</param>
    /// <param name="mark">What was read from it.</param>
    public static Outcome<StoredMark> Of(JsonElement root, Mark mark)
    {
        var problems = new List<Problem>();
        var kind = root.GetProperty("kind").GetString();
        if (!BookLimits.IsName(mark.By)) problems.Add(Lacks("by", "a name of at most 100 letters", "un nombre de 100 letras como máximo"));
        if (!BookLimits.IsName(mark.Device)) problems.Add(Lacks("device", "a name of at most 100 letters", "un nombre de 100 letras como máximo"));
        if (!BookLimits.IsKind(kind)) problems.Add(Lacks("kind", "a kind such as check-water", "una clase como check-water"));
        var body = CanonicalJson.Write(root);
        if (body.Length > BookLimits.MarkBytesMost) problems.Add(BookProblems.MarkTooLarge.At(mark.Id.Text, ("value", Kilobytes(body.Length)), ("limit", Kilobytes(BookLimits.MarkBytesMost))));
        return problems.Count > 0
            ? Outcome<StoredMark>.Refuse(problems)
            : Outcome<StoredMark>.Of(new() { Id = mark.Id.Text, Happened = mark.Happened, Entered = mark.Entered, By = mark.By, Device = mark.Device, Kind = kind!, Replaces = mark.Replaces?.Text, Body = body });
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

    private static Problem Lacks(string where, string english, string spanish) => BookProblems.MarkLacks.At(where, ("value", english), ("value:es", spanish));

    private static string Kilobytes(int bytes) => (bytes / 1024).ToString(CultureInfo.InvariantCulture) + " KB";
}
