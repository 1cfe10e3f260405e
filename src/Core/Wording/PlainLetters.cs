using System.Globalization;
using System.Text;

namespace Watersown.Wording;

/// <summary>
/// Letters as people type them in a hurry: small, and without their marks. Written out here because a browser's runtime
/// carries no table of its own and would leave <c>á</c> as it is.
/// </summary>
public static class PlainLetters
{
    private const string Marked = "àáâãäåāăąçćĉċčďđèéêëēĕėęěĝğġģĥħìíîïĩīĭįıİĵķĺļľŀłñńņňòóôõöøōŏőŕŗřśŝşšţťŧùúûüũūŭůűųŵýÿŷźżž";
    private const string Bare = "aaaaaaaaacccccddeeeeeeeeegggghhiiiiiiiiiijklllllnnnnooooooooorrrsssstttuuuuuuuuuuwyyyzzz";

    /// <summary>The text in small letters without marks; what is no letter stays. Half of a letter becomes a question sign.</summary>
    public static string Fold(string text)
    {
        var folded = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (Rune.GetUnicodeCategory(rune) == UnicodeCategory.NonSpacingMark) continue;
            var small = Rune.ToLowerInvariant(rune);
            var at = small.IsBmp ? Marked.IndexOf((char)small.Value, StringComparison.Ordinal) : -1;
            if (at >= 0) folded.Append(Bare[at]);
            else folded.Append(small.ToString());
        }

        return folded.ToString();
    }
}
