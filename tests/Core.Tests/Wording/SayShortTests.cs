namespace Watersown.Wording;

public sealed class SayShortTests
{
    [Theory]
    [InlineData("abcd", 4, "abcd")]
    [InlineData("abcde", 4, "abcd…")]
    [InlineData("abc\ud83c\udf3e", 4, "abc…")]
    [InlineData("ab\ud83c\udf3ec", 4, "ab\ud83c\udf3e…")]
    public void A_long_text_is_cut_between_letters_and_never_within_one(string text, int most, string shown) => Assert.Equal(shown, Say.Short(text, most));
}
