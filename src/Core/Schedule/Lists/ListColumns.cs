using Watersown.Wording;

namespace Watersown.Schedule.Lists;

/// <summary>Finds out what each column of a list says: by its heading, and where that tells nothing by what stands in it.</summary>
internal static class ListColumns
{
    /// <summary>The columns, and whether the first row was their headings.</summary>
    public static (ImmutableArray<UnderstoodColumn> Columns, bool Headed) Understand(ImmutableArray<ListRow> rows, ImmutableArray<Problem>.Builder problems)
    {
        var width = Width(rows);
        var headed = IsHeading(rows);
        var headings = Enumerable.Range(0, width).Select(i => headed && i < rows[0].Cells.Length ? rows[0].Cells[i].Trim() : string.Empty).ToList();
        var meanings = headed ? ByHeading(headings, rows[0].Line, problems) : [];
        var named = meanings.Keys.ToHashSet();
        ListGuess.Fill(meanings, headed ? rows[1..] : rows, width, headed && meanings.Count > 0);
        var columns = ImmutableArray.CreateBuilder<UnderstoodColumn>(width);
        for (var i = 0; i < width; i++)
        {
            var known = meanings.TryGetValue(i, out var meaning);
            columns.Add(new UnderstoodColumn(i, headings[i], known ? meaning : null) { Guessed = known && !named.Contains(i) });
        }

        Tell(columns, problems);
        return (columns.ToImmutable(), headed);
    }

    private static void Tell(ImmutableArray<UnderstoodColumn>.Builder columns, ImmutableArray<Problem>.Builder problems)
    {
        string Told(Func<ListColumn, string> called) =>
            string.Join(", ", columns.Where(c => c.Guessed).Select(c => (c.Index + 1).ToString(System.Globalization.CultureInfo.InvariantCulture) + " " + called(c.Meaning!.Value)));
        if (columns.Any(c => c.Guessed))
            problems.Add(ListProblems.ColumnGuessed.At(string.Empty, ("value", Told(ListWords.Called)), ("value:es", Told(ListWords.CalledSpanish))));
        var unused = columns.Where(c => c.Meaning is null && c.Heading.Length > 0).Select(c => "'" + Say.Short(c.Heading) + "'").ToList();
        if (unused.Count > 0) problems.Add(ListProblems.HeadingNotUsed.At(string.Empty, ("value", string.Join(", ", unused)), ("limit", ListHeadings.Examples)));
    }

    /// <summary>Columns by number and heading, for a problem.</summary>
    public static string ColumnName(int index, string heading) =>
        "column " + (index + 1).ToString(System.Globalization.CultureInfo.InvariantCulture) + (heading.Length == 0 ? string.Empty : " '" + Say.Short(heading) + "'");

    /// <summary>As wide as the headings, or as most lines are: one line with a comma too many must not make a column.</summary>
    private static int Width(ImmutableArray<ListRow> rows)
    {
        if (IsHeading(rows)) return Trimmed(rows[0]);
        return rows.GroupBy(Trimmed).OrderByDescending(g => g.Count()).ThenByDescending(g => g.Key).First().Key;
    }

    /// <summary>Cells up to the last that has something in it.</summary>
    public static int Trimmed(ListRow row)
    {
        var length = row.Cells.Length;
        while (length > 1 && string.IsNullOrWhiteSpace(row.Cells[length - 1])) length--;
        return length;
    }

    /// <summary>Headings hold no numbers, and either say something known or stand over numbers.</summary>
    private static bool IsHeading(ImmutableArray<ListRow> rows)
    {
        var cells = rows[0].Cells.Where(c => !string.IsNullOrWhiteSpace(c)).ToList();
        if (cells.Any(c => ListNumber.Read(c) is not null)) return false;
        return cells.Any(c => ListHeadings.Meanings(c).Any(m => m.Off < 100)) || (cells.Count > 1 && rows.Length > 1 && rows.Skip(1).Any(r => r.Cells.Any(c => ListNumber.Read(c) is not null)));
    }

    private static Dictionary<int, ListColumn> ByHeading(List<string> headings, int line, ImmutableArray<Problem>.Builder problems)
    {
        var pairs = headings
            .SelectMany((heading, index) => ListHeadings.Meanings(heading).Select(m => (Index: index, m.Meaning, m.Off)))
            .OrderBy(p => p.Off).ThenBy(p => p.Index).ThenBy(p => p.Meaning)
            .ToList();
        var taken = new Dictionary<int, ListColumn>();
        foreach (var (index, meaning, off) in pairs)
        {
            if (taken.ContainsKey(index)) continue;
            var other = taken.Where(t => t.Value == meaning).Select(t => (int?)t.Key).FirstOrDefault();
            if (other is null)
            {
                taken.Add(index, meaning);
            }
            else if (off == 0)
            {
                problems.Add(ListProblems.SameMeaning.At("line " + line.ToString(System.Globalization.CultureInfo.InvariantCulture), ("value", headings[other.Value]), ("other", headings[index]), ("meaning", ListWords.Called(meaning)), ("meaning:es", ListWords.CalledSpanish(meaning))));
                taken.Add(index, meaning);
            }
        }

        return taken;
    }
}
