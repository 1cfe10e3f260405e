using Watersown.Wording;

namespace Watersown.Reckon;

public sealed class AlternativesTests
{
    [Fact]
    public void One_whole_way_is_enough()
    {
        Assert.Empty(Told("vapour_kpa"));
        Assert.Empty(Told("rh_max_pct", "rh_min_pct"));
    }

    [Fact]
    public void None_is_told_with_all_that_may_be_given() =>
        Assert.Equal(
            "RECKON-021 · rh_max_pct rh_min_pct vapour_kpa dewpoint_c: nothing was given for humidity. Give exactly one of rh_max_pct with rh_min_pct, vapour_kpa, or dewpoint_c.",
            Assert.Single(Told()));

    [Fact]
    public void Two_ways_are_one_too_many() =>
        Assert.Equal(
            "RECKON-022 · rh_max_pct dewpoint_c: humidity was given in more than one way. Give exactly one of rh_max_pct with rh_min_pct, vapour_kpa, or dewpoint_c.",
            Assert.Single(Told("dewpoint_c", "rh_max_pct")));

    [Fact]
    public void Half_a_way_asks_for_the_other_half() =>
        Assert.Equal("RECKON-023 · rh_min_pct: nothing was given, but rh_max_pct needs it. Give both, or neither.", Assert.Single(Told("rh_max_pct")));

    [Fact]
    public void A_null_is_not_given() =>
        Assert.Empty(Humid([("dewpoint_c", 9), ("vapour_kpa", Datum.None)]));

    [Fact]
    public void Two_choices_read_well() =>
        Assert.Equal("solar_mj or sunshine_h", new Alternatives("the sun", [["solar_mj"], ["sunshine_h"]]).Choices);

    private static List<string> Told(params string[] keys) => Humid([.. keys.Select(k => (k, (Datum)1))]);

    private static List<string> Humid(ImmutableArray<(string, Datum)> given)
    {
        string[] keys = ["rh_max_pct", "rh_min_pct", "vapour_kpa", "dewpoint_c"];
        var reckoning = new Reckoning(
            "humid",
            "How humid is it?",
            [.. keys.Select(k => new ReckoningKey(k, KeyKind.Number, string.Empty, k) { Optional = true })],
            [],
            Sources.Definition,
            string.Empty,
            _ => Outcome<Reckoned>.Of(new Reckoned([], Working.Empty)))
        { ExactlyOneOf = [new Alternatives("humidity", [["rh_max_pct", "rh_min_pct"], ["vapour_kpa"], ["dewpoint_c"]])] };
        return [.. reckoning.Run(new Datum.Table(given)).Problems.Select(p => Say.Problem(p, Language.English))];
    }
}
