using CsCheck;

namespace Watersown.Wording;

public sealed class ShortTextTests
{
    // 3GPP TS 23.038, 6.2.1 and 6.2.1.1 (from memory): ñ, ü, é, ¿ and ¡ are letters of the default alphabet; á, í, ó and ú
    // are not; braces, brackets, backslash, tilde, caret, bar and the euro sign take two septets.
    [Theory]
    [InlineData("NO tirar agua en N1 N2.", 23)]
    [InlineData("mañana ¿sí?", 11)]
    [InlineData("[x]", 5)]
    [InlineData("10 €", 5)]
    [InlineData("", 0)]
    public void Septets_are_counted_as_the_network_counts_them(string text, int septets) => Assert.Equal(septets, ShortText.Septets(text));

    [Theory]
    [InlineData("sábado, mañana; ¿cuánto? ¡así!", "sabado, mañana; ¿cuanto? ¡asi!")]
    [InlineData("caja 4 · 2 pulg. – 3½ in", "caja 4 - 2 pulg. - 3.5 in")]
    [InlineData("Ñandú über Élan", "Ñandu über Élan")]
    [InlineData("“Two Gates”’s", "\"Two Gates\"'s")]
    [InlineData("水 🌾", "? ?")]
    [InlineData("a\nb\tc", "a b c")]
    [InlineData("n\u0303", "ñ")]
    public void Letters_that_cannot_be_sent_lose_only_their_accent(string text, string folded)
    {
        Assert.Equal(folded, ShortText.Fold(text));
        Assert.True(ShortText.IsPlain(ShortText.Fold(text)));
    }

    [Fact]
    public void A_long_list_becomes_several_texts_each_whole_in_itself()
    {
        var texts = ShortText.Spread("Hold for seed at 2 in: ", Enumerable.Range(1, 60).Select(i => "F" + i), ", ", ".");
        Assert.Equal(3, texts.Length);
        Assert.All(texts, t => Assert.StartsWith("Hold for seed at 2 in: F", t, StringComparison.Ordinal));
        Assert.All(texts, t => Assert.EndsWith(".", t, StringComparison.Ordinal));
        Assert.Equal(Enumerable.Range(1, 60).Select(i => "F" + i), texts.SelectMany(t => t["Hold for seed at 2 in: ".Length..].TrimEnd('.').Split(", ")));
    }

    [Fact]
    public void Nothing_to_list_is_no_text() => Assert.Empty(ShortText.Spread("Open: ", [], ", ", "."));

    [Fact]
    public void An_item_too_long_for_any_text_is_cut_and_shows_it()
    {
        var text = Assert.Single(ShortText.Spread("Open: ", [new string('x', 300)], ", ", "."));
        Assert.Equal(ShortText.Most, ShortText.Septets(text));
        Assert.EndsWith("....", text, StringComparison.Ordinal);
    }

    [Fact]
    public void No_text_is_ever_longer_than_one_message_whatever_is_listed() =>
        Gen.Select(Gen.String[0, 40], Gen.String[0, 200].Array[0, 40], Gen.String[0, 40]).Sample((before, items, after) =>
            {
                foreach (var text in ShortText.Spread(before, items, ", ", after))
                {
                    if (ShortText.Septets(text) > ShortText.Most || !ShortText.IsPlain(text)) return false;
                }

                return ShortText.Septets(ShortText.One(before + after)) <= ShortText.Most;
            });
}
