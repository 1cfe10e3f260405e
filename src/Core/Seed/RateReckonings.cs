using Watersown.Reckon;

namespace Watersown.Seed;

/// <summary>The calculations about seed rates that can be asked for by name.</summary>
public static class RateReckonings
{
    public static ImmutableArray<Reckoning> All { get; } = [SeedRateForStand, SeedCount, TagRate, MoistureBasis];

    private static Reckoning SeedRateForStand => new(
        "seed-rate",
        "How much dry seed an acre does this stand ask for?",
        [
            new("target_plants_ft2", KeyKind.Number, "plants/ft²", "stand wanted") { Least = 0, AboveLeast = true, Most = 200 },
            SeedsPerPoundKey,
            new("germination_pct", KeyKind.Number, "%", "germination on the tag") { Least = 0, AboveLeast = true, Most = 100 },
            new("field_establishment_pct", KeyKind.Number, "%", "live seeds that become plants in the field") { Least = 0, AboveLeast = true, Most = 100 },
        ],
        [
            new("rate_dry_lb_ac", KeyKind.Number, "lb dry/ac", "dry seed rate"),
            new("seeds_ft2", KeyKind.Number, "seeds/ft²", "seeds sown"),
            new("live_seeds_ft2", KeyKind.Number, "seeds/ft²", "live seeds sown"),
        ],
        Sources.Definition,
        "target_plants_ft2=25 seeds_per_lb=16500 germination_pct=92 field_establishment_pct=46",
        ReckonRate)
    { Limits = "As good as the establishment share, which moves between about 35 and 55 % from field to field and year to year." };

    private static Reckoning SeedCount => new(
        "seed-count",
        "How many seeds does this dry rate lay down?",
        [
            new("rate_dry_lb_ac", KeyKind.Number, "lb dry/ac", "dry seed rate") { Least = 0, Most = 1000 },
            new("grams_per_1000", KeyKind.Number, "g", "weight of 1,000 dry grains") { Least = 1, Most = 100 },
        ],
        [
            new("seeds_per_lb", KeyKind.Number, "seeds/lb", "seeds in a pound of dry seed"),
            new("seeds_ft2", KeyKind.Number, "seeds/ft²", "seeds sown"),
        ],
        Sources.Definition,
        "rate_dry_lb_ac=150 grams_per_1000=27",
        ReckonCount)
    { Limits = "Weigh 1,000 grains of the lot itself: varieties differ by a fifth." };

    private static Reckoning TagRate => new(
        "tag-rate",
        "What dry rate keeps the same live seed when the tag says another germination?",
        [
            new("rate_dry_lb_ac", KeyKind.Number, "lb dry/ac", "dry rate as planned") { Least = 0, Most = 1000 },
            new("expected_germination_pct", KeyKind.Number, "%", "germination the rate was planned for") { Least = 0, AboveLeast = true, Most = 100 },
            new("tag_germination_pct", KeyKind.Number, "%", "germination on the tag") { Least = 0, AboveLeast = true, Most = 100 },
        ],
        [new("rate_dry_lb_ac", KeyKind.Number, "lb dry/ac", "dry rate for this lot")],
        Sources.Definition,
        "rate_dry_lb_ac=150 expected_germination_pct=92 tag_germination_pct=88",
        ReckonTagRate)
    { Limits = "Germination in the laboratory, not vigor in cold water." };

    private static Reckoning MoistureBasis => new(
        "moisture-basis",
        "What is a moisture told over dry matter when told over the whole grain?",
        [new("moisture_dry_basis_pct", KeyKind.Number, "%", "moisture over dry matter") { Least = 0, Most = 400 }],
        [new("moisture_wet_basis_pct", KeyKind.Number, "%", "moisture over the whole grain")],
        Sources.Definition,
        "moisture_dry_basis_pct=41.67",
        given =>
        {
            var dry = Fraction.FromPercent(given.Number("moisture_dry_basis_pct"));
            var wet = Soaking.WetBasis(dry).Percent;
            return Outcome<Reckoned>.Of(new Reckoned([("moisture_wet_basis_pct", wet)], Working.Empty
                .Given("M", "moisture over dry matter", dry.Percent, "%", "typed")
                .Step("m", "moisture over the whole grain", wet, "%", "100 M / (100 + M)", Sources.Definition)));
        })
    { Limits = "Exact. Every other moisture in these calculations is over the whole grain." };

    private static ReckoningKey SeedsPerPoundKey =>
        new("seeds_per_lb", KeyKind.Number, "seeds/lb", "seeds in a pound of this lot, dry") { Least = 1000, Most = 100_000 };

    private static Outcome<Reckoned> ReckonRate(ReckoningInput given)
    {
        var goal = PlantDensity.FromPerSquareFoot(given.Number("target_plants_ft2"));
        var perPound = given.Number("seeds_per_lb");
        var germination = Fraction.FromPercent(given.Number("germination_pct"));
        var establishment = Fraction.FromPercent(given.Number("field_establishment_pct"));
        var seeds = Seeding.SeedsFor(goal, germination, establishment);
        var rate = Seeding.RateFor(goal, perPound, germination, establishment);
        var live = seeds * germination.Share;
        var working = Working.Empty
            .Given("P", "stand wanted", goal.PerSquareFoot, "plants/ft²", "typed")
            .Given("n", "seeds in a pound, dry", perPound, "seeds/lb", "typed")
            .Given("g", "germination on the tag", germination.Percent, "%", "typed")
            .Given("e", "field establishment", establishment.Percent, "%", "typed")
            .Step("s", "seeds sown", seeds.PerSquareFoot, "seeds/ft²", "P / (g/100 × e/100)", Sources.Definition)
            .Step("R", "dry seed rate", rate.PoundsPerAcre, "lb dry/ac", "s × 43,560 / n", Sources.Definition);
        return Outcome<Reckoned>.Of(new Reckoned(
            [("rate_dry_lb_ac", rate.PoundsPerAcre), ("seeds_ft2", seeds.PerSquareFoot), ("live_seeds_ft2", live.PerSquareFoot)], working)
        { Cautions = RateCautions(rate) });
    }

    private static ImmutableArray<string> RateCautions(SeedRate rate)
    {
        const string Dry = "This is DRY seed. Set the gate from the soaked weight: multiply by the wet factor of the weighed sample.";
        const string Check = "The stand a rate gives moves with water, cold, wind and pests: count your own stands and use that establishment.";
        return rate.PoundsPerAcre is < 100 or > 220
            ? [Dry, Check, "Rates in common use for sowing onto water are 140 to 180 lb dry an acre (common practice): look at the inputs again."]
            : [Dry, Check];
    }

    private static Outcome<Reckoned> ReckonCount(ReckoningInput given)
    {
        var rate = SeedRate.FromPoundsPerAcre(given.Number("rate_dry_lb_ac"));
        var thousand = DrySeed.FromKilograms(given.Number("grams_per_1000") / 1000);
        var perPound = Seeding.SeedsPerPound(thousand);
        var seeds = Seeding.SeedsSown(rate, perPound);
        var working = Working.Empty
            .Given("R", "dry seed rate", rate.PoundsPerAcre, "lb dry/ac", "typed")
            .Given("w", "weight of 1,000 dry grains", thousand.Kilograms * 1000, "g", "typed")
            .Step("n", "seeds in a pound, dry", perPound, "seeds/lb", "453,592.37 / w", Sources.Definition)
            .Step("s", "seeds sown", seeds.PerSquareFoot, "seeds/ft²", "R × n / 43,560", Sources.Definition);
        return Outcome<Reckoned>.Of(new Reckoned([("seeds_per_lb", perPound), ("seeds_ft2", seeds.PerSquareFoot)], working));
    }

    private static Outcome<Reckoned> ReckonTagRate(ReckoningInput given)
    {
        var planned = SeedRate.FromPoundsPerAcre(given.Number("rate_dry_lb_ac"));
        var expected = Fraction.FromPercent(given.Number("expected_germination_pct"));
        var tag = Fraction.FromPercent(given.Number("tag_germination_pct"));
        var rate = Seeding.ForTag(planned, expected, tag);
        var working = Working.Empty
            .Given("R", "dry rate as planned", planned.PoundsPerAcre, "lb dry/ac", "typed")
            .Given("g0", "germination planned for", expected.Percent, "%", "typed")
            .Given("g1", "germination on the tag", tag.Percent, "%", "typed")
            .Step("R1", "dry rate for this lot", rate.PoundsPerAcre, "lb dry/ac", "R × g0 / g1", Sources.Definition);
        return Outcome<Reckoned>.Of(new Reckoned([("rate_dry_lb_ac", rate.PoundsPerAcre)], working)
        {
            Cautions = ["This is DRY seed, for both rates."],
        });
    }
}
