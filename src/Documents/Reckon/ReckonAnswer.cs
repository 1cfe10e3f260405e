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
        WorkingJson.Write(writer, reckoned.Working);
        writer.WriteStartArray("cautions");
        foreach (var caution in reckoned.Cautions) writer.WriteStringValue(caution);
        writer.WriteEndArray();
        writer.WriteEndObject();
    }
}
