using System.Text.Json;

namespace Watersown.Pocket.Sending;

/// <summary>How the copies of the book stand, by the host's word.</summary>
/// <param name="On">The host makes copies.</param>
/// <param name="Last">Of when the newest is.</param>
/// <param name="Count">How many there are.</param>
/// <param name="Days">How many days each is kept; 0 where not told.</param>
/// <param name="FailedAt">When making one failed.</param>
/// <param name="Why">Why.</param>
public sealed record CopyNews(bool On, DateTimeOffset? Last, int Count, int Days, DateTimeOffset? FailedAt, string? Why)
{
    /// <summary>Out of an answer; none where it does not tell.</summary>
    public static CopyNews? Read(JsonElement told)
    {
        if (told.ValueKind != JsonValueKind.Object) return null;
        return new(!told.TryGetProperty("on", out var on) || on.ValueKind == JsonValueKind.True, Moment(told, "last"), Number(told, "count"), Number(told, "days"), Moment(told, "failed"),
            told.TryGetProperty("why", out var why) && why.ValueKind == JsonValueKind.String ? why.GetString() : null);
    }

    private static DateTimeOffset? Moment(JsonElement told, string name) =>
        told.TryGetProperty(name, out var found) && found.ValueKind == JsonValueKind.String && found.TryGetDateTimeOffset(out var moment) ? moment : null;

    private static int Number(JsonElement told, string name) => told.TryGetProperty(name, out var found) && found.TryGetInt32(out var number) ? number : 0;
}

/// <summary>What became of a whole-farm file that was brought to the host.</summary>
/// <param name="Taken">It was taken.</param>
/// <param name="Counts">What was taken, by name.</param>
/// <param name="Said">What the host said about it beside that.</param>
public sealed record BroughtFarm(bool Taken, ImmutableDictionary<string, int> Counts, string Said);
