using System.Text.Json;
using Watersown.Reckon;

namespace Watersown.Documents.Reckon;

/// <summary>What a reckoning gives, as JSON: name, result, working, cautions.</summary>
public static class ReckonAnswer
{
    public static string ToJson(Reckoning reckoning, Reckoned reckoned) => DatumWriter.Text(writer => Write(writer, reckoning, reckoned), indented: true);

    /// <summary>All reckonings with the question each answers, as JSON.</summary>
    public static string ListToJson(IEnumerable<Reckoning> reckonings) => DatumWriter.Text(
        Datum.ListOf(reckonings.Select(r => Datum.Row(
            ("name", r.Name),
            ("question", r.Question),
            ("inputs", Datum.ListOf(r.Inputs.Select(k => (Datum)k.Key))),
            ("results", Datum.ListOf(r.Results.Select(k => (Datum)k.Key)))))),
        indented: true);

    private static void Write(Utf8JsonWriter writer, Reckoning reckoning, Reckoned reckoned)
    {
        writer.WriteStartObject();
        writer.WriteString("name", reckoning.Name);
        writer.WritePropertyName("result");
        DatumWriter.WriteTable(writer, reckoned.Results);
        writer.WriteStartArray("working");
        foreach (var line in reckoned.Working.Lines) Write(writer, line);
        writer.WriteEndArray();
        writer.WriteStartArray("cautions");
        foreach (var caution in reckoned.Cautions) writer.WriteStringValue(caution);
        writer.WriteEndArray();
        writer.WriteEndObject();
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
