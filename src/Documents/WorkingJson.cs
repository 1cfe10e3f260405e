using System.Text.Json;
using Watersown.Documents.Json;
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

    /// <summary>The working of a thing of a document that has been held against its outline; empty where it has none.</summary>
    public static Working Read(JsonElement of)
    {
        var working = Working.Empty;
        if (!of.TryGetProperty("working", out var lines)) return working;
        foreach (var line in lines.EnumerateArray())
        {
            string symbol = Text(line, "symbol")!, meaning = Text(line, "meaning")!, unit = Text(line, "unit")!;
            var value = JsonFacts.DatumOf(line.GetProperty("value"));
            // A source is written as people read it, its standing in words; so it is kept.
            Citation? source = Text(line, "source") is { } said ? new Citation(new Source(string.Empty, said, SourceStanding.Read), string.Empty) : null;
            working = (Text(line, "formula"), source) switch
            {
                ({ } formula, { } cited) => working.Step(symbol, meaning, value, unit, formula, cited),
                (null, { } cited) => working.Constant(symbol, meaning, value, unit, cited),
                _ => working.Given(symbol, meaning, value, unit, Text(line, "from"), At(line)),
            };
        }

        return working;
    }

    private static DateTimeOffset? At(JsonElement line) =>
        line.TryGetProperty("at", out var at) && JsonFacts.MomentOf(at) is { } written ? new DateTimeOffset(written.Day.ToDateTime(written.Hour), written.Offset ?? TimeSpan.Zero) : null;

    private static string? Text(JsonElement of, string key) => of.TryGetProperty(key, out var text) ? text.GetString() : null;

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
