using System.Text;

namespace Watersown.HouseRules;

/// <summary>Commands in the code blocks of the documents, taken apart as a shell does.</summary>
internal static class GuideCommands
{
    private const string Start = "script/watersown ";

    /// <summary>Every command line of a document that starts with the desk's own command: where it stands, and its words.</summary>
    public static IEnumerable<(string Where, ImmutableArray<string> Words)> In(TextFile document)
    {
        var fenced = false;
        var lines = document.Lines;
        for (var i = 0; i < lines.Length; i++)
        {
            if (lines[i].StartsWith("```", StringComparison.Ordinal)) fenced = !fenced;
            var line = lines[i].TrimStart();
            var block = fenced || lines[i].StartsWith("    ", StringComparison.Ordinal);
            if (!block || !(line.StartsWith(Start, StringComparison.Ordinal) || line.StartsWith("$ " + Start, StringComparison.Ordinal))) continue;
            yield return (document.Path + ":" + (i + 1), Words(line[(line.IndexOf(Start, StringComparison.Ordinal) + Start.Length)..]));
        }
    }

    /// <summary>Words of a command line: blanks part them, quotes hold them together, a pipe or an arrow ends them.</summary>
    public static ImmutableArray<string> Words(string line)
    {
        var words = ImmutableArray.CreateBuilder<string>();
        var word = new StringBuilder();
        var (begun, quote) = (false, '\0');
        foreach (var letter in line)
        {
            if (quote == '\0' && letter is '|' or '>' or '<' or ';') break;
            if (quote == '\0' && letter is ' ')
            {
                if (begun) words.Add(word.ToString());
                begun = false;
                word.Clear();
                continue;
            }

            begun = true;
            if (quote == '\0' && letter is '\'' or '"') quote = letter;
            else if (letter == quote && quote != '\0') quote = '\0';
            else word.Append(letter);
        }

        if (begun) words.Add(word.ToString());
        return words.ToImmutable();
    }
}
