using System.Globalization;
using System.Text;

namespace Watersown.Land;

/// <summary>Makes short codes for fields whose farm has none, from their names: <c>Two Gates</c> becomes <c>TG</c>.</summary>
public static class ShortCodes
{
    /// <summary>
    /// One code for each name, in the same order, all different, at most four letters. A name that comes later never
    /// changes a code given earlier.
    /// </summary>
    /// <param name="names">Names in the farm's order.</param>
    /// <param name="taken">Codes the farm has given itself.</param>
    public static ImmutableArray<string> For(IEnumerable<string> names, IEnumerable<string> taken)
    {
        var used = new HashSet<string>(taken, StringComparer.OrdinalIgnoreCase);
        var codes = ImmutableArray.CreateBuilder<string>();
        foreach (var name in names)
        {
            var code = Candidates(name).First(c => !used.Contains(c));
            used.Add(code);
            codes.Add(code);
        }

        return codes.ToImmutable();
    }

    private static IEnumerable<string> Candidates(string name)
    {
        var words = Words(name);
        var whole = string.Concat(words);
        if (whole.Length is > 0 and <= LandLimits.MaxCodeLength) yield return whole;
        if (words.Length > 1) yield return Cut(string.Concat(words.Select(w => w[..1])));
        if (words.Length > 1) yield return Cut(words[0][..1] + words[^1]);
        if (whole.Length > 0) yield return Cut(whole[..Math.Min(3, whole.Length)]);
        if (whole.Length > 0) yield return Cut(whole);
        var letter = whole.Length > 0 ? whole[..1] : "F";
        for (var number = 1; number < 1000; number++) yield return letter + number.ToString(CultureInfo.InvariantCulture);
        for (var number = 1; number < 10_000; number++) yield return number.ToString(CultureInfo.InvariantCulture);
    }

    private static string Cut(string text) => text.Length <= LandLimits.MaxCodeLength ? text : text[..LandLimits.MaxCodeLength];

    /// <summary>Words in plain capital letters and digits, marks over letters and apostrophes left out.</summary>
    private static ImmutableArray<string> Words(string name)
    {
        var words = ImmutableArray.CreateBuilder<string>();
        var word = new StringBuilder();
        foreach (var rune in Decomposed(name))
        {
            if (Rune.GetUnicodeCategory(rune) == UnicodeCategory.NonSpacingMark || rune.Value is '\'' or '’') continue;
            if (rune.IsAscii && Rune.IsLetterOrDigit(rune)) word.Append(char.ToUpperInvariant((char)rune.Value));
            else Close();
        }

        Close();
        return words.ToImmutable();

        void Close()
        {
            if (word.Length > 0) words.Add(word.ToString());
            word.Clear();
        }
    }

    private static StringRuneEnumerator Decomposed(string name)
    {
        // Half a surrogate pair cannot be normalized; the rune enumerator replaces it first.
        var sound = string.Concat(name.EnumerateRunes().Select(r => r.ToString()));
        return sound.Normalize(NormalizationForm.FormD).EnumerateRunes();
    }
}
