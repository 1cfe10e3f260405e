using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Watersown.Documents.Reckon;

/// <summary>Turns a <see cref="Datum"/> into JSON; numbers keep every digit they have.</summary>
internal static class DatumWriter
{
    public static string Text(Datum value, bool indented) => Text(writer => Write(writer, value), indented);

    public static string Text(Action<Utf8JsonWriter> write, bool indented)
    {
        var buffer = new ArrayBufferWriter<byte>();
        // Read by programs and people, never put inside a page: signs such as × and ° stay as they are.
        using (var writer = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = indented, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
            write(writer);
        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    public static void Write(Utf8JsonWriter writer, Datum value)
    {
        switch (value)
        {
            case Datum.Number { Value: 0 }:
                writer.WriteNumberValue(0); // never minus zero
                break;
            case Datum.Number number:
                writer.WriteNumberValue(number.Value);
                break;
            case Datum.Text text:
                writer.WriteStringValue(text.Value);
                break;
            case Datum.Flag flag:
                writer.WriteBooleanValue(flag.Value);
                break;
            case Datum.Nothing:
                writer.WriteNullValue();
                break;
            case Datum.Sequence list:
                writer.WriteStartArray();
                foreach (var item in list.Items) Write(writer, item);
                writer.WriteEndArray();
                break;
            case Datum.Table table:
                WriteTable(writer, table.Cells);
                break;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    public static void WriteTable(Utf8JsonWriter writer, ImmutableArray<(string Key, Datum Value)> cells)
    {
        writer.WriteStartObject();
        foreach (var (key, value) in cells)
        {
            writer.WritePropertyName(key);
            Write(writer, value);
        }

        writer.WriteEndObject();
    }
}
