using Watersown.Reckon;

namespace Watersown.Nutrition;

/// <summary>The calculations about nutrients that can be asked for by name.</summary>
public static class NutritionReckonings
{
    public static ImmutableArray<Reckoning> All { get; } = [AquaGallons, LeastCostBlend];

    private static Reckoning AquaGallons => new(
        "aqua",
        "How many gallons of aqua does this nitrogen rate take?",
        [
            new("n_lb_ac", KeyKind.Number, "lb N/ac", "nitrogen wanted") { Least = 0, Most = 400 },
            new("n_pct", KeyKind.Number, "% N", "nitrogen in the aqua by weight, from the ticket") { Least = 0.1, Most = 100 },
            new("lb_per_gal", KeyKind.Number, "lb/gal", "what a gallon weighs, from the ticket") { Least = 1, Most = 20 },
            new("acres", KeyKind.Number, "ac", "land") { Least = 0, Most = 1_000_000 },
        ],
        [
            new("gal_ac", KeyKind.Number, "gal/ac", "aqua on an acre"),
            new("gal", KeyKind.Number, "gal", "aqua for the land"),
        ],
        Sources.Arithmetic,
        "n_lb_ac=140 n_pct=20 lb_per_gal=7.6 acres=121",
        CountGallons)
    { Limits = "US gallons. Grade and weight of a gallon change with delivery and warmth: 20 to 25 % N and about 7.6 lb/gal at 60 °F are usual; the ticket beats both." };

    private static Reckoning LeastCostBlend => new(
        "blend",
        "Which mix of these products meets the need at the least cost?",
        [
            new("targets", KeyKind.Group, string.Empty, "nutrients wanted")
            {
                Columns =
                [
                    Target("n", "nitrogen"),
                    Target("p2o5", "phosphorus as P2O5"),
                    Target("k2o", "potassium as K2O"),
                ],
            },
            new("products", KeyKind.Rows, string.Empty, "products on offer")
            {
                Columns =
                [
                    new("name", KeyKind.Text, string.Empty, "name of the product"),
                    Grade("n_pct", "nitrogen in it"),
                    Grade("p2o5_pct", "P2O5 in it"),
                    Grade("k2o_pct", "K2O in it"),
                    new("price_lb", KeyKind.Number, "$/lb", "price of a pound of the product") { Least = 0, Most = 1000 },
                ],
            },
        ],
        [
            new("products", KeyKind.Rows, "lb/ac", "products of the mix and how much of each"),
            new("cost_ac", KeyKind.Number, "$/ac", "cost of an acre's worth"),
            new("supplied", KeyKind.Group, "lb/ac", "nutrients it brings"),
        ],
        Sources.LinearProgram,
        """targets={"n":60,"p2o5":40,"k2o":0} products=[{"name":"urea","n_pct":46,"p2o5_pct":0,"k2o_pct":0,"price_lb":0.30},{"name":"16-20-0","n_pct":16,"p2o5_pct":20,"k2o_pct":0,"price_lb":0.28}]""",
        Mix)
    { Limits = "Cost of product only: spreading, mixing and what may be mixed are not in it. At most 60 products. A nutrient not asked for counts as 0; a grade left out counts as 0. More than the target may be supplied where that is cheaper." };

    private static ReckoningKey Target(string key, string meaning) => new(key, KeyKind.Number, "lb/ac", meaning) { Least = 0, Most = 1000, Optional = true };

    private static ReckoningKey Grade(string key, string meaning) => new(key, KeyKind.Number, "%", meaning) { Least = 0, Most = 100, Optional = true };

    private static Outcome<Reckoned> CountGallons(ReckoningInput given)
    {
        var rate = NutrientRate.FromPoundsPerAcre(given.Number("n_lb_ac"));
        var land = Area.FromAcres(given.Number("acres"));
        var grade = new AquaGrade(Fraction.FromPercent(given.Number("n_pct")), Mass.FromPounds(given.Number("lb_per_gal")));
        var perAcre = Aqua.Needed(rate, Area.FromAcres(1), grade).Gallons;
        var all = Aqua.Needed(rate, land, grade).Gallons;
        var working = Working.Empty
            .Given("N", "nitrogen wanted", rate.PoundsPerAcre, "lb N/ac", "typed")
            .Given("p", "nitrogen in the aqua by weight", grade.Nitrogen.Percent, "%", "typed")
            .Given("w", "what a gallon weighs", grade.Gallon.Pounds, "lb/gal", "typed")
            .Given("A", "land", land.Acres, "ac", "typed")
            .Step("n", "nitrogen in a gallon", grade.NitrogenInGallon.Pounds, "lb N/gal", "w × p / 100", Sources.Arithmetic)
            .Step("g", "aqua on an acre", perAcre, "gal/ac", "N / n", Sources.Arithmetic)
            .Step("G", "aqua for the land", all, "gal", "g × A", Sources.Arithmetic);
        return Outcome<Reckoned>.Of(new Reckoned([("gal_ac", perAcre), ("gal", all)], working) { Cautions = AquaCautions(grade, perAcre) });
    }

    private static ImmutableArray<string> AquaCautions(AquaGrade grade, double perAcre)
    {
        var cautions = ImmutableArray.CreateBuilder<string>();
        if (grade.Nitrogen.Percent is < 18 or > 30)
            cautions.Add("Aqua usually carries 20 to 25 % N (" + Sources.OklahomaAqua.Reference + "): check the grade on the ticket.");
        if (grade.Gallon.Pounds is < 7 or > 8)
            cautions.Add("A gallon of aqua usually weighs 7 to 8 lb (common practice, no source): check the ticket.");
        if (perAcre > 160) cautions.Add("More than 160 gal/ac is unusual (common practice, no source): check the rate.");
        cautions.Add("Aqua gives off poisonous, burning vapor: goggles, gloves and water at the rig, and inject it, never spread it. The data sheet and the dealer govern.");
        return cautions.ToImmutable();
    }

    private static Outcome<Reckoned> Mix(ReckoningInput given)
    {
        var targets = given.Group("targets");
        NutrientRate Wanted(string key) => NutrientRate.FromPoundsPerAcre(targets.NumberOrNone(key) ?? 0);
        var wanted = new NutrientRates(Wanted("n"), Wanted("p2o5"), Wanted("k2o"));
        ImmutableArray<Product> products =
        [
            .. given.Each("products").Select(p => new Product(p.Text("name"), new Money((decimal)p.Number("price_lb")))
            {
                Nitrogen = Fraction.FromPercent(p.NumberOrNone("n_pct") ?? 0),
                PhosphorusPentoxide = Fraction.FromPercent(p.NumberOrNone("p2o5_pct") ?? 0),
                PotassiumOxide = Fraction.FromPercent(p.NumberOrNone("k2o_pct") ?? 0),
            }),
        ];
        return Blends.Cheapest(wanted, products).Map(blend => BlendAnswers.Show(wanted, products, blend));
    }
}
