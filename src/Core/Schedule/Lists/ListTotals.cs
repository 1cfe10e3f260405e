using System.Globalization;
using Watersown.Wording;

namespace Watersown.Schedule.Lists;

/// <summary>Lines that add up the fields above them: known by their first word, and checked against the sum.</summary>
internal static class ListTotals
{
    // Lists round their totals to whole acres.
    private const double Rounding = 0.5;

    private static readonly string[] words = ["total", "totals", "totales", "subtotal", "sum", "suma", "grand", "gran", "sub"];

    public static bool IsTotal(ListRow row)
    {
        var first = row.Cells.FirstOrDefault(c => !string.IsNullOrWhiteSpace(c));
        if (first is null) return false;
        var said = ListHeadings.Words(first);
        return said.Length > 0 && words.Contains(said[0].TrimEnd(':'), StringComparer.Ordinal) && (said[0] is not ("grand" or "gran" or "sub") || (said.Length > 1 && said[1].StartsWith("total", StringComparison.Ordinal)));
    }

    /// <summary>A warning where no number of the line is what the fields above add up to.</summary>
    /// <param name="row">The line of the total.</param>
    /// <param name="above">Every field above it.</param>
    /// <param name="since">Fields since the total before it.</param>
    /// <param name="unit">Acres that one of its numbers stands for.</param>
    public static Problem? Check(ListRow row, IReadOnlyList<ListedField> above, IReadOnlyList<ListedField> since, Area unit)
    {
        var said = Numbers(row).ToList();
        if (said.Count == 0) return null;
        foreach (var fields in new[] { above, since })
        {
            var acres = fields.Aggregate(Area.Zero, (sum, f) => sum + f.Net) / unit;
            if (said.Any(n => Math.Abs(n - acres) <= Rounding)) return null;
        }

        var sum = above.Aggregate(Area.Zero, (total, f) => total + f.Net);
        return ListProblems.TotalDiffers.At("line " + row.Line.ToString(CultureInfo.InvariantCulture),
            ("value", string.Join(' ', row.Cells.Where(c => !string.IsNullOrWhiteSpace(c)).Select(c => c.Trim()))), ("limit", Say.Figure(sum.Acres) + " ac"));
    }

    /// <summary>Each cell as a number, each word of each cell, and neighbors that a thousands mark has cut in two.</summary>
    private static IEnumerable<double> Numbers(ListRow row)
    {
        foreach (var cell in row.Cells)
        {
            foreach (var word in cell.Split(' ', StringSplitOptions.RemoveEmptyEntries).Append(cell))
            {
                if (ListNumber.Read(word) is { } number) yield return number.Value;
                // In a total, unlike in a field, a point before three digits may well be a thousands mark.
                if (word.Contains('.', StringComparison.Ordinal) && ListNumber.Read(word.Replace('.', ',')) is { } dotted) yield return dotted.Value;
            }
        }

        for (var i = 1; i < row.Cells.Length; i++)
        {
            var before = row.Cells[i - 1].Split(' ', StringSplitOptions.RemoveEmptyEntries).LastOrDefault() ?? string.Empty;
            if (ListNumber.Read(before + "," + row.Cells[i].Trim()) is { } joined) yield return joined.Value;
        }
    }
}
