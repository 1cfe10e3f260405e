using MiniExcelLibs;
using Watersown.Documents.Seasons;

namespace Watersown.Records.Files.Season;

/// <summary>Tables of a season as one workbook (Office Open XML, ISO/IEC 29500), a sheet each.</summary>
public static class SeasonWorkbook
{
    /// <summary>The workbook's bytes.</summary>
    public static byte[] Write(ImmutableArray<SeasonTable> tables)
    {
        using var stream = new MemoryStream();
        stream.SaveAs(tables.ToDictionary(t => t.Name, t => (object)Rows(t), StringComparer.Ordinal));
        return stream.ToArray();
    }

    // Moments as text: a spreadsheet's own have no offset, and would be read in another place's time.
    private static List<Dictionary<string, object?>> Rows(SeasonTable table) =>
        [.. table.Rows.DefaultIfEmpty([.. table.Columns.Select(_ => (object?)null)]).Select(row => table.Columns.Zip(row).ToDictionary(c => c.First, c => Value(c.Second), StringComparer.Ordinal))];

    private static object? Value(object? value) => SeasonTable.Harmless(value) switch
    {
        DateOnly day => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture),
        DateTimeOffset moment => moment.ToString("yyyy-MM-dd'T'HH:mm:sszzz", System.Globalization.CultureInfo.InvariantCulture),
        var other => other,
    };
}
