using System.Text.Json;
using Watersown.Documents.Json;
using Watersown.Land;

namespace Watersown.Pocket.Sending;

/// <summary>One edge of a file, as the host read it.</summary>
/// <param name="Name">What the file calls it; empty where it has no name.</param>
/// <param name="Field">Code of the field that is called so; none where none is.</param>
/// <param name="Edge">The edge.</param>
public sealed record ReadEdge(string Name, string? Field, Boundary Edge);

/// <summary>What became of reading a file: the edges, what the host says is wrong with it, and how the asking ended.</summary>
public sealed record EdgeFileAnswer(LineState State, ImmutableArray<ReadEdge> Edges, string Why);

/// <summary>Has the host read a file of edges. The readers are the host's: they are large, and a phone rarely has the file.</summary>
/// <param name="host">The line to the host.</param>
public sealed class EdgeLine(HostLine host)
{
    /// <summary>As much as the host takes.</summary>
    public const int MostBytes = 16 * 1024 * 1024;

    public async Task<EdgeFileAnswer> ReadAsync(string name, ReadOnlyMemory<byte> file)
    {
        var answer = await host.SendAsync("api/edges/read?name=" + Uri.EscapeDataString(name), file, "application/octet-stream");
        if (answer.State == LineState.Refused) return new EdgeFileAnswer(answer.State, [], HostWords.Problems(answer.Body));
        if (answer.State != LineState.Reached) return new EdgeFileAnswer(answer.State, [], string.Empty);
        try
        {
            using var document = JsonDocument.Parse(answer.Body);
            return new EdgeFileAnswer(LineState.Reached, [.. document.RootElement.GetProperty("edges").EnumerateArray().Select(One).OfType<ReadEdge>()], HostWords.Problems(answer.Body));
        }
        catch (Exception odd) when (odd is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return new EdgeFileAnswer(LineState.NoAnswer, [], string.Empty);
        }
    }

    // What the host has read is read again by the desk's own reader: a mark is made only of what Core takes for an edge.
    private static ReadEdge? One(JsonElement told)
    {
        var edge = GeometryReading.Read(told.GetProperty("edge"), "edge");
        return edge.HasValue ? new ReadEdge(Text(told, "name") ?? string.Empty, Text(told, "field"), edge.Value) : null;
    }

    private static string? Text(JsonElement thing, string name) => thing.TryGetProperty(name, out var text) && text.ValueKind == JsonValueKind.String ? text.GetString() : null;
}
