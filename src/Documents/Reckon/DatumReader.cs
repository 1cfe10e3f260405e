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
        var problems = new List<Problem>();
        try
        {
            reader.Read();
            var value = ReadValue(ref reader, string.Empty, problems);
            if (value is null) return Outcome<Datum>.Refuse(problems);
            reader.Read(); // anything after the value throws here
            return Outcome<Datum>.Of(value, problems);
        }
        catch (JsonException fault)
        {
            return Outcome<Datum>.Refuse(NotJson(bytes, (int)(fault.LineNumber ?? 0), (int)(fault.BytePositionInLine ?? 0)));
        }
    }

    /// <summary>The value that the reader stands on; null where reading must stop, with the reason among the problems.</summary>
    private static Datum? ReadValue(ref Utf8JsonReader reader, string path, List<Problem> problems)
    {
        switch (reader.TokenType)
        {
            case JsonTokenType.Number:
                var number = reader.GetDouble();
                if (double.IsFinite(number)) return number;
                problems.Add(RequestProblems.NumberTooLarge.At(path, ("value", Encoding.UTF8.GetString(reader.ValueSpan))));
                return Datum.None;
            case JsonTokenType.String:
                return ReadText(ref reader, path, problems) is { } text ? text : Datum.None;
            case JsonTokenType.True or JsonTokenType.False:
                return reader.GetBoolean();
            case JsonTokenType.Null:
                return Datum.None;
            default:
                if (reader.CurrentDepth < DepthMost) return reader.TokenType == JsonTokenType.StartArray ? ReadList(ref reader, path, problems) : ReadTable(ref reader, path, problems);
                problems.Add(RequestProblems.TooDeep.At(path, ("limit", DepthMost.ToString(CultureInfo.InvariantCulture))));
                return null;
        }
    }

    private static Datum.Sequence? ReadList(ref Utf8JsonReader reader, string path, List<Problem> problems)
    {
        var items = ImmutableArray.CreateBuilder<Datum>();
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            var place = string.Create(CultureInfo.InvariantCulture, $"{path} #{items.Count + 1}").TrimStart();
            if (ReadValue(ref reader, place, problems) is not { } item) return null;
            items.Add(item);
        }

        return new Datum.Sequence(items.ToImmutable());
    }

    private static Datum.Table? ReadTable(ref Utf8JsonReader reader, string path, List<Problem> problems)
    {
        var cells = ImmutableArray.CreateBuilder<(string Key, Datum Value)>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var key = ReadText(ref reader, path, problems) ?? string.Empty;
            var place = path.Length == 0 ? key : path + " " + key;
            if (!seen.Add(key)) problems.Add(ReckonProblems.GivenTwice.At(place));
            reader.Read();
            if (ReadValue(ref reader, place, problems) is not { } value) return null;
            cells.Add((key, value));
        }

        return new Datum.Table(cells.ToImmutable());
    }

    private static string? ReadText(ref Utf8JsonReader reader, string path, List<Problem> problems)
    {
        try
        {
            return reader.GetString();
        }
        catch (InvalidOperationException)
        {
            // The only way a string token cannot be told: an escaped half of a character pair.
            problems.Add(RequestProblems.BrokenText.At(path));
            return null;
        }
    }

    private static Problem NotJson(byte[] bytes, int line, int position)
    {
        var start = 0;
        for (var passed = 0; passed < line; passed++) start = Array.IndexOf(bytes, (byte)'\n', start) + 1;
        var at = Math.Min(start + position, bytes.Length);
        var near = Encoding.UTF8.GetString(bytes.AsSpan(at, Math.Min(NearLength, bytes.Length - at)));
        return RequestProblems.NotJson.At(string.Empty,
            ("line", (line + 1).ToString(CultureInfo.InvariantCulture)),
            ("character", (Encoding.UTF8.GetCharCount(bytes, start, at - start) + 1).ToString(CultureInfo.InvariantCulture)),
            ("near", near.Length == 0 ? "the end" : "'" + near + "'"));
    }
}
