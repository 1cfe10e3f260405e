using System.Buffers;
using System.Text;
using System.Text.Json;

namespace Watersown.Pocket.Sending;

/// <summary>What the host keeps, in its own words: farm, plan, marks, and who it takes us for.</summary>
public sealed record DeskAnswer
{
    public required string? Farm { get; init; }

    public required int FarmVersion { get; init; }

    public required string? Plan { get; init; }

    public required int PlanNumber { get; init; }

    public required ImmutableArray<(string Id, string Text)> Marks { get; init; }

    public required long Upto { get; init; }

    public string? Name { get; init; }

    public string? Role { get; init; }

    public string? Token { get; init; }

    public DateTimeOffset? Now { get; init; }

    /// <summary>The book's own name; another one after a copy was brought back.</summary>
    public string? Book { get; init; }

    public CopyNews? Copies { get; init; }

    public string? Tiles { get; init; }
}

/// <summary>What changed since a number.</summary>
public sealed record ChangesAnswer(ImmutableArray<(string Id, string Text)> Marks, long Upto, int FarmVersion, int PlanNumber)
{
    /// <summary>The book's own name.</summary>
    public string? Book { get; init; }

    public CopyNews? Copies { get; init; }
}

/// <summary>What became of marks that were sent.</summary>
public sealed record Receipt(ImmutableHashSet<string> Kept, ImmutableDictionary<string, string> Refused);

/// <summary>Reads and writes the words between desk and host. What is not understood is no answer.</summary>
public static class HostWords
{
    public static DeskAnswer? Desk(ReadOnlyMemory<byte> body) => Read(body, root => new DeskAnswer
    {
        Farm = Raw(root, "farm"),
        FarmVersion = Whole(root, "farm_version"),
        Plan = Raw(root, "plan"),
        PlanNumber = root.TryGetProperty("plan_number", out _) ? Whole(root, "plan_number")
            : root.TryGetProperty("plan", out var plan) && plan.ValueKind == JsonValueKind.Object ? Whole(plan, "number") : 0,
        Marks = Marks(root),
        Upto = root.GetProperty("upto").GetInt64(),
        Name = root.TryGetProperty("you", out var you) ? Text(you, "name") : null,
        Role = root.TryGetProperty("you", out var role) ? Text(role, "role") : null,
        Token = Text(root, "token") ?? (root.TryGetProperty("you", out var who) ? Text(who, "token") : null),
        Tiles = Text(root, "tiles"),
        Now = root.TryGetProperty("now", out var now) && now.ValueKind == JsonValueKind.String && now.TryGetDateTimeOffset(out var moment) ? moment : null,
        Book = Text(root, "book"),
        Copies = root.TryGetProperty("copies", out var copies) ? CopyNews.Read(copies) : null,
    });

    public static ChangesAnswer? Changes(ReadOnlyMemory<byte> body) =>
        Read(body, root => new ChangesAnswer(Marks(root), root.GetProperty("upto").GetInt64(), Whole(root, "farm_version"), Whole(root, "plan_number"))
        {
            Book = Text(root, "book"),
            Copies = root.TryGetProperty("copies", out var copies) ? CopyNews.Read(copies) : null,
        });

    public static CopyNews? Copies(ReadOnlyMemory<byte> body) => Read(body, root => CopyNews.Read(root)!);

    /// <summary>The answer to a whole-farm file: what was taken, or why nothing was.</summary>
    public static BroughtFarm? Brought(ReadOnlyMemory<byte> body) => Read(body, root => new BroughtFarm(
        root.TryGetProperty("marks", out _),
        root.EnumerateObject().Where(p => p.Value.ValueKind == JsonValueKind.Number).ToImmutableDictionary(p => p.Name, p => p.Value.GetInt32(), StringComparer.Ordinal),
        Why(root)));

    public static Receipt? Receipt(ReadOnlyMemory<byte> body) => Read(body, root => new Receipt(
        [.. root.GetProperty("kept").EnumerateArray().Select(k => k.GetString()!)],
        root.GetProperty("refused").EnumerateArray().ToImmutableDictionary(r => r.GetProperty("id").GetString()!, Why, StringComparer.Ordinal)));

    /// <summary>Why a whole request was refused.</summary>
    public static string Problems(ReadOnlyMemory<byte> body) => Read(body, Why) ?? string.Empty;

    /// <summary>Marks to send, each as it is kept.</summary>
    public static byte[] Write(string device, IEnumerable<string> marks)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer))
        {
            json.WriteStartObject();
            json.WriteString("device", device);
            json.WriteStartArray("marks");
            foreach (var mark in marks) json.WriteRawValue(mark);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        return buffer.WrittenSpan.ToArray();
    }

    private static T? Read<T>(ReadOnlyMemory<byte> body, Func<JsonElement, T> read)
        where T : class
    {
        try
        {
            using var document = JsonDocument.Parse(body);
            return document.RootElement.ValueKind == JsonValueKind.Object ? read(document.RootElement) : null;
        }
        catch (Exception odd) when (odd is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return null;
        }
    }

    private static string Why(JsonElement refused)
    {
        if (!refused.TryGetProperty("problems", out var problems) || problems.ValueKind != JsonValueKind.Array) return string.Empty;
        var text = new StringBuilder();
        foreach (var problem in problems.EnumerateArray())
        {
            if (text.Length > 0) text.Append(' ');
            text.Append(problem.ValueKind == JsonValueKind.String ? problem.GetString() : Text(problem, "text"));
        }

        return text.ToString();
    }

    private static ImmutableArray<(string Id, string Text)> Marks(JsonElement root) =>
        [.. root.GetProperty("marks").EnumerateArray().Select(m => (m.GetProperty("id").GetString()!, m.GetRawText()))];

    private static string? Raw(JsonElement root, string name) =>
        root.TryGetProperty(name, out var thing) && thing.ValueKind == JsonValueKind.Object ? thing.GetRawText() : null;

    private static string? Text(JsonElement root, string name) =>
        root.ValueKind == JsonValueKind.Object && root.TryGetProperty(name, out var text) && text.ValueKind == JsonValueKind.String ? text.GetString() : null;

    private static int Whole(JsonElement root, string name) => root.TryGetProperty(name, out var number) && number.TryGetInt32(out var whole) ? whole : 0;
}
