using Watersown.Reckon;

namespace Watersown.Nutrition;

/// <summary>Lays out a blend: results, working and cautions.</summary>
internal static class BlendAnswers
{
    private static readonly ImmutableArray<Nutrient> Nutrients = [Nutrient.Nitrogen, Nutrient.PhosphorusPentoxide, Nutrient.PotassiumOxide];

    public static Reckoned Show(NutrientRates wanted, ImmutableArray<Product> products, Blend blend) => new(
        [
            ("products", Datum.ListOf(blend.Parts.Select(part => Datum.Row(("name", part.Product.Name), ("lb_ac", part.OnAnAcre.Pounds))))),
            ("cost_ac", (double)blend.CostPerAcre.Amount),
            ("supplied", Datum.Row(
                ("n", blend.Supplied.Nitrogen.PoundsPerAcre),
                ("p2o5", blend.Supplied.PhosphorusPentoxide.PoundsPerAcre),
                ("k2o", blend.Supplied.PotassiumOxide.PoundsPerAcre))),
        ],
        Explain(wanted, products, blend))
    {
        Cautions = [.. Excess(wanted, blend), "Your licensed adviser sets the need; ask the dealer which products may lie in one bin."],
    };

    private static Working Explain(NutrientRates wanted, ImmutableArray<Product> products, Blend blend)
    {
        var working = Working.Empty;
        foreach (var nutrient in Nutrients)
            working = working.Given("b " + Blends.NameOf(nutrient), Blends.NameOf(nutrient) + " wanted", wanted.Of(nutrient).PoundsPerAcre, "lb/ac", "typed");
        foreach (var product in products)
        {
            working = working.Given("c " + product.Name, "price of " + product.Name + " (" + Grade(product) + ")", (double)product.PricePerPound.Amount, "$/lb", "typed");
        }

        foreach (var part in blend.Parts)
            working = working.Step("x " + part.Product.Name, part.Product.Name, part.OnAnAcre.Pounds, "lb/ac", "least Σ c x with Σ grade × x ≥ b for each nutrient, x ≥ 0", Sources.LinearProgram);
        foreach (var nutrient in Nutrients)
            working = working.Step("s " + Blends.NameOf(nutrient), Blends.NameOf(nutrient) + " supplied", blend.Supplied.Of(nutrient).PoundsPerAcre, "lb/ac", "Σ grade × x", Sources.FertilizerSteps);
        working = working.Step("C", "cost of an acre's worth", (double)blend.CostPerAcre.Amount, "$/ac", "Σ c x", Sources.Arithmetic);
        foreach (var (nutrient, price) in blend.NextPound.Where(p => wanted.Of(p.Nutrient) > NutrientRate.Zero))
            working = working.Step("y " + Blends.NameOf(nutrient), "what one more pound of " + Blends.NameOf(nutrient) + " would cost", (double)price.Amount, "$/lb", "Σ b y = C and no product is worth more than it costs: so none is cheaper", Sources.LinearProgram);
        return working;
    }

    private static string Grade(Product product) => string.Join("-",
        Nutrients.Select(nutrient => Wording.Say.Figure(product.Grade(nutrient).Percent)));

    // A tenth over the target is worth saying; nearer than that is rounding of grades.
    private static IEnumerable<string> Excess(NutrientRates wanted, Blend blend) => Nutrients
        .Where(n => blend.Supplied.Of(n).PoundsPerAcre > (wanted.Of(n).PoundsPerAcre * 1.1) + 1)
        .Select(n => "The cheapest mix brings " + Wording.Say.Figure(blend.Supplied.Of(n).PoundsPerAcre) + " lb/ac of " + Blends.NameOf(n) + ", more than the "
            + Wording.Say.Figure(wanted.Of(n).PoundsPerAcre) + " asked for: weigh that before ordering.");
}
