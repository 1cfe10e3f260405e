using CsCheck;
using Watersown.Reckon;

namespace Watersown.Seed;

public sealed class SeedingTests
{
    [Fact]
    public void Sowing_the_rate_for_a_stand_gives_that_stand_back() =>
        Gen.Select(Gen.Double[1, 80], Gen.Double[8_000, 40_000], Gen.Double[0.3, 1], Gen.Double[0.1, 1]).Sample((plants, perPound, germination, establishment) =>
        {
            var goal = PlantDensity.FromPerSquareFoot(plants);
            var rate = Seeding.RateFor(goal, perPound, Fraction.FromShare(germination), Fraction.FromShare(establishment));
            Assert.Equal(plants, Seeding.SeedsSown(rate, perPound).PerSquareFoot * germination * establishment, plants * 1e-9);
        });

    [Fact]
    public void More_plants_wanted_or_fewer_coming_up_never_take_less_seed() =>
        Gen.Select(Gen.Double[1, 60], Gen.Double[0, 20], Gen.Double[0.2, 0.9], Gen.Double[0.01, 0.19]).Sample((plants, more, share, less) =>
        {
            static double Rate(double p, double e) => Ask.For("seed-rate", ("target_plants_ft2", p), ("seeds_per_lb", 16_500), ("germination_pct", 92), ("field_establishment_pct", e * 100)).Number("rate_dry_lb_ac");
            Assert.True(Rate(plants + more, share) >= Rate(plants, share));
            Assert.True(Rate(plants, share - less) > Rate(plants, share));
        });

    [Fact]
    public void Every_fault_of_the_inputs_is_told_at_once() =>
        Ask.For("seed-rate", ("target_plants_ft2", -3), ("seeds_per_lb", 12), ("germination_pct", 120), ("rate", 3)).Refuses(
            (ReckonProblems.NotAbove, "target_plants_ft2"), (ReckonProblems.TooSmall, "seeds_per_lb"), (ReckonProblems.TooLarge, "germination_pct"),
            (ReckonProblems.UnknownKey, "rate"), (ReckonProblems.MissingKey, "field_establishment_pct"));

    [Fact]
    public void Every_pound_of_seed_says_whether_it_is_dry()
    {
        var answer = Ask.For("seed-rate", ("target_plants_ft2", 25), ("seeds_per_lb", 16_500), ("germination_pct", 92), ("field_establishment_pct", 46));
        Assert.Contains(answer.Value.Cautions, c => c.Contains("DRY", StringComparison.Ordinal));
        Assert.Equal("lb dry/ac", answer.Value.Working.Lines.Single(l => l.Symbol == "R").Unit);
    }

    [Fact]
    public void A_rate_far_from_common_practice_says_so()
    {
        var far = Ask.For("seed-rate", ("target_plants_ft2", 60), ("seeds_per_lb", 16_500), ("germination_pct", 92), ("field_establishment_pct", 46));
        var near = Ask.For("seed-rate", ("target_plants_ft2", 25), ("seeds_per_lb", 16_500), ("germination_pct", 92), ("field_establishment_pct", 46));
        Assert.Equal(near.Value.Cautions.Length + 1, far.Value.Cautions.Length);
    }

    [Fact]
    public void A_share_of_nothing_is_a_fault_of_the_caller()
    {
        var goal = PlantDensity.FromPerSquareFoot(20);
        Assert.Throws<ArgumentOutOfRangeException>(() => Seeding.RateFor(goal, 16_500, Fraction.Zero, Fraction.One));
        Assert.Throws<ArgumentOutOfRangeException>(() => Seeding.RateFor(goal, 16_500, Fraction.One, Fraction.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Seeding.RateFor(goal, 0, Fraction.One, Fraction.One));
        Assert.Throws<ArgumentOutOfRangeException>(() => Seeding.SeedsPerPound(DrySeed.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Seeding.ForTag(SeedRate.FromPoundsPerAcre(150), Fraction.One, Fraction.Zero));
    }
}
