using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Watersown.Documents.Json;

/// <summary>
/// Writes a document key by key, leaving out what is not known. Numbers lose the dust that converting units leaves: 12
/// figures are kept, more than any instrument on a farm gives.
/// </summary>
public sealed class JsonPen : IDisposable
{
    private readonly MemoryStream stream = new();
    private readonly Utf8JsonWriter writer;

    /// <summary>A pen for a document.</summary>
    /// <param name="indented">Laid out for people; otherwise on one line.</param>
    public JsonPen(bool indented = true) => writer = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = indented, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });

    public void Dispose()
    {
        writer.Dispose();
        stream.Dispose();
    }

    /// <summary>The whole text, with a line end.</summary>
    public ReadOnlyMemory<byte> Finish()
    {
        writer.Flush();
        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    /// <summary>The whole text, with no line end.</summary>
    public ReadOnlyMemory<byte> Line()
    {
        writer.Flush();
        return stream.ToArray();
    }

    public void Number(string key, double? value)
    {
        if (value is not { } number) return;
        writer.WritePropertyName(key);
        Bare(number);
    }

    public void Text(string key, string? value)
    {
        if (value is { Length: > 0 }) writer.WriteString(key, value);
    }

    /// <summary>A yes; a no is left out, for it is what is taken where nothing is said.</summary>
    public void Flag(string key, bool value)
    {
        if (value) writer.WriteBoolean(key, value);
    }

    /// <summary>A yes or a no, both written.</summary>
    public void Yes(string key, bool value) => writer.WriteBoolean(key, value);

    /// <summary>A no that has to be written.</summary>
    public void No(string key) => writer.WriteBoolean(key, false);

    public void Day(string key, DateOnly? value) => Text(key, value?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    /// <summary>A moment with its offset, to the thousandth of a second.</summary>
    public void Instant(string key, DateTimeOffset? value) => Text(key, value?.ToString("yyyy-MM-dd'T'HH:mm:ss.FFFzzz", CultureInfo.InvariantCulture));

    /// <summary>A value as it stood in another document.</summary>
    public void Raw(string key, string json)
    {
        writer.WritePropertyName(key);
        writer.WriteRawValue(json);
    }

    public void Hour(string key, TimeOnly value) => Text(key, HourText(value));

    public void Texts(string key, ImmutableArray<string> values)
    {
        if (values.IsEmpty) return;
        writer.WriteStartArray(key);
        foreach (var value in values) writer.WriteStringValue(value);
        writer.WriteEndArray();
    }

    public void Hours(string key, ImmutableArray<TimeOnly> values) => Texts(key, [.. values.Select(HourText)]);

    /// <summary>A thing in braces; under a key, or as an entry where the key is null.</summary>
    public void Thing(string? key, Action body)
    {
        if (key is null) writer.WriteStartObject();
        else writer.WriteStartObject(key);
        body();
        writer.WriteEndObject();
    }

    /// <summary>A list of things; left out where it is empty.</summary>
    public void Things<T>(string key, ImmutableArray<T> entries, Action<T> body)
    {
        if (entries.IsEmpty) return;
        List(key, entries, entry => Thing(null, () => body(entry)));
    }

    public void List<T>(string? key, IEnumerable<T> entries, Action<T> body)
    {
        if (key is null) writer.WriteStartArray();
        else writer.WriteStartArray(key);
        foreach (var entry in entries) body(entry);
        writer.WriteEndArray();
    }

    /// <summary>A number as an entry of a list.</summary>
    public void Bare(double number)
    {
        var rounded = double.Parse(number.ToString("G12", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        writer.WriteRawValue(rounded.ToString("0.################", CultureInfo.InvariantCulture));
    }

    /// <summary>A text as an entry of a list.</summary>
    public void Bare(string text) => writer.WriteStringValue(text);

    private static string HourText(TimeOnly hour) => hour.ToString(hour.Second == 0 ? "HH:mm" : "HH:mm:ss", CultureInfo.InvariantCulture);
}
