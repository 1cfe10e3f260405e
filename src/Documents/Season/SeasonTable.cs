using System.Globalization;
using System.Text;

namespace Watersown.Documents.Seasons;

/// <summary>A table of a season for other programs: one fact a column, its unit in the column's name.</summary>
/// <param name="Name">Stem of its file, name of its sheet.</param>
/// <param name="Columns">Names of the columns.</param>
/// <param name="Rows">Text, number, day or nothing, in the order of the columns.</param>
public sealed record SeasonTable(string Name, ImmutableArray<string> Columns, ImmutableArray<ImmutableArray<object?>> Rows)
{
    /// <summary>
    /// As comma-separated values (RFC 4180), lines ended by CR LF. Words that a spreadsheet would take for a formula stand behind an
    /// apostrophe, for they were typed by people.
    /// </summary>
    public string ToCsv()
    {
        var text = new StringBuilder();
        Line(text, Columns.Select(c => (object?)c));
        foreach (var row in Rows) Line(text, row);
        return text.ToString();
    }

    /// <summary>A value as a spreadsheet may show it and never run it.</summary>
    public static object? Harmless(object? value) => value is string { Length: > 0 } words && "=+-@\t\r".Contains(words[0], StringComparison.Ordinal) ? "'" + words : value;

    private static void Line(StringBuilder text, IEnumerable<object?> values)
    {
        text.AppendJoin(',', values.Select(Cell)).Append("\r\n");
    }

    private static string Cell(object? value)
    {
        var words = Harmless(value) switch
        {
            null => string.Empty,
            DateOnly day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            DateTimeOffset moment => moment.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture),
            double number => number.ToString("0.######", CultureInfo.InvariantCulture),
            IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
            var other => other.ToString() ?? string.Empty,
        };
        return words.AsSpan().IndexOfAny("\",\r\n") >= 0 ? "\"" + words.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"" : words;
    }
}
