using Watersown.Land;

namespace Watersown.Records.Files.Boundaries;

/// <summary>One boundary as a file has it: where it stands, what the file says about it, and the edge.</summary>
/// <param name="Where">File, place in it, and its name where it has one.</param>
/// <param name="Name">What the file calls it; empty where it has no name.</param>
/// <param name="Columns">Everything the file says about it, in the file's order, as text.</param>
/// <param name="Edge">The edge.</param>
public sealed record MapBoundary(string Where, string Name, ImmutableArray<(string Column, string Text)> Columns, Boundary Edge)
{
    /// <summary>Columns that usually hold the short code of a field, without spaces and marks.</summary>
    private static readonly string[] codeColumns = ["code", "fieldcode", "shortcode", "fieldid", "fieldno", "fieldnumber", "field", "id"];

    /// <summary>Columns that usually hold its name.</summary>
    private static readonly string[] nameColumns = ["name", "fieldname", "fldname", "field", "label", "title"];

    /// <summary>What may be the field's code, likeliest first.</summary>
    public IEnumerable<string> Codes => Texts(codeColumns);

    /// <summary>What may be the field's name, likeliest first.</summary>
    public IEnumerable<string> Names => Texts(nameColumns).Append(Name).Where(t => t.Length > 0);

    /// <summary>The text of one column; empty where there is none.</summary>
    public string this[string column] => Columns.FirstOrDefault(c => string.Equals(c.Column, column, StringComparison.OrdinalIgnoreCase)).Text ?? string.Empty;

    /// <summary>The name a file gives a thing, out of its columns.</summary>
    public static string NameOf(IEnumerable<(string Column, string Text)> columns)
    {
        var all = columns.ToList();
        return nameColumns.Concat(codeColumns).Select(k => all.FirstOrDefault(c => Plain(c.Column) == k).Text).FirstOrDefault(t => !string.IsNullOrEmpty(t)) ?? string.Empty;
    }

    /// <summary>Small letters and digits alone, so that <c>Widow's Eighty</c> is <c>WIDOWS EIGHTY</c>.</summary>
    internal static string Plain(string text) => string.Concat(text.ToLowerInvariant().Where(char.IsLetterOrDigit));

    private IEnumerable<string> Texts(string[] keys) =>
        keys.SelectMany(k => Columns.Where(c => Plain(c.Column) == k).Select(c => c.Text)).Where(t => t.Length > 0);
}
