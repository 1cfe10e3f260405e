using System.Globalization;
using System.Text;

namespace Watersown.Season.Texts;

/// <summary>One word of a text message.</summary>
/// <param name="Raw">As written.</param>
/// <param name="Plain">In small letters, marks over letters and signs left out.</param>
internal sealed record TextWord(string Raw, string Plain)
{
    /// <summary>Nothing of a text message is larger.</summary>
    private const double MaxNumber = 1e9;

    /// <summary>The word as a number.</summary>
    public double? Number { get; init; }

    /// <summary>Two whole numbers with a dash: from one check to the next.</summary>
    public (int From, int To)? Range { get; init; }

    /// <summary>Where it starts in the text.</summary>
    public int Start { get; init; }

    /// <summary>Sentences of words: a line end, a semicolon, or a comma or point before a blank ends one.</summary>
    public static ImmutableArray<ImmutableArray<TextWord>> Split(string text)
    {
        var clauses = ImmutableArray.CreateBuilder<ImmutableArray<TextWord>>();
        var clause = ImmutableArray.CreateBuilder<TextWord>();
        for (var i = 0; i < text.Length;)
        {
            var end = i;
            while (end < text.Length && !char.IsWhiteSpace(text[end]) && text[end] != ';') end++;
            var piece = text[i..end];
            clause.AddRange(Pieces(piece, i));
            if ((end < text.Length && text[end] is ';' or '\n' or '\r') || (piece.Length > 1 && piece[^1] is ',' or '.')) Close();
            i = end + 1;
        }

        Close();
        return clauses.ToImmutable();

        void Close()
        {
            if (clause.Count > 0) clauses.Add(clause.DrainToImmutable());
        }
    }

    /// <summary>A word as people run it together: <c>2in</c>, <c>ck5</c>, <c>14cfs</c> are two.</summary>
    private static IEnumerable<TextWord> Pieces(string piece, int start)
    {
        var plain = Fold(piece);
        if (plain.Length == 0) yield break;
        if (ReadNumber(plain) is { } number)
        {
            yield return new TextWord(piece, plain) { Number = number, Start = start };
            yield break;
        }

        if (ReadRange(plain) is { } range)
        {
            yield return new TextWord(piece, plain) { Range = range, Start = start };
            yield break;
        }

        var digits = plain.TakeWhile(c => char.IsAsciiDigit(c) || c is '.' or ',').Count();
        if (digits > 0 && plain[digits..].All(c => char.IsLetter(c) || c is '"' or '°') && ReadNumber(plain[..digits]) is { } before)
        {
            yield return new TextWord(piece, plain[..digits]) { Number = before, Start = start };
            yield return new TextWord(piece, plain[digits..]) { Start = start };
            yield break;
        }

        yield return new TextWord(piece, plain) { Start = start };
    }

    /// <summary>Small letters without marks; signs at the ends left out, but a mark for inches or degrees kept.</summary>
    public static string Fold(string word)
    {
        var text = new StringBuilder();
        foreach (var c in Wording.PlainLetters.Fold(word))
        {
            if (c is '\'' or '’') continue;
            text.Append(c is '”' or '″' ? '"' : c);
        }

        var folded = text.ToString().Trim('.', ',', ':', ';', '!', '?', '¿', '¡', '(', ')', '[', ']', '“', '*', '-', '_');
        return folded.Length > 1 && char.IsAsciiDigit(folded[^2]) ? folded : folded.Trim('"');
    }

    /// <summary>Only letters and figures, as codes are compared.</summary>
    public static string Bare(string word) => string.Concat(Fold(word).Where(char.IsLetterOrDigit));

    private static double? ReadNumber(string plain)
    {
        if (plain.Length is 0 or > 12 || !plain.All(c => char.IsAsciiDigit(c) || c is '.' or ',') || !char.IsAsciiDigit(plain[0])) return null;
        var comma = plain.LastIndexOf(',');
        // 15,450 is a weight and 2,5 a depth.
        var thousands = comma > 0 && plain.Length - comma == 4 && !plain.Contains('.', StringComparison.Ordinal) && plain[0] != '0';
        var text = thousands ? plain.Replace(",", string.Empty, StringComparison.Ordinal) : plain.Replace(',', '.');
        return double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number <= MaxNumber ? number : null;
    }

    private static (int From, int To)? ReadRange(string plain)
    {
        var dash = plain.IndexOf('-', StringComparison.Ordinal);
        if (dash is < 1 or > 3 || plain.Length - dash - 1 is < 1 or > 3) return null;
        return int.TryParse(plain[..dash], NumberStyles.None, CultureInfo.InvariantCulture, out var from) && int.TryParse(plain[(dash + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var to) ? (from, to) : null;
    }
}
