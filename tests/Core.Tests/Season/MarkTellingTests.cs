using CsCheck;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Season;

public sealed class MarkTellingTests
{
    [Fact]
    public void Every_fact_can_be_told_again_in_both_languages_with_no_place_left_open() => AnyMark.Fact.Sample(fact =>
    {
        foreach (var language in new[] { Language.English, Language.Spanish })
        {
            var said = In(language).Say(fact);
            Assert.NotEqual(string.Empty, said);
            Assert.DoesNotContain('{', said);
        }
    });

    [Fact]
    public void A_mark_is_told_in_the_words_of_somebody_who_was_there()
    {
        Assert.Equal("Check 5 wet", In(Language.English).Say(new CheckWater("N4", 5, WaterSeen.Wet)));
        Assert.Equal("Depth 2.5 in, check 1", In(Language.English).Say(new DepthRead("N4", 1, WaterDepth.FromInches(2.5))));
        Assert.Equal("Levee out between check 2 and 3", In(Language.English).Say(new FaultFound(FaultKind.Levee) { Field = "N2", Check = 2, ToCheck = 3 }));
        Assert.Equal("SP-1: Pump out", In(Language.English).Say(new FaultFound(FaultKind.Pump) { Source = "SP-1" }));
        Assert.Equal("Put right: net 116 ac, gross 124 ac", In(Language.English).Say(new FieldCorrected("N4") { Net = Area.FromAcres(116), Gross = Area.FromAcres(124) }));
        Assert.Equal("Cuadro 5 mojado", In(Language.Spanish).Say(new CheckWater("N4", 5, WaterSeen.Wet)));
    }

    [Fact]
    public void Pounds_of_seed_say_dry_or_wet()
    {
        Assert.Equal("Seed B-09 in soak, 17,700 lb dry, E-2, for N4", In(Language.English).Say(new BatchInSoak("B-09") { Dry = DrySeed.FromPounds(17_700), Variety = "E-2", MeantFor = ["N4"] }));
        Assert.Equal("Load 3 gone, trailer 5, 2,760 lb wet", In(Language.English).Say(new LoadGone("N4", 3) { Trailer = "5", Soaked = SoakedSeed.FromPounds(2760) }));
    }

    private static MarkTelling In(Language language) => new(new Telling(PlannedMorning.State(), language));
}
