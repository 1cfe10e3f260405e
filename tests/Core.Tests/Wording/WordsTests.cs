using System.Reflection;

namespace Watersown.Wording;

/// <summary>Every word that crew see exists in both languages, with the same places for facts.</summary>
public sealed class WordsTests
{
    // Alike in both languages on purpose: units, signs, and forms of a sentence made of facts alone.
    private static readonly string[] AlikeOnPurpose =
    [
        "Common.Acres", "Common.Hectares", "Common.PerAcre", "Common.PerHectare", "Common.Miles", "Common.Hours", "Common.CubicFeetPerSecond", "Common.LitersPerSecond",
        "Flight.DrySum", "Map.North", "Text.OpenItem", "Text.FillItem", "Text.PlantedItem", "Replan.PlanName",
    ];

    public static TheoryData<string, string, string> All
    {
        get
        {
            var data = new TheoryData<string, string, string>();
            foreach (var group in typeof(Words).GetProperties(BindingFlags.Public | BindingFlags.Instance))
            {
                foreach (var word in group.PropertyType.GetProperties(BindingFlags.Public | BindingFlags.Instance))
                {
                    var (english, spanish) = (word.GetValue(group.GetValue(Words.English)), word.GetValue(group.GetValue(Words.Spanish)));
                    if (english is string said) data.Add(group.Name + "." + word.Name, said, (string)spanish!);
                    if (english is not ImmutableArray<string> list) continue;
                    for (var i = 0; i < list.Length; i++) data.Add(group.Name + "." + word.Name + " " + i, list[i], ((ImmutableArray<string>)spanish!)[i]);
                }
            }

            return data;
        }
    }

    [Fact]
    public void There_are_words_to_compare() => Assert.True(All.Count > 250);

    [Theory]
    [MemberData(nameof(All))]
    public void A_word_has_the_same_places_for_facts_in_both_languages(string key, string english, string spanish)
    {
        Assert.False(string.IsNullOrWhiteSpace(english), key);
        Assert.False(string.IsNullOrWhiteSpace(spanish), key);
        Assert.Equal(Template.Places(english).Order(StringComparer.Ordinal), Template.Places(spanish).Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void A_word_was_translated_and_not_copied(string key, string english, string spanish)
    {
        // Names of months and of the pilot are alike by nature.
        if (AlikeOnPurpose.Contains(key, StringComparer.Ordinal) || key.StartsWith("Common.Months", StringComparison.Ordinal)) return;
        Assert.NotEqual(english, spanish);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void No_word_gives_leave_that_is_not_ours(string key, string english, string spanish)
    {
        foreach (var forbidden in new[] { "safe to fly", "approved", "clear of hazards", "legal", "eligible", "seguro para", "aprobado", "libre de peligro", "autorizado", "you may release", "puede soltar", "puede liberar" })
        {
            Assert.False(english.Contains(forbidden, StringComparison.OrdinalIgnoreCase), key + " says " + forbidden);
            Assert.False(spanish.Contains(forbidden, StringComparison.OrdinalIgnoreCase), key + " says " + forbidden);
        }
    }

    [Fact]
    public void Days_and_months_are_complete()
    {
        foreach (var words in new[] { Words.English.Common, Words.Spanish.Common })
        {
            Assert.Equal(7, words.LongDays.Distinct(StringComparer.Ordinal).Count());
            Assert.Equal(7, words.ShortDays.Distinct(StringComparer.Ordinal).Count());
            Assert.Equal(12, words.Months.Distinct(StringComparer.Ordinal).Count());
            Assert.Equal(12, words.LongMonths.Distinct(StringComparer.Ordinal).Count());
        }
    }
}
