using System.Globalization;
using System.Text.Json;

namespace Watersown.Pocket.Sending;

/// <summary>What became of saving a farm: its new version, or why not.</summary>
public sealed record FarmSaved(LineState State, int Version, string Why);

/// <summary>Saves the farm document at the host, as a new version of the one that this desk saw.</summary>
/// <param name="host">The line to the host.</param>
public sealed class FarmLine(HostLine host)
{
    /// <summary>Saves; another version that came between is a refusal with its reason, never overwritten.</summary>
    /// <param name="document">The farm document.</param>
    /// <param name="version">Version that it takes the place of; 0 where there is none yet.</param>
    /// <param name="why">Why, for the list of versions.</param>
    public async Task<FarmSaved> SaveAsync(ReadOnlyMemory<byte> document, int version, string why)
    {
        // A desk without a farm has not been told its session's token yet.
        if (host.Token is null && await host.AskAsync("api/you") is { State: LineState.Reached } you) host.Token = Text(you.Body, "token");
        var answer = await host.PutAsync("api/farm?version=" + version.ToString(CultureInfo.InvariantCulture) + "&why=" + Uri.EscapeDataString(why), document, "application/json");
        return answer.State switch
        {
            LineState.Reached => new FarmSaved(answer.State, Number(answer.Body, "farm_version"), HostWords.Problems(answer.Body)),
            LineState.Refused => new FarmSaved(answer.State, version, HostWords.Problems(answer.Body)),
            _ => new FarmSaved(answer.State, version, string.Empty),
        };
    }

    private static string? Text(ReadOnlyMemory<byte> body, string name) =>
        Look(body, root => root.TryGetProperty(name, out var text) && text.ValueKind == JsonValueKind.String ? text.GetString() : null);

    private static int Number(ReadOnlyMemory<byte> body, string name) => Look(body, root => root.TryGetProperty(name, out var number) && number.TryGetInt32(out var whole) ? whole : 0);

    private static T? Look<T>(ReadOnlyMemory<byte> body, Func<JsonElement, T?> look)
    {
        try
        {
            using var document = JsonDocument.Parse(body);
            return document.RootElement.ValueKind == JsonValueKind.Object ? look(document.RootElement) : default;
        }
        catch (JsonException)
        {
            return default;
        }
    }
}
