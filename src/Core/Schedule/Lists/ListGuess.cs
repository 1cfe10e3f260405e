using Watersown.Land;

namespace Watersown.Schedule.Lists;

/// <summary>
/// Tells columns without a telling heading by what stands in them: names are words, checks are small whole numbers, rates lie
/// close together between 100 and 250, acres are what is left. Common practice; every guess is said.
/// </summary>
internal static class ListGuess
{
    private const double ChecksMost = 30;

    private const double RateLeast = 100;

    private const double RateMost = 250;

    /// <summary>Adds what can be told.</summary>
    /// <param name="meanings">What is known, by column.</param>
    /// <param name="rows">Lines without the headings.</param>
    /// <param name="width">Columns.</param>
    /// <param name="needsOnly">Only name and acres: other columns have headings, which would have said so.</param>
    public static void Fill(Dictionary<int, ListColumn> meanings, ImmutableArray<ListRow> rows, int width, bool needsOnly)
    {
        var free = Enumerable.Range(0, width).Where(i => !meanings.ContainsKey(i)).Select(i => new Column(i, Cells(rows, i))).Where(c => c.Cells.Count > 0).ToList();
        var words = free.Where(c => c.Numbers.Count * 2 < c.Cells.Count).ToList();
        var numbers = free.Except(words).ToList();
        if (!meanings.ContainsValue(ListColumn.Name) && words.Count > 0)
        {
            // Of two columns of words the shorter is the code.
            var name = words.OrderByDescending(c => c.Cells.Distinct(StringComparer.Ordinal).Count()).ThenByDescending(c => c.Cells.Average(w => w.Length)).First();
            meanings.Add(name.Index, ListColumn.Name);
            var code = needsOnly ? null : words.FirstOrDefault(c => c != name && c.Cells.All(w => w.Length <= LandLimits.MaxCodeLength) && c.Cells.Distinct(StringComparer.OrdinalIgnoreCase).Count() == c.Cells.Count);
            if (code is not null) meanings.Add(code.Index, ListColumn.Code);
        }

        if (!meanings.ContainsValue(ListColumn.Net)) FillNumbers(meanings, numbers, needsOnly);
    }

    private static void FillNumbers(Dictionary<int, ListColumn> meanings, List<Column> numbers, bool needsOnly)
    {
        var left = numbers.ToList();
        if (!needsOnly && left.Count > 1 && left.Where(c => c.Numbers.All(n => n == Math.Floor(n) && n <= ChecksMost)).MinBy(c => c.Numbers.Max()) is { } checks)
        {
            meanings.Add(checks.Index, ListColumn.Checks);
            left.Remove(checks);
        }

        var rates = left.Where(c => c.Numbers.All(n => n is >= RateLeast and <= RateMost)).ToList();
        if (!needsOnly && left.Count > 1 && rates.OrderBy(c => c.Numbers.Distinct().Count()).ThenByDescending(c => c.Index).FirstOrDefault() is { } rate)
        {
            meanings.Add(rate.Index, ListColumn.Rate);
            left.Remove(rate);
        }

        if (left.Count > 0) meanings.Add(left[0].Index, ListColumn.Net);
    }

    private static List<string> Cells(ImmutableArray<ListRow> rows, int index) =>
        [.. rows.Where(r => index < r.Cells.Length && !ListTotals.IsTotal(r)).Select(r => r.Cells[index].Trim()).Where(c => c.Length > 0)];

    private sealed record Column(int Index, List<string> Cells)
    {
        public List<double> Numbers { get; } = [.. Cells.Select(ListNumber.Read).OfType<ListNumber>().Select(n => n.Value)];
    }
}
