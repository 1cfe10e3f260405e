using System.Text;

namespace Watersown.HouseRules;

/// <summary>What stands between quotes in C#: the words that somebody may read. Comments and code are left out.</summary>
internal static class Literals
{
    /// <summary>Each literal with the line it begins on.</summary>
    public static IEnumerable<(int Line, string Text)> Of(string code)
    {
        for (int i = 0, line = 1; i < code.Length; i++)
        {
            var rest = code.AsSpan(i);
            var from = i;
            if (rest.StartsWith("//")) i = Until(code, i, "\n") - 1;
            else if (rest.StartsWith("/*")) i = Until(code, i + 2, "*/");
            else if (rest.StartsWith("'")) i = Character(code, i);
            else if (rest.StartsWith("\"\"\"")) yield return (line, Raw(code, ref i));
            else if (rest.StartsWith("\"")) yield return (line, Quoted(code, ref i, Verbatim(code, i)));
            line += code.AsSpan(from, Math.Min(i, code.Length - 1) - from + 1).Count('\n');
        }
    }

    private static bool Verbatim(string code, int quote) => quote > 0 && (code[quote - 1] == '@' || (quote > 1 && code[quote - 1] == '$' && code[quote - 2] == '@'));

    private static string Quoted(string code, ref int i, bool verbatim)
    {
        var text = new StringBuilder();
        for (i++; i < code.Length && code[i] != '"'; i++)
        {
            if (!verbatim && code[i] == '\\') i++;
            if (i < code.Length) text.Append(code[i]);
        }

        return text.ToString();
    }

    private static string Raw(string code, ref int i)
    {
        var quotes = 0;
        while (i + quotes < code.Length && code[i + quotes] == '"') quotes++;
        var start = i + quotes;
        var end = code.IndexOf(new string('"', quotes), start, StringComparison.Ordinal);
        if (end < 0) end = code.Length;
        i = end + quotes - 1;
        return code[start..end];
    }

    private static int Character(string code, int i) => Until(code, code[Math.Min(i + 1, code.Length - 1)] == '\\' ? i + 3 : i + 2, "'");

    // The last index of the next mark, or the end.
    private static int Until(string code, int from, string mark)
    {
        var at = from < code.Length ? code.IndexOf(mark, from, StringComparison.Ordinal) : -1;
        return at < 0 ? code.Length : at + mark.Length - 1;
    }
}
