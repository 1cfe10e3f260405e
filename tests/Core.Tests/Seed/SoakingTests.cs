using CsCheck;
using Watersown.Reckon;

namespace Watersown.Seed;

public sealed class SoakingTests
{
    [Fact]
    public void Soaked_seed_weighs_more_by_the_water_it_took_up()
    {
        var wet = Soaking.Weigh(DrySeed.FromPounds(15_450), 1.25);
        Assert.Equal(19_312.5, wet.Pounds, 1e-6);
        Assert.Equal(15_450, Soaking.DryOf(wet, 1.25).Pounds, 1e-6);
    }

    [Fact]
    public void Seed_that_dried_in_the_soak_is_refused_with_the_key_and_both_moistures()
    {
        var answer = Ask.For("wet-weight", ("dry_lb", 100), ("moisture_before_pct", 30), ("moisture_after_pct", 12));
        answer.Refuses((ReckonProblems.Impossible, "moisture_after_pct"));
        var sentence = Wording.Say.Problem(answer.Problems[0], Wording.Language.English);
        Assert.Contains("12 %", sentence, StringComparison.Ordinal);
        Assert.Contains("30 %", sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_moisture_after_below_the_one_before_is_a_fault_of_the_caller_below_the_desk() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Soaking.WetFactor(Fraction.FromPercent(30), Fraction.FromPercent(12)));

    [Fact]
    public void The_dry_matter_is_the_same_before_and_after() =>
        Gen.Select(Gen.Double[0, 0.5], Gen.Double[0, 0.45], Gen.Double[1, 50_000]).Sample((before, more, pounds) =>
        {
            var after = before + ((1 - before) * more);
            var wet = Soaking.Weigh(DrySeed.FromPounds(pounds), Soaking.WetFactor(Fraction.FromShare(before), Fraction.FromShare(after)));
            Assert.Equal(pounds * (1 - before), wet.Pounds * (1 - after), pounds * 1e-12);
        });
}
