namespace Watersown.Wording;

public sealed class SayProblemTests
{
    private static readonly ProblemKind Kind = new("TEST-001", ProblemWeight.Refuse, "{value} is not {wanted}. Give {wanted}.", "{value} no es {wanted}. Escriba {wanted}.");

    [Fact]
    public void A_fact_of_words_is_told_in_the_language_of_the_sentence()
    {
        var problem = Kind.At("depth_in", ("value", "x"), ("wanted", "a number"), ("wanted:es", "un número"));
        Assert.Equal("TEST-001 · depth_in: x is not a number. Give a number.", Say.Problem(problem, Language.English));
        Assert.Equal("TEST-001 · depth_in: x no es un número. Escriba un número.", Say.Problem(problem, Language.Spanish));
    }

    [Fact]
    public void A_fact_of_one_language_serves_both() =>
        Assert.Equal("TEST-001 · 7 no es GeoJSON. Escriba GeoJSON.", Say.Problem(Kind.At(string.Empty, ("value", "7"), ("wanted", "GeoJSON")), Language.Spanish));

    [Fact]
    public void Braces_that_somebody_typed_are_not_filled() =>
        Assert.Equal("TEST-001 · {wanted} is not a word. Give a word.", Say.Problem(Kind.At(string.Empty, ("value", "{wanted}"), ("wanted", "a word")), Language.English));

    [Fact]
    public void A_fact_that_is_missing_leaves_its_name() =>
        Assert.Equal("TEST-001 · 7 is not {wanted}. Give {wanted}.", Say.Problem(Kind.At(string.Empty, ("value", "7")), Language.English));
}
