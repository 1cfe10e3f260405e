using System.Globalization;
using System.Text;
using System.Text.Json;
using Watersown.Reckon;

namespace Watersown.Documents.Reckon;

/// <summary>Turns JSON text into a <see cref="Datum"/>, token by token, so that no fault of the text passes unseen.</summary>
internal static class DatumReader
{
    /// <summary>Deep enough for any boundary; a deeper text is a mistake or mischief.</summary>
    public const int DepthMost = 32;

    private const int NearLength = 12;

    /// <summary>One JSON value and nothing else, or what is wrong with the text.</summary>
    public static Outcome<Datum> Read(string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        // One level more than ours, so that our own sentence is the one that is said.
        var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { MaxDepth = DepthMost + 8 });
        var course = new Course();
        try
        {
            reader.Read();
            var value = ReadValue(ref reader, string.Empty, course);
            if (value is null) return Outcome<Datum>.Refuse(course.Problems);
            course.At = string.Empty;
            reader.Read(); // anything after the value throws here
            return Outcome<Datum>.Of(value, course.Problems);
        }
        catch (JsonException fault)
        {
            return Outcome<Datum>.Refuse(NotJson(bytes, (int)(fault.LineNumber ?? 0), (int)(fault.BytePositionInLine ?? 0), course.At));
        }
    }

    /// <summary>The value that the reader stands on; null where reading must stop, with the reason among the problems.</summary>
    private static Datum? ReadValue(ref Utf8JsonReader reader, string path, Course course)
    {
        switch (reader.TokenType)
        {
            case JsonTokenType.Number:
                var number = reader.GetDouble();
                if (double.IsFinite(number)) return number;
                course.Problems.Add(RequestProblems.NumberTooLarge.At(path, ("value", Encoding.UTF8.GetString(reader.ValueSpan))));
                return Datum.None;
            case JsonTokenType.String:
                return ReadText(ref reader, path, course) is { } text ? text : Datum.None;
            case JsonTokenType.True or JsonTokenType.False:
                return reader.GetBoolean();
            case JsonTokenType.Null:
                return Datum.None;
            default:
                if (reader.CurrentDepth < DepthMost) return reader.TokenType == JsonTokenType.StartArray ? ReadList(ref reader, path, course) : ReadTable(ref reader, path, course);
                course.Problems.Add(RequestProblems.TooDeep.At(path, ("limit", DepthMost.ToString(CultureInfo.InvariantCulture))));
                return null;
        }
    }

    private static Datum.Sequence? ReadList(ref Utf8JsonReader reader, string path, Course course)
    {
        var items = ImmutableArray.CreateBuilder<Datum>();
        while (true)
        {
            var place = course.At = string.Create(CultureInfo.InvariantCulture, $"{path} #{items.Count + 1}").TrimStart();
            reader.Read();
            if (reader.TokenType == JsonTokenType.EndArray) break;
            if (ReadValue(ref reader, place, course) is not { } item) return null;
            items.Add(item);
        }

        return new Datum.Sequence(items.ToImmutable());
    }

    private static Datum.Table? ReadTable(ref Utf8JsonReader reader, string path, Course course)
    {
        var cells = ImmutableArray.CreateBuilder<(string Key, Datum Value)>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var key = ReadText(ref reader, path, course) ?? string.Empty;
            var place = path.Length == 0 ? key : path + " " + key;
            if (!seen.Add(key)) course.Problems.Add(ReckonProblems.GivenTwice.At(place));
            course.At = place;
            reader.Read();
            if (ReadValue(ref reader, place, course) is not { } value) return null;
            course.At = path;
            cells.Add((key, value));
        }

        return new Datum.Table(cells.ToImmutable());
    }

    private static string? ReadText(ref Utf8JsonReader reader, string path, Course course)
    {
        try
        {
            return reader.GetString();
        }
        catch (InvalidOperationException)
        {
            // The only way a string token cannot be told: an escaped half of a character pair.
            course.Problems.Add(RequestProblems.BrokenText.At(path));
            return null;
        }
    }

    private static Problem NotJson(byte[] bytes, int line, int position, string where)
    {
        var start = 0;
        for (var passed = 0; passed < line; passed++) start = Array.IndexOf(bytes, (byte)'\n', start) + 1;
        var at = Math.Min(start + position, bytes.Length);
        var near = Encoding.UTF8.GetString(bytes.AsSpan(at, Math.Min(NearLength, bytes.Length - at)));
        if (NotFinite(bytes, at) is { } word) return RequestProblems.NotFinite.At(where, ("value", word));
        return RequestProblems.NotJson.At(where,
            ("line", (line + 1).ToString(CultureInfo.InvariantCulture)),
            ("character", (Encoding.UTF8.GetCharCount(bytes, start, at - start) + 1).ToString(CultureInfo.InvariantCulture)),
            ("near", near.Length == 0 ? "the end" : "'" + near + "'"));
    }

    /// <summary>The word at the place of a fault where it is one that stands for no finite number.</summary>
    private static string? NotFinite(byte[] bytes, int at)
    {
        if (bytes.AsSpan(at).StartsWith("NaN"u8)) return "NaN";
        if (!bytes.AsSpan(at).StartsWith("Infinity"u8)) return null;
        return at > 0 && bytes[at - 1] == (byte)'-' ? "-Infinity" : "Infinity";
    }

    /// <summary>What has been met on the way, and where the reading stands.</summary>
    private sealed class Course
    {
        public List<Problem> Problems { get; } = [];

        public string At { get; set; } = string.Empty;
    }
}
