using System.Text.Json;
using Watersown.Documents.Reckon;

namespace Watersown.Documents;

/// <summary>A working as JSON: one object a line, as every document and answer shows it.</summary>
public static class WorkingJson
{
    public static void Write(Utf8JsonWriter writer, Working working)
    {
        writer.WriteStartArray("working");
        foreach (var line in working.Lines) Write(writer, line);
        writer.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter writer, WorkingLine line)
    {
        writer.WriteStartObject();
        writer.WriteString("symbol", line.Symbol);
        writer.WriteString("meaning", line.Meaning);
        writer.WritePropertyName("value");
        DatumWriter.Write(writer, line.Value);
        writer.WriteString("unit", line.Unit);
        if (line.Formula is { } formula) writer.WriteString("formula", formula);
        if (line.Source is { } source) writer.WriteString("source", source.ToString());
        if (line.From is { } from) writer.WriteString("from", from);
        if (line.At is { } at)
        {
            writer.WritePropertyName("at");
            DatumWriter.Write(writer, Datum.Moment(at));
        }

        writer.WriteEndObject();
    }
}
