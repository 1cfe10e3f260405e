using System.Buffers;
using System.Text.Json;

namespace Watersown.Pocket.Sending;

/// <summary>A link just made: its address is told this once.</summary>
public sealed record MadeLink(Uri Url, string Person, DateTimeOffset Expires);

/// <summary>A link that is out.</summary>
/// <param name="Id">The host's name for it; never its address.</param>
/// <param name="Sheet">Which sheet it shows.</param>
/// <param name="Person">Whom it was made for.</param>
/// <param name="Created">When it was made.</param>
/// <param name="Expires">When it ends.</param>
/// <param name="Works">It has neither ended nor been taken back.</param>
public sealed record LinkOut(string Id, string Sheet, string Person, DateTimeOffset Created, DateTimeOffset Expires, bool Works);

/// <summary>What became of asking for a link: made, refused with the host's words, or no answer.</summary>
public sealed record LinkAnswer(MadeLink? Made, string? Why);

/// <summary>Asks the host for links. Nothing of this works without the host, and nothing of it is kept on the device.</summary>
/// <param name="host">The line to the host.</param>
public sealed class LinkLine(HostLine host)
{
    /// <summary>Links that are out or were; nothing where the host did not answer.</summary>
    public async Task<ImmutableArray<LinkOut>?> ListAsync()
    {
        var answer = await host.AskAsync("api/links");
        return answer.State == LineState.Reached ? Read<ImmutableArray<LinkOut>?>(answer.Body, root => [.. root.GetProperty("links").EnumerateArray().Select(One)]) : null;
    }

    /// <summary>Makes a link to a sheet of today for a person.</summary>
    public async Task<LinkAnswer> MakeAsync(string sheet, string person)
    {
        var answer = await host.SendAsync("api/links", Written(sheet, person));
        if (answer.State == LineState.Refused) return new LinkAnswer(null, HostWords.Problems(answer.Body));
        var made = answer.State == LineState.Reached
            ? Read(answer.Body, root => new MadeLink(new Uri(root.GetProperty("url").GetString()!), root.GetProperty("person").GetString()!, root.GetProperty("expires").GetDateTimeOffset()))
            : null;
        return new LinkAnswer(made, null);
    }

    /// <summary>Takes a link back; false where the host did not answer.</summary>
    public async Task<bool> WithdrawAsync(string id) => (await host.TakeBackAsync("api/links/" + Uri.EscapeDataString(id))).State == LineState.Reached;

    private static LinkOut One(JsonElement link) => new(
        link.GetProperty("id").GetString()!, link.GetProperty("sheet").GetString()!, link.GetProperty("person").GetString()!,
        link.GetProperty("created").GetDateTimeOffset(), link.GetProperty("expires").GetDateTimeOffset(), link.GetProperty("works").GetBoolean());

    private static ReadOnlyMemory<byte> Written(string sheet, string person)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer))
        {
            json.WriteStartObject();
            json.WriteString("sheet", sheet);
            json.WriteString("person", person);
            json.WriteEndObject();
        }

        return buffer.WrittenMemory;
    }

    private static T? Read<T>(ReadOnlyMemory<byte> body, Func<JsonElement, T> read)
    {
        try
        {
            using var document = JsonDocument.Parse(body);
            return read(document.RootElement);
        }
        catch (Exception strange) when (strange is JsonException or KeyNotFoundException or InvalidOperationException or FormatException or ArgumentNullException)
        {
            return default;
        }
    }
}
