namespace Watersown.Wording;

public sealed class TemplateTests
{
    [Fact]
    public void Facts_take_their_places_wherever_the_sentence_puts_them() =>
        Assert.Equal("de 14 a 20, y 14 otra vez", Template.Fill("de {before} a {after}, y {before} otra vez", ("after", "20"), ("before", "14")));

    [Fact]
    public void A_fact_with_braces_is_not_taken_for_a_place() =>
        Assert.Equal("field {odd}", Template.Fill("field {name}", ("name", "{odd}")));

    [Fact]
    public void A_place_without_a_fact_is_a_fault_of_the_program() =>
        Assert.Throws<ArgumentException>(() => Template.Fill("{day} at {time}", ("day", "Fri")));

    [Fact]
    public void A_fact_without_a_place_is_a_fault_of_the_program() =>
        Assert.Throws<ArgumentException>(() => Template.Fill("{day}", ("day", "Fri"), ("time", "06:00")));
}
