using System.Text;

namespace Watersown.Cli;

/// <summary>Columns set out with blanks; figures stand to the right.</summary>
internal static class TextTable
{
    /// <summary>The table with a line end behind each line.</summary>
    /// <param name="headings">Headings; one that starts with &gt; has figures under it.</param>
    /// <param name="rows">Cells of each line.</param>
    public static string Write(ImmutableArray<string> headings, IEnumerable<ImmutableArray<string>> rows)
    {
        ImmutableArray<bool> right = [.. headings.Select(h => h.StartsWith('>'))];
        List<ImmutableArray<string>> lines = [[.. headings.Select(h => h.TrimStart('>'))], .. rows];
        ImmutableArray<int> widths = [.. headings.Select((_, i) => lines.Max(l => Width(l[i])))];
        var text = new StringBuilder();
        foreach (var line in lines)
        {
            var cells = line.Select((cell, i) => right[i] ? new string(' ', widths[i] - Width(cell)) + cell : cell + new string(' ', widths[i] - Width(cell)));
            text.Append(string.Join("  ", cells).TrimEnd()).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Letters as seen, marks counted with their letter.</summary>
    private static int Width(string text) => new System.Globalization.StringInfo(text).LengthInTextElements;
}
