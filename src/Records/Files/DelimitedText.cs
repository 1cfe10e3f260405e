using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using CsvHelper;
using Watersown.Schedule.Lists;

namespace Watersown.Records.Files;

/// <summary>
/// Splits a list into lines and cells: commas, tabs, semicolons, bars, or columns set apart by blanks, whichever the lines
/// agree on best. Cells in quotes may hold any of them.
/// </summary>
public static partial class DelimitedText
{
    private static readonly char[] Delimiters = ['\t', ';', '|', ','];

    public static Outcome<ImmutableArray<ListRow>> Split(string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        // Some spreadsheets name the delimiter on a line of its own.
        var named = Named().Match(lines[0]);
        if (named.Success) lines[0] = string.Empty;
        var delimiter = named.Success ? named.Groups["delimiter"].Value[0] : Choose(lines);
        if (delimiter is null && lines.Any(l => Gap().IsMatch(l.Trim())))
            return Outcome<ImmutableArray<ListRow>>.Of([.. lines.Select((line, i) => new ListRow(i + 1, [.. Gap().Split(line.Trim())]))]);
        return delimiter == '|' ? Bars(lines) : Read(lines, delimiter ?? ',');
    }

    /// <summary>The delimiter that most lines have, and have equally often.</summary>
    private static char? Choose(string[] lines)
    {
        char? best = null;
        var most = 0;
        foreach (var delimiter in Delimiters)
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

    private static Outcome<ImmutableArray<ListRow>> Bars(string[] lines) =>
        Outcome<ImmutableArray<ListRow>>.Of([.. lines.Select((line, i) => new ListRow(i + 1, [.. line.Trim().Trim('|').Split('|').Select(c => c.Trim())]))]);

    /// <summary>Every line end ends a line, so that one quote left open cannot swallow the fields behind it.</summary>
    private static Outcome<ImmutableArray<ListRow>> Read(string[] lines, char delimiter)
    {
        var rows = ImmutableArray.CreateBuilder<ListRow>(lines.Length);
        var problems = new List<Problem>();
        using var reader = CsvReader.Create(Encoding.UTF8.GetBytes(string.Join('\n', lines)), new CsvReaderOptions
        {
            Separator = delimiter,
            HasHeader = false,
            AllowLineBreaksInQuotes = false,
            TrackLineNumbers = true,
            MalformedData = CsvMalformedDataHandling.Recover, // a stray quote in the middle of a name stays as it is
            OnMalformedRecord = record =>
            {
                if (record.Reason is CsvMalformedReason.LineBreakInQuotes or CsvMalformedReason.UnterminatedQuote)
                    problems.Add(ListProblems.QuoteOpen.At("line " + record.LineNumber.ToString(CultureInfo.InvariantCulture)));
            },
        });
        while (reader.Read()) rows.Add(new ListRow((int)reader.LineNumber, [.. reader.Current.ToArray().Select(c => c.Trim())]));
        return problems.Count > 0 ? Outcome<ImmutableArray<ListRow>>.Refuse(problems) : Outcome<ImmutableArray<ListRow>>.Of(rows.ToImmutable());
    }

    [GeneratedRegex("^sep=(?<delimiter>[,;|\t])$", RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Named();

    [GeneratedRegex(@"\s{2,}", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Gap();
}
