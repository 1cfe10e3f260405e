using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Watersown.Documents.Json;
using Watersown.Records.Database;

namespace Watersown.Records.Files.WholeFarm;

/// <summary>A version of the farm document, without the document.</summary>
internal sealed record FarmLine(long Version, DateTimeOffset Saved, string Who, string Why);

/// <summary>A photo, without its bytes.</summary>
internal sealed record PhotoLine(string Id, string MediaType, DateTimeOffset Received, string? Sender);

/// <summary>Somebody who could sign in, without what they sign in with.</summary>
internal sealed record AccountLine(string Name, Role Role, DateTimeOffset Created, DateTimeOffset? Ended);



/// <summary>Each kind of line, written and read: one JSON object without a line end inside.</summary>
internal static class WholeFarmLines
{
    private const string SomeText = "a text of at most 2,000 letters";

    public static ReadOnlySpan<byte> Write(ArrayBufferWriter<byte> buffer, KeptMark mark) => Object(buffer, json =>
    {
        json.WriteString("received", MomentColumn.Write(mark.Received));
        if (mark.Sender is { } sender) json.WriteString("sender", sender);
        json.WritePropertyName("mark");
        json.WriteRawValue(mark.Mark.Body, skipInputValidation: true);
    });

    public static ReadOnlySpan<byte> Write(ArrayBufferWriter<byte> buffer, FarmVersion farm) => Object(buffer, json =>
    {
        json.WriteNumber("version", farm.Version);
        json.WriteString("saved", MomentColumn.Write(farm.Saved));
        json.WriteString("who", farm.Who);
        json.WriteString("why", farm.Why);
    });

    public static ReadOnlySpan<byte> Write(ArrayBufferWriter<byte> buffer, PlanLine plan) => Object(buffer, json =>
    {
        json.WriteNumber("number", plan.Number);
        json.WriteString("made", MomentColumn.Write(plan.Made));
        json.WriteString("who", plan.Who);
        json.WriteString("why", plan.Why);
        json.WriteNumber("farm_version", plan.FarmVersion);
        json.WriteNumber("marks_upto", plan.MarksUpto);
    });

    public static ReadOnlySpan<byte> Write(ArrayBufferWriter<byte> buffer, Attachment photo) => Object(buffer, json =>
    {
        json.WriteString("id", photo.Id);
        json.WriteString("media_type", photo.MediaType);
        json.WriteString("received", MomentColumn.Write(photo.Received));
        if (photo.Sender is { } sender) json.WriteString("sender", sender);
    });

    public static ReadOnlySpan<byte> Write(ArrayBufferWriter<byte> buffer, Account account) => Object(buffer, json =>
    {
        json.WriteString("name", account.Name);
        json.WriteString("role", RoleName(account.Role));
        json.WriteString("created", MomentColumn.Write(account.Created));
        if (account.Ended is { } ended) json.WriteString("ended", MomentColumn.Write(ended));
    });

    public static Outcome<IncomingMark> ReadMark(ReadOnlyMemory<byte> line, string place) => Read(line, place, facts =>
    {
        var (received, sender) = (facts.Moment("received"), facts.TextOrNothing("sender", Fits, SomeText));
        if (facts.Object("mark") is not { } mark) return null;
        var stored = StoredMark.Read(mark);
        facts.Problems.AddRange(stored.Problems.Select(p => p with { Where = place + " " + p.Where }));
        return stored.HasValue ? new IncomingMark(stored.Value, received, sender) : null;
    });

    public static Outcome<FarmLine> ReadFarm(ReadOnlyMemory<byte> line, string place) => Read(line, place, facts =>
        new FarmLine(facts.Number("version", 1, int.MaxValue), facts.Moment("saved"), facts.Text("who", Fits, SomeText)!, facts.Text("why", Fits, SomeText)!));

    public static Outcome<PlanLine> ReadPlan(ReadOnlyMemory<byte> line, string place) => Read(line, place, facts => new PlanLine(
        facts.Number("number", 1, int.MaxValue), facts.Moment("made"), facts.Text("who", Fits, SomeText)!, facts.Text("why", Fits, SomeText)!,
        facts.Number("farm_version", 1, int.MaxValue), facts.Number("marks_upto", 0, int.MaxValue)));

    public static Outcome<PhotoLine> ReadPhoto(ReadOnlyMemory<byte> line, string place) => Read(line, place, facts => new PhotoLine(
        facts.Text("id", BookLimits.IsMarkId, "32 lower-case hexadecimal digits")!, facts.Text("media_type", t => t is "image/jpeg" or "image/png" or "image/webp", "image/jpeg, image/png or image/webp")!,
        facts.Moment("received"), facts.TextOrNothing("sender", Fits, SomeText)));

    public static Outcome<AccountLine> ReadAccount(ReadOnlyMemory<byte> line, string place) => Read(line, place, facts =>
    {
        var name = facts.Text("name", BookLimits.IsName, "a name");
        var role = facts.Text("role", t => Roles.Any(r => RoleName(r) == t), string.Join(", ", Roles.Select(RoleName)));
        return new AccountLine(name!, Roles.FirstOrDefault(r => RoleName(r) == role), facts.Moment("created"), facts.MomentOrNothing("ended"));
    });

    // For people to read too: letters of other languages stand as they are.
    private static readonly JsonWriterOptions Plainly = new() { SkipValidation = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static ImmutableArray<Role> Roles { get; } = [.. Enum.GetValues<Role>()];

    private static string RoleName(Role role) => role switch { Role.Owner => "owner", Role.Family => "family", Role.Crew => "crew", _ => "reader" };

    private static bool Fits(string text) => text.Length <= 2_000 && !text.Contains('\0', StringComparison.Ordinal);

    private static ReadOnlySpan<byte> Object(ArrayBufferWriter<byte> buffer, Action<Utf8JsonWriter> body)
    {
        buffer.ResetWrittenCount();
        using (var json = new Utf8JsonWriter(buffer, Plainly))
        {
            json.WriteStartObject();
            body(json);
            json.WriteEndObject();
        }

        return buffer.WrittenSpan;
    }

    private static Outcome<T> Read<T>(ReadOnlyMemory<byte> line, string place, Func<LineFacts, T?> read)
        where T : class
    {
        var text = JsonText.Read(line);
        if (text.IsRefused) return Outcome<T>.Refuse(text.Problems.Select(p => p with { Where = place }));
        using var document = text.Value;
        var facts = new LineFacts(document.RootElement, place);
        var value = read(facts);
        return facts.Problems.Count > 0 || value is null ? Outcome<T>.Refuse(facts.Problems) : Outcome<T>.Of(value);
    }
}
