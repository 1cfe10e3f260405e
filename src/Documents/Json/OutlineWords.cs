using System.Text.Json;
using Watersown.Wording;

namespace Watersown.Documents.Json;

/// <summary>Says in words what stands in a place of a document, and what may stand there.</summary>
internal static class OutlineWords
{
    /// <summary>A value as people wrote it, cut where it would bury the sentence.</summary>
    public static string Shown(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.String => "'" + Say.Short(value.GetString()!) + "'",
        JsonValueKind.Object => "{ … }",
        JsonValueKind.Array => "[ … ]",
        JsonValueKind.Number => Say.Short(value.GetRawText()),
        JsonValueKind.True => "true",
        JsonValueKind.False => "false",
        _ => "null",
    };

    public static string Wanted(Outline outline) => outline switch
    {
        Outline.Number { Limit: { Whole: true } limit } => "a whole number" + Unit(limit),
        Outline.Number { Limit: { } limit } => "a number" + Unit(limit),
        Outline.Text => "a text in quotes",
        Outline.Word word => "one of " + string.Join(", ", word.Choices),
        Outline.Flag => "true or false",
        Outline.Day => "a day such as \"2026-05-08\"",
        Outline.Hour => "an hour such as \"07:00\"",
        Outline.Moment => "a moment such as \"2026-05-08T04:50\"",
        Outline.Instant => "a moment with its offset such as \"2026-05-08T04:50:00-07:00\"",
        Outline.Geometry => "a GeoJSON Polygon or MultiPolygon",
        Outline.Several => "a list in [ ]",
        Outline.Thing => "a thing in { }",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    public static string WantedSpanish(Outline outline) => outline switch
    {
        Outline.Number { Limit: { Whole: true } limit } => "un número entero" + Unit(limit),
        Outline.Number { Limit: { } limit } => "un número" + Unit(limit),
        Outline.Text => "un texto entre comillas",
        Outline.Word word => "uno de " + string.Join(", ", word.Choices),
        Outline.Flag => "true o false",
        Outline.Day => "un día como \"2026-05-08\"",
        Outline.Hour => "una hora como \"07:00\"",
        Outline.Moment => "un momento como \"2026-05-08T04:50\"",
        Outline.Instant => "un momento con su diferencia horaria como \"2026-05-08T04:50:00-07:00\"",
        Outline.Geometry => "un Polygon o MultiPolygon de GeoJSON",
        Outline.Several => "una lista entre [ ]",
        Outline.Thing => "un objeto entre { }",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>Keys are the same in every language; their meaning is told in English only.</summary>
    public static string KeySpanish(string key) => "la clave '" + key + "'";

    private static string Unit(Limit limit) => limit.Unit.Length == 0 ? string.Empty : " (" + limit.Unit + ")";
}
