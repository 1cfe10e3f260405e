using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace Watersown.Documents.Json;

/// <summary>From bytes to a JSON document, or to the line and column where it breaks. Never throws on any bytes.</summary>
public static class JsonText
{
    public const int MaxDepth = 64;

    /// <summary>Most bytes that are read as one document: a large farm with every boundary inside is a tenth of it.</summary>
    public const int MaxBytes = 32 * 1024 * 1024;

    private static readonly CultureInfo plain = CultureInfo.InvariantCulture;

    public static Outcome<JsonDocument> Read(ReadOnlyMemory<byte> bytes)
    {
        var problem = FindFault(bytes.Span);
        if (problem is not null) return Outcome<JsonDocument>.Refuse(problem);
        return Outcome<JsonDocument>.Of(JsonDocument.Parse(WithoutMark(bytes), new JsonDocumentOptions { MaxDepth = MaxDepth }));
    }

    private static ReadOnlyMemory<byte> WithoutMark(ReadOnlyMemory<byte> bytes) =>
        bytes.Span.StartsWith("\uFEFF"u8) ? bytes[3..] : bytes;

    private static Problem? FindFault(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length > MaxBytes)
            return JsonProblems.TooLarge.At(string.Empty, ("value", Size(bytes.Length)), ("limit", Size(MaxBytes)));
        if (bytes.StartsWith("\uFEFF"u8)) bytes = bytes[3..];
        if (bytes.StartsWith(new byte[] { 0xFF, 0xFE }) || bytes.StartsWith(new byte[] { 0xFE, 0xFF }))
            return JsonProblems.NotUtf8.At("line 1, column 1", ("value", "UTF-16 text"));
        if (!Utf8.IsValid(bytes))
        {
            var at = FirstInvalid(bytes);
            return JsonProblems.NotUtf8.At(LineAndColumn(bytes, at), ("value", "the byte " + bytes[at].ToString("X2", plain)));
        }

        return bytes.Trim(" \t\r\n"u8).IsEmpty ? JsonProblems.Empty.At(string.Empty) : Walk(bytes);
    }

    /// <summary>Reads every token as if more could follow: what breaks is a fault, what merely stops is cut short.</summary>
    private static Problem? Walk(ReadOnlySpan<byte> bytes)
    {
        var reader = new Utf8JsonReader(bytes, isFinalBlock: false, new JsonReaderState(new JsonReaderOptions { MaxDepth = 100_000 }));
        try
        {
            while (reader.Read())
            {
                if (reader.CurrentDepth >= MaxDepth)
                    return JsonProblems.TooDeep.At(LineAndColumn(bytes, (int)reader.TokenStartIndex), ("limit", MaxDepth.ToString(plain)));
                if (reader.ValueIsEscaped && !Sound(ref reader))
                    return JsonProblems.BrokenLetter.At(LineAndColumn(bytes, (int)reader.TokenStartIndex));
            }
        }
        catch (JsonException fault)
        {
            var at = Offset(bytes, fault.LineNumber ?? 0, fault.BytePositionInLine ?? 0);
            return at >= bytes.TrimEnd(" \t\r\n"u8).Length ? CutShort(bytes, Open(ref reader)) : NotJson(bytes, at);
        }

        var rest = bytes[(int)reader.BytesConsumed..].Trim(" \t\r\n"u8);
        if (Open(ref reader) == 0 && reader.TokenType != JsonTokenType.None && rest.IsEmpty) return null;
        // A bare number or a cut word at the very end is only known to be one when nothing can follow.
        return CutShort(bytes, Open(ref reader));
    }

    private static Problem NotJson(ReadOnlySpan<byte> bytes, int at)
    {
        var rest = Encoding.UTF8.GetString(bytes[at..Math.Min(bytes.Length, at + 40)]).Split([' ', ',', '\n', '\r', '\t'], 2)[0];
        var shown = rest.Length == 0 ? "a blank" : "'" + new string([.. rest.Where(c => !char.IsControl(c)).Take(12)]) + "'";
        return JsonProblems.NotJson.At(LineAndColumn(bytes, at), ("value", shown));
    }

    private static Problem CutShort(ReadOnlySpan<byte> bytes, int depth)
    {
        var open = depth.ToString(plain) + (depth == 1 ? " bracket is" : " brackets are");
        return JsonProblems.CutShort.At(LineAndColumn(bytes, bytes.Length), ("value", open));
    }

    /// <summary>Brackets still open; the one that the reader stands on is not counted in its depth.</summary>
    private static int Open(ref Utf8JsonReader reader) =>
        reader.CurrentDepth + (reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray ? 1 : 0);

    private static bool Sound(ref Utf8JsonReader reader)
    {
        try
        {
            _ = reader.GetString();
            return true;
        }
        catch (InvalidOperationException)
        {
            return false;
        }
    }

    private static int FirstInvalid(ReadOnlySpan<byte> bytes)
    {
        var at = 0;
        while (at < bytes.Length && Rune.DecodeFromUtf8(bytes[at..], out _, out var used) == System.Buffers.OperationStatus.Done) at += used;
        return Math.Min(at, bytes.Length - 1);
    }

    private static int Offset(ReadOnlySpan<byte> bytes, long line, long column)
    {
        var at = 0;
        for (; line > 0; line--)
        {
            var next = bytes[at..].IndexOf((byte)'\n');
            if (next < 0) break;
            at += next + 1;
        }

        return (int)Math.Clamp(at + column, 0, bytes.Length);
    }

    /// <summary>Counted from 1; a column is a letter, not a byte.</summary>
    private static string LineAndColumn(ReadOnlySpan<byte> bytes, int at)
    {
        var before = bytes[..at];
        var line = before.Count((byte)'\n') + 1;
        var start = before.LastIndexOf((byte)'\n') + 1;
        var column = Encoding.UTF8.GetString(before[start..]).EnumerateRunes().Count() + 1;
        return string.Create(plain, $"line {line}, column {column}");
    }

    private static string Size(long bytes) => (bytes / 1024.0 / 1024.0).ToString("0.0", plain) + " MB";
}
