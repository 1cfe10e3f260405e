using System.Globalization;
using System.Text;

namespace Watersown.Schedule.Lists;

/// <summary>
/// Splits a list into lines and cells: commas, tabs, semicolons, bars, or columns set apart by blanks, whichever the lines
/// agree on best. Cells in quotes may hold any of them. A few lines of code in Core rather than a package, so that a list
/// pasted on a phone without a signal is read by the same rules as a file.
/// </summary>
public static class ListSplitting
{
    private static readonly char[] delimiters = ['\t', ';', '|', ','];

    /// <summary>Every line with its cells; refused where a quote is left open.</summary>
    [Source(nameof(Sources.FarmRecord))]
    public static Outcome<ImmutableArray<ListRow>> Split(string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        // Some spreadsheets name the delimiter on a line of its own.
        var named = Named(lines[0]);
        if (named is not null) lines[0] = string.Empty;
        var delimiter = named ?? Choose(lines);
        if (delimiter is null && lines.Any(l => Apart(l).Length > 1)) return Rows(lines, Apart);
        if (delimiter == '|') return Rows(lines, l => [.. l.Trim().Trim('|').Split('|').Select(c => c.Trim())]);
        return Quoted(lines, delimiter ?? ',');
    }

    private static char? Named(string line) =>
        line.Length == 5 && line.StartsWith("sep=", StringComparison.OrdinalIgnoreCase) && delimiters.Contains(line[4]) ? line[4] : null;

    /// <summary>The delimiter that most lines have, and have equally often.</summary>
    private static char? Choose(string[] lines)
    {
        char? best = null;
        var most = 0;
        foreach (var delimiter in delimiters)
        {
            var counts = lines.Select(l => Outside(l, delimiter)).Where(c => c > 0).ToList();
            if (counts.Count == 0) continue;
            var agreeing = counts.GroupBy(c => c).Max(g => g.Count()) + counts.Count;
            if (agreeing <= most) continue;
            (best, most) = (delimiter, agreeing);
        }

        return best;
    }

    /// <summary>How often a line has it outside of quotes.</summary>
    private static int Outside(string line, char delimiter)
    {
        var count = 0;
        var quoted = false;
        foreach (var letter in line)
        {
            if (letter == '"') quoted = !quoted;
            else if (letter == delimiter && !quoted) count++;
        }

        return count;
    }

    private static Outcome<ImmutableArray<ListRow>> Rows(string[] lines, Func<string, ImmutableArray<string>> cells) =>
        Outcome<ImmutableArray<ListRow>>.Of([.. lines.Select((line, i) => new ListRow(i + 1, cells(line)))]);

    /// <summary>Cells set apart by two blanks or more.</summary>
    private static ImmutableArray<string> Apart(string line)
    {
        var cells = ImmutableArray.CreateBuilder<string>();
        var cell = new StringBuilder();
        var blanks = 0;
        foreach (var letter in line.Trim())
        {
            if (char.IsWhiteSpace(letter))
            {
                blanks++;
                cell.Append(letter);
                continue;
            }

            if (blanks > 1)
            {
                cells.Add(cell.ToString().Trim());
                cell.Clear();
            }

            blanks = 0;
            cell.Append(letter);
        }

        cells.Add(cell.ToString());
        return cells.ToImmutable();
    }

    /// <summary>Every line end ends a line, so that one quote left open cannot swallow the fields behind it.</summary>
    private static Outcome<ImmutableArray<ListRow>> Quoted(string[] lines, char delimiter)
    {
        var rows = ImmutableArray.CreateBuilder<ListRow>(lines.Length);
        var problems = new List<Problem>();
        for (var i = 0; i < lines.Length; i++)
        {
            if (Cells(lines[i], delimiter) is { } cells) rows.Add(new ListRow(i + 1, cells));
            else problems.Add(ListProblems.QuoteOpen.At("line " + (i + 1).ToString(CultureInfo.InvariantCulture)));
        }

        return problems.Count > 0 ? Outcome<ImmutableArray<ListRow>>.Refuse(problems) : Outcome<ImmutableArray<ListRow>>.Of(rows.ToImmutable());
    }

    /// <summary>
    /// Cells of one line; none where a quote is left open. A quote opens only at the start of a cell and is written twice
    /// inside; a stray one in the middle of a name stays as it is.
    /// </summary>
    private static ImmutableArray<string>? Cells(string line, char delimiter)
    {
        var cells = ImmutableArray.CreateBuilder<string>();
        var cell = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
        {
            var letter = line[i];
            if (letter == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"')
            {
                cell.Append('"');
                i++;
            }
            else if (letter == '"' && quoted) quoted = false;
            else if (letter == '"' && string.IsNullOrWhiteSpace(cell.ToString()))
            {
                cell.Clear();
                quoted = true;
            }
            else if (letter == delimiter && !quoted)
            {
                cells.Add(cell.ToString().Trim());
                cell.Clear();
            }
            else cell.Append(letter);
        }

        if (quoted) return null;
        cells.Add(cell.ToString().Trim());
        return cells.ToImmutable();
    }
}
