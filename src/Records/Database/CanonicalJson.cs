using System.Buffers;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace Watersown.Records.Database;

/// <summary>
/// One spelling for one document: no blanks, keys in order of their letters, texts escaped one way, numbers as they came.
/// Two documents with this spelling in common say the same.
/// </summary>
internal static class CanonicalJson
{
    public static string Write(JsonElement element)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var pen = new Utf8JsonWriter(buffer, new JsonWriterOptions { SkipValidation = true })) Write(pen, element);
        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    /// <summary>SHA-256 as lower-case hexadecimal digits.</summary>
    public static string Digest(string text) => Digest(Encoding.UTF8.GetBytes(text));

    public static string Digest(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    private static void Write(Utf8JsonWriter pen, JsonElement element)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                pen.WriteStartObject();
                // A key given twice: the last one counts, as everywhere in JSON.
                foreach (var entry in element.EnumerateObject().GroupBy(p => p.Name, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal))
                {
                    pen.WritePropertyName(entry.Key);
                    Write(pen, entry.Last().Value);
                }

                pen.WriteEndObject();
                break;
            case JsonValueKind.Array:
                pen.WriteStartArray();
                foreach (var item in element.EnumerateArray()) Write(pen, item);
                pen.WriteEndArray();
                break;
            case JsonValueKind.String:
                pen.WriteStringValue(element.GetString());
                break;
            default:
                pen.WriteRawValue(element.GetRawText(), skipInputValidation: true);
                break;
        }
    }
}
