using System.Globalization;
using System.Text;

namespace Watersown.Wording;

public sealed class PlainLettersTests
{
    [Theory]
    [InlineData("Sembró la ÑUSTA", "sembro la nusta")]
    [InlineData("e\u0301", "e")]
    [InlineData("2½ in", "2½ in")]
    [InlineData("", "")]
    public void Letters_become_small_and_lose_their_marks(string typed, string plain) => Assert.Equal(plain, PlainLetters.Fold(typed));

    [Fact]
    public void Half_of_a_letter_does_no_harm() => Assert.Equal("a\ufffd", PlainLetters.Fold("Á" + '\ud83d'));

    /// <summary>Held against the runtime's own decomposition, which a browser does not carry.</summary>
    [Fact]
    public void Every_Latin_letter_with_a_mark_loses_it()
    {
        for (var c = '\u00c0'; c <= '\u017e'; c++)
        {
            var parts = c.ToString().Normalize(NormalizationForm.FormD);
            if (parts.Length < 2 || !char.IsAsciiLetter(parts[0]) || CharUnicodeInfo.GetUnicodeCategory(parts[1]) != UnicodeCategory.NonSpacingMark) continue;
            Assert.Equal(char.ToLowerInvariant(parts[0]).ToString(), PlainLetters.Fold(c.ToString()));
        }
    }
}
