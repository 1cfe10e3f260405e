namespace Watersown.Seed;

/// <summary>Seed rates against the trade's own arithmetic and definitions.</summary>
public sealed class SeedingReference
{
    // Common practice, no source: 25 plants × 43,560 ÷ (16,500 × 0.92 × 0.46) = 156 lb, worked on paper.
    [Fact]
    public void A_stand_of_25_plants_asks_for_156_pounds()
    {
        var answer = Ask.For("seed-rate", ("target_plants_ft2", 25), ("seeds_per_lb", 16_500), ("germination_pct", 92), ("field_establishment_pct", 46));
        Assert.Equal(156, answer.Number("rate_dry_lb_ac"), 0.5);
        Assert.Equal(25 / (0.92 * 0.46), answer.Number("seeds_ft2"), 1e-9);
        Assert.Equal(25 / 0.46, answer.Number("live_seeds_ft2"), 1e-9);
    }

    // Derived from definitions: 1,000 grains of 27 g give 16,800 seeds/lb and 57.85 seeds/ft² at 150 lb/ac.
    [Fact]
    public void A_rate_of_150_pounds_lays_58_seeds_on_a_square_foot()
    {
        var answer = Ask.For("seed-count", ("rate_dry_lb_ac", 150), ("grams_per_1000", 27));
        Assert.Equal(16_800, answer.Number("seeds_per_lb"), 1.0);
        Assert.Equal(57.85, answer.Number("seeds_ft2"), 0.01);
        Assert.Equal(622.7, Seeding.SeedsSown(SeedRate.FromPoundsPerAcre(150), answer.Number("seeds_per_lb")).PerSquareMeter, 0.05);
        Assert.Equal(25.9, 15 / answer.Number("seeds_ft2") * 100, 0.05);
    }

    // Common practice, no source: 150 lb × 16,500 seeds/lb = 56.8 seeds/ft².
    [Fact]
    public void At_16500_seeds_a_pound_150_pounds_lay_57_seeds() =>
        Assert.Equal(56.8, Seeding.SeedsSown(SeedRate.FromPoundsPerAcre(150), 16_500).PerSquareFoot, 0.05);

    // Common practice, no source: 150 × 92/88 = 157 lb.
    [Fact]
    public void A_poorer_tag_asks_for_more_seed()
    {
        var answer = Ask.For("tag-rate", ("rate_dry_lb_ac", 150), ("expected_germination_pct", 92), ("tag_germination_pct", 88));
        Assert.Equal(157, answer.Number("rate_dry_lb_ac"), 0.5);
        Assert.Equal(156.818, answer.Number("rate_dry_lb_ac"), 0.001);
    }
}
