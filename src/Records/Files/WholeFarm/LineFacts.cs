using System.Globalization;
using System.Text.Json;
using Watersown.Wording;

namespace Watersown.Records.Files.WholeFarm;

/// <summary>Reads what stands in one object of a part, and gathers everything that it lacks.</summary>
/// <param name="root">The object.</param>
/// <param name="place">Where it stands, for the problems.</param>
internal sealed class LineFacts(JsonElement root, string place)
{
    /// <summary>Past so many the file is plainly not ours, and more of the same helps nobody.</summary>
    public const int ProblemsMost = 20;

    public List<Problem> Problems { get; } = [];

    public static string Plain(long number) => number.ToString(CultureInfo.InvariantCulture);

    public string? Text(string key, Func<string, bool> fits, string wanted)
    {
        var text = Find(key) is { ValueKind: JsonValueKind.String } found ? found.GetString() : null;
        if (text is not null && fits(text)) return text;
        Lacks(key, wanted);
        return null;
    }

    /// <summary>Nothing where it is not given.</summary>
    public string? TextOrNothing(string key, Func<string, bool> fits, string wanted) =>
        Find(key) is { ValueKind: not JsonValueKind.Null } ? Text(key, fits, wanted) : null;

    public long Number(string key, long least, long most)
    {
        if (Find(key) is { ValueKind: JsonValueKind.Number } found && found.TryGetInt64(out var number) && number >= least && number <= most) return number;
        Lacks(key, "a whole number from " + Plain(least) + " to " + Plain(most));
        return least;
    }

    public DateTimeOffset Moment(string key)
    {
        if (Find(key) is { ValueKind: JsonValueKind.String } found && found.GetString() is { Length: >= 17 and <= 40 } text && (text.EndsWith('Z') || text[^6] is '+' or '-')
            && DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.None, out var moment))
            return moment.ToUniversalTime();
        Lacks(key, "a moment such as 2026-05-08T11:50:00Z");
        return default;
    }

    public DateTimeOffset? MomentOrNothing(string key) => Find(key) is { ValueKind: not JsonValueKind.Null } ? Moment(key) : null;

    public JsonElement? Object(string key)
    {
        if (Find(key) is { ValueKind: JsonValueKind.Object } found) return found;
        Lacks(key, "an object");
        return null;
    }

    public IEnumerable<(JsonElement Item, string Place)> List(string key)
    {
        if (Find(key) is { ValueKind: JsonValueKind.Array } found) return found.EnumerateArray().Select((item, i) => (item, place + " " + key + "[" + Plain(i) + "]"));
        Lacks(key, "a list");
        return [];
    }

    private JsonElement? Find(string key) => root.ValueKind == JsonValueKind.Object && root.TryGetProperty(key, out var found) ? found : null;

    private void Lacks(string key, string wanted) => Problems.Add(WholeFarmProblems.Lacks.At(place, ("value", Say.Short(key, 40)), ("limit", wanted)));
}
