using System.Globalization;
using System.Text.Json;

namespace Watersown.Documents.Json;

/// <summary>A moment as written: a day and hour, and the offset from UTC where one stands beside it.</summary>
public readonly record struct WrittenMoment(DateOnly Day, TimeOnly Hour, TimeSpan? Offset);

/// <summary>
/// Takes values out of a document that has been held against its outline. What is missing or does not fit is nothing:
/// it has been said already, and the rest can still be read and checked.
/// </summary>
public readonly record struct JsonFacts(JsonElement Element)
{
    /// <summary>No figure of a farm is larger; beyond it arithmetic in any unit stays finite.</summary>
    internal const double MaxNumber = 1e9;

    private static readonly CultureInfo plain = CultureInfo.InvariantCulture;

    private static readonly string[] momentForms = ["yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd HH:mm", "yyyy-MM-dd HH:mm:ss"];

    private static readonly string[] instantForms = ["yyyy-MM-dd'T'HH:mmzzz", "yyyy-MM-dd'T'HH:mm:sszzz", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFzzz"];

    public bool Has(string key) => Find(key) is not null;

    public double? Number(string key) => Find(key) is { } value ? NumberOf(value) : null;

    /// <summary>The number of a limit's key.</summary>
    public double? Number(Limit limit) => Number(limit.Key);

    public int? Whole(string key) => Number(key) is { } number && number == Math.Floor(number) ? (int)number : null;

    public string? Text(string key) =>
        Find(key) is { ValueKind: JsonValueKind.String } value && !string.IsNullOrWhiteSpace(value.GetString()) ? value.GetString()!.Trim() : null;

    public bool? Flag(string key) => Find(key) is { ValueKind: JsonValueKind.True or JsonValueKind.False } value ? value.GetBoolean() : null;

    public DateOnly? Day(string key) => Find(key) is { } value ? DayOf(value) : null;

    public TimeOnly? Hour(string key) => Find(key) is { } value ? HourOf(value) : null;

    public WrittenMoment? Moment(string key) => Find(key) is { } value ? MomentOf(value) : null;

    /// <summary>A moment that stands with its own offset.</summary>
    public DateTimeOffset? Instant(string key) => Find(key) is { } value ? InstantOf(value) : null;

    /// <summary>A span given in hours.</summary>
    public TimeSpan? Hours(Limit limit) => Span(limit, 3600);

    /// <summary>A span given in seconds.</summary>
    public TimeSpan? Seconds(Limit limit) => Span(limit, 1);

    /// <summary>A span given in days.</summary>
    public TimeSpan? Days(Limit limit) => Span(limit, 86_400);

    /// <summary>The entries of a list; none where it is missing.</summary>
    public IEnumerable<JsonFacts> Entries(string key) =>
        Find(key) is { ValueKind: JsonValueKind.Array } value ? value.EnumerateArray().Select(e => new JsonFacts(e)) : [];

    /// <summary>The texts of a list, in order; an entry of another sort is empty.</summary>
    public ImmutableArray<string> Texts(string key) =>
        [.. Entries(key).Select(e => e.Element.ValueKind == JsonValueKind.String ? e.Element.GetString()!.Trim() : string.Empty)];

    /// <summary>The thing under a key.</summary>
    public JsonFacts? Thing(string key) => Find(key) is { ValueKind: JsonValueKind.Object } value ? new JsonFacts(value) : null;

    /// <summary>The value as it crosses into Core. A number too large for any figure is told there as what it is.</summary>
    internal static Datum DatumOf(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Number => value.GetDouble(),
        JsonValueKind.String => value.GetString()!,
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        JsonValueKind.Array => Datum.ListOf(value.EnumerateArray().Select(DatumOf)),
        JsonValueKind.Object => Datum.Row([.. value.EnumerateObject().Select(p => (p.Name, DatumOf(p.Value)))]),
        _ => Datum.None,
    };

    internal static double? NumberOf(JsonElement value) =>
        value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out var number) && Math.Abs(number) <= MaxNumber ? number : null;

    internal static DateOnly? DayOf(JsonElement value) =>
        value.ValueKind == JsonValueKind.String && DateOnly.TryParseExact(value.GetString(), "yyyy-MM-dd", plain, DateTimeStyles.None, out var day) && Near(day) ? day : null;

    internal static TimeOnly? HourOf(JsonElement value) =>
        value.ValueKind == JsonValueKind.String && TimeOnly.TryParseExact(value.GetString(), ["HH:mm", "HH:mm:ss"], plain, DateTimeStyles.None, out var hour) ? hour : null;

    /// <summary>A day without an hour is taken as its noon.</summary>
    internal static WrittenMoment? MomentOf(JsonElement value)
    {
        if (value.ValueKind != JsonValueKind.String) return null;
        var text = value.GetString()!;
        if (DayOf(value) is { } day) return new WrittenMoment(day, new TimeOnly(12, 0), null);
        TimeSpan? offset = null;
        if (text.EndsWith('Z')) (text, offset) = (text[..^1], TimeSpan.Zero);
        else if (text.Length > 16 && text[^6] is '+' or '-')
        {
            if (!TimeSpan.TryParseExact(text[^5..], "hh\\:mm", plain, out var size) || size > TimeSpan.FromHours(14)) return null;
            (text, offset) = (text[..^6], text[^6] == '-' ? -size : size);
        }

        if (!DateTimeOffset.TryParseExact(text, momentForms, plain, DateTimeStyles.AssumeUniversal, out var wall)) return null;
        day = new DateOnly(wall.Year, wall.Month, wall.Day);
        return Near(day) ? new WrittenMoment(day, TimeOnly.FromTimeSpan(wall.TimeOfDay), offset) : null;
    }

    internal static DateTimeOffset? InstantOf(JsonElement value)
    {
        if (value.ValueKind != JsonValueKind.String) return null;
        var text = value.GetString()!;
        if (text.EndsWith('Z')) text = text[..^1] + "+00:00";
        return DateTimeOffset.TryParseExact(text, instantForms, plain, DateTimeStyles.None, out var moment) && Near(new DateOnly(moment.Year, moment.Month, moment.Day)) ? moment : null;
    }

    /// <summary>Days far outside a working life are misprints, and too near the ends of the calendar to reckon with.</summary>
    private static bool Near(DateOnly day) => day.Year is >= 1900 and <= 2200;

    /// <summary>A span of more than a few centuries has been refused by its limit, and would not fit.</summary>
    private TimeSpan? Span(Limit limit, double seconds) =>
        Number(limit) * seconds is { } span && Math.Abs(span) <= 1e10 ? TimeSpan.FromSeconds(span) : null;

    private JsonElement? Find(string key) =>
        Element.ValueKind == JsonValueKind.Object && Element.TryGetProperty(key, out var value) && value.ValueKind != JsonValueKind.Null ? value : null;
}
