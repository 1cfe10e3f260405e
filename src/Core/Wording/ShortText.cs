using System.Globalization;
using System.Text;

namespace Watersown.Wording;

/// <summary>
/// One text message as the telephone network counts it: 160 septets of the GSM 7-bit alphabet. A letter outside that
/// alphabet would cut the limit to 70, so it is written without its accent.
/// </summary>
[Source(nameof(Sources.Gsm0338), "6.2.1 default alphabet and its extension table")]
public static class ShortText
{
    /// <summary>Most septets in one message.</summary>
    public const int Most = 160;

    // Line feed and carriage return left out on purpose: a message here is one line.
    private const string Basic =
        "@£$¥èéùìòÇØøÅåΔ_ΦΓΛΩΠΨΣΘΞÆæßÉ !\"#¤%&'()*+,-./0123456789:;<=>?¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿abcdefghijklmnopqrstuvwxyzäöñüà";

    private const string Extended = "^{}\\[~]|€";

    /// <summary>Septets that a message takes: two for a letter of the extension table.</summary>
    public static int Septets(string text) => text.Sum(c => Extended.Contains(c, StringComparison.Ordinal) ? 2 : 1);

    /// <summary>Every letter can be sent as it stands.</summary>
    public static bool IsPlain(string text) =>
        text.All(c => Basic.Contains(c, StringComparison.Ordinal) || Extended.Contains(c, StringComparison.Ordinal));

    /// <summary>The same words in letters that the alphabet has: <c>mañana</c> stays, <c>sábado</c> becomes <c>sabado</c>.</summary>
    public static string Fold(string text)
    {
        var folded = new StringBuilder(text.Length);
        foreach (var c in text.Normalize(NormalizationForm.FormC))
        {
            if (IsPlain(c.ToString())) folded.Append(c);
            else folded.Append(Replacement(c));
        }

        return folded.ToString();
    }

    /// <summary>
    /// Words between <paramref name="before"/> and <paramref name="after"/> spread over as few messages as hold them, in
    /// order, each message whole in itself. An item too long for a message of its own is cut at its end, with dots.
    /// </summary>
    /// <param name="before">Starts every message.</param>
    /// <param name="items">What is listed.</param>
    /// <param name="joint">Between two items.</param>
    /// <param name="after">Ends every message.</param>
    public static ImmutableArray<string> Spread(string before, IEnumerable<string> items, string joint, string after)
    {
        var messages = ImmutableArray.CreateBuilder<string>();
        string head = Fold(before), tail = Fold(after), between = Fold(joint), list = string.Empty;
        var room = Most - Septets(head) - Septets(tail);
        ArgumentOutOfRangeException.ThrowIfLessThan(room, 12, nameof(before));
        foreach (var item in items.Select(Fold).Select(i => Cut(i, room)))
        {
            if (list.Length > 0 && Septets(list) + Septets(between) + Septets(item) > room)
            {
                messages.Add(head + list + tail);
                list = string.Empty;
            }

            list = list.Length == 0 ? item : list + between + item;
        }

        if (list.Length > 0) messages.Add(head + list + tail);
        return messages.ToImmutable();
    }

    /// <summary>A whole message, cut with dots where it is too long.</summary>
    public static string One(string text) => Cut(Fold(text), Most);

    /// <summary>Not more than so many septets; cut with dots.</summary>
    public static string Cut(string text, int most)
    {
        if (Septets(text) <= most) return text;
        var kept = text;
        while (Septets(kept) > most - 3) kept = kept[..^1];
        return kept + "...";
    }

    private static string Replacement(char c) => c switch
    {
        '–' or '—' or '−' or '‑' => "-",
        '‘' or '’' or '′' => "'",
        '“' or '”' or '″' => "\"",
        '…' => "...",
        '·' or '•' => "-",
        '×' => "x",
        '÷' => "/",
        '½' => ".5",
        '°' => " deg",
        '²' => "2",
        '³' => "3",
        '≤' => "<=",
        '≥' => ">=",
        '→' => "to",
        // Said one by one: a phone's browser takes letters apart no further than this.
        'á' or 'â' or 'ã' => "a",
        'Á' or 'À' or 'Â' or 'Ã' => "A",
        'ê' or 'ë' => "e",
        'È' or 'Ê' or 'Ë' => "E",
        'í' or 'î' or 'ï' => "i",
        'Í' or 'Ì' or 'Î' or 'Ï' => "I",
        'ó' or 'ô' or 'õ' => "o",
        'Ó' or 'Ò' or 'Ô' or 'Õ' => "O",
        'ú' or 'û' => "u",
        'Ú' or 'Ù' or 'Û' => "U",
        'ç' => "c",
        '\u00A0' or '\u2009' or '\u202F' or '\n' or '\t' or '\r' => " ",
        _ => Bare(c),
    };

    // The letter without its marks; a question mark where even that is not in the alphabet.
    private static string Bare(char c)
    {
        if (char.IsSurrogate(c)) return char.IsHighSurrogate(c) ? "?" : string.Empty;
        var bare = new StringBuilder();
        foreach (var part in c.ToString().Normalize(NormalizationForm.FormD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(part) == UnicodeCategory.NonSpacingMark) continue;
            if (IsPlain(part.ToString())) bare.Append(part);
        }

        return bare.Length == 0 ? "?" : bare.ToString();
    }
}
