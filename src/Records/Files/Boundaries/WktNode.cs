using System.Globalization;
using System.Text;

namespace Watersown.Records.Files.Boundaries;

/// <summary>
/// Well-known text of a coordinate system, taken apart: <c>NAME["text",1.5,CHILD[…]]</c>. Read here rather than by the
/// projection package, whose own reader never comes back from a text that breaks off inside quotes.
/// </summary>
internal sealed record WktNode(string Keyword, ImmutableArray<string> Texts, ImmutableArray<double> Numbers, ImmutableArray<WktNode> Children)
{
    private const int MaxLength = 20_000;
    private const int MaxDepth = 12;

    /// <summary>The first text, usually a name.</summary>
    public string Name => Texts.IsEmpty ? string.Empty : Texts[0];

    public WktNode? Child(string keyword) => Children.FirstOrDefault(c => string.Equals(c.Keyword, keyword, StringComparison.Ordinal));

    /// <summary>The node itself or the first one below it with this keyword.</summary>
    public WktNode? Find(string keyword) =>
        string.Equals(Keyword, keyword, StringComparison.Ordinal) ? this : Children.Select(c => c.Find(keyword)).FirstOrDefault(c => c is not null);

    /// <summary>The text as one node; none where it is not well formed. Nodes that follow the first are left out.</summary>
    public static WktNode? Parse(string text)
    {
        if (text.Length > MaxLength) return null;
        var at = 0;
        return Read(text.TrimStart('\uFEFF'), ref at, 0);
    }

    private static WktNode? Read(string text, ref int at, int depth)
    {
        SkipSpace(text, ref at);
        var start = at;
        while (at < text.Length && (char.IsAsciiLetterOrDigit(text[at]) || text[at] == '_')) at++;
        var keyword = text[start..at].ToUpperInvariant();
        SkipSpace(text, ref at);
        if (depth > MaxDepth || keyword.Length == 0 || at >= text.Length || text[at] is not ('[' or '(')) return null;
        at++;

        var texts = ImmutableArray.CreateBuilder<string>();
        var numbers = ImmutableArray.CreateBuilder<double>();
        var children = ImmutableArray.CreateBuilder<WktNode>();
        while (true)
        {
            SkipSpace(text, ref at);
            if (at >= text.Length || !ReadItem(text, ref at, depth, texts, numbers, children)) return null;
            SkipSpace(text, ref at);
            if (at >= text.Length) return null;
            var mark = text[at++];
            if (mark is ']' or ')') return new WktNode(keyword, texts.ToImmutable(), numbers.ToImmutable(), children.ToImmutable());
            if (mark != ',') return null;
        }
    }

    private static bool ReadItem(string text, ref int at, int depth,
        ImmutableArray<string>.Builder texts, ImmutableArray<double>.Builder numbers, ImmutableArray<WktNode>.Builder children)
    {
        if (text[at] == '"')
        {
            if (Quoted(text, ref at) is not { } quoted) return false;
            texts.Add(quoted);
            return true;
        }

        var end = at;
        while (end < text.Length && text[end] is not (',' or ']' or ')' or '[' or '(')) end++;
        if (end >= text.Length) return false;
        if (text[end] is '[' or '(')
        {
            if (Read(text, ref at, depth + 1) is not { } child) return false;
            children.Add(child);
            return true;
        }

        var word = text[at..end].Trim();
        at = end;
        if (double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)) numbers.Add(number);
        else if (word.Length > 0) texts.Add(word); // an axis direction stands there without quotes
        return word.Length > 0;
    }

    private static string? Quoted(string text, ref int at)
    {
        var said = new StringBuilder();
        for (at++; at < text.Length; at++)
        {
            if (text[at] != '"') said.Append(text[at]);
            else if (at + 1 < text.Length && text[at + 1] == '"') said.Append(text[at++]);
            else
            {
                at++;
                return said.ToString();
            }
        }

        return null;
    }

    private static void SkipSpace(string text, ref int at)
    {
        while (at < text.Length && char.IsWhiteSpace(text[at])) at++;
    }
}
