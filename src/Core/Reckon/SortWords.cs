namespace Watersown.Reckon;

/// <summary>What a key wants, in the words of both languages, as facts of <see cref="ReckonProblems.WrongSort"/>.</summary>
internal static class SortWords
{
    public static Problem Wrong(string where, string value, KeyKind kind)
    {
        var (english, spanish) = Of(kind);
        return Wrong(where, value, english, spanish);
    }

    public static Problem WrongRow(string where, string value, IEnumerable<string> columns)
    {
        var names = string.Join(", ", columns);
        return Wrong(where, value, "a row with " + names, "una fila con " + names);
    }

    public static Problem NoRows(string where) => Wrong(where, "[]", "a list of at least one row", "una lista de al menos una fila");

    private static Problem Wrong(string where, string value, string english, string spanish) =>
        ReckonProblems.WrongSort.At(where, ("value", value), ("wanted", english), ("wanted:es", spanish));

    private static (string English, string Spanish) Of(KeyKind kind) => kind switch
    {
        KeyKind.Number => ("a number", "un número"),
        KeyKind.WholeNumber => ("a whole number", "un número entero"),
        KeyKind.Text => ("a word", "una palabra"),
        KeyKind.Date => ("a day such as 2026-05-08", "un día como 2026-05-08"),
        KeyKind.Numbers => ("a list of numbers such as [1, 2, 3]", "una lista de números como [1, 2, 3]"),
        KeyKind.YesNo => ("true or false", "true o false"),
        KeyKind.Rows => ("a list of rows", "una lista de filas"),
        KeyKind.Group => ("a group of named values", "un grupo de valores con nombre"),
        KeyKind.Boundary => ("a GeoJSON Polygon or MultiPolygon", "un Polygon o MultiPolygon de GeoJSON"),
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
