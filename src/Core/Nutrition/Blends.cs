namespace Watersown.Nutrition;

/// <summary>Finds the cheapest mix of products for what a field needs.</summary>
public static class Blends
{
    /// <summary>Most products compared at once.</summary>
    public const int MostProducts = 60;

    // Less than this is dust on the bag; dividing by it would ask for a mountain of product.
    private const double ThinPercent = 0.01;

    private static readonly ImmutableArray<(Nutrient Nutrient, string Name)> Order =
        [(Nutrient.Nitrogen, "N"), (Nutrient.PhosphorusPentoxide, "P2O5"), (Nutrient.PotassiumOxide, "K2O")];

    /// <summary>
    /// The cheapest mix of <paramref name="products"/> that meets every target: least cost, proved over every corner.
    /// More than a target may be supplied where that is cheaper. Refused where no product carries a nutrient that is wanted.
    /// </summary>
    [Source(nameof(Sources.LinearProgram))]
    [Source(nameof(Sources.FertilizerSteps), "product = nutrient / grade")]
    public static Outcome<Blend> Cheapest(NutrientRates targets, ImmutableArray<Product> products)
    {
        var problems = Faults(targets, products);
        if (!problems.IsEmpty) return Outcome<Blend>.Refuse(problems);

        // a share of nutrient i in product j; b pounds of nutrient wanted on an acre; c dollars a pound; x pounds of product on an acre.
        double[][] a = [.. Order.Select(o => products.Select(p => p.Grade(o.Nutrient).Share).ToArray())];
        double[] b = [.. Order.Select(o => targets.Of(o.Nutrient).PoundsPerAcre)];
        double[] c = [.. products.Select(p => (double)p.PricePerPound.Amount)];
        var corner = LeastCost.Solve(a, b, c) ?? throw new System.Diagnostics.UnreachableException();
        NutrientRate Supplied(int i) => NutrientRate.FromPoundsPerAcre(corner.Columns.Select((j, k) => a[i][j] * corner.X[k]).Sum());
        return Outcome<Blend>.Of(new Blend(
            [.. corner.Columns.Select((j, k) => new BlendPart(products[j], Mass.FromPounds(corner.X[k])))],
            new Money((decimal)corner.Cost),
            new NutrientRates(Supplied(0), Supplied(1), Supplied(2)))
        {
            NextPound = corner.Columns.Length == 0 || LeastCost.Prices(a, b, c, corner) is not { } prices
                ? []
                : [.. Order.Select((o, i) => (o.Nutrient, new Money((decimal)prices[i])))],
        });
    }

    /// <summary>The nutrient's name on the bag.</summary>
    public static string NameOf(Nutrient nutrient) => Order.First(o => o.Nutrient == nutrient).Name;

    private static ImmutableArray<Problem> Faults(NutrientRates targets, ImmutableArray<Product> products)
    {
        var problems = ImmutableArray.CreateBuilder<Problem>();
        if (products.Length > MostProducts)
            problems.Add(NutritionProblems.TooManyProducts.At("products", ("value", Wording.Say.Number(products.Length)), ("limit", Wording.Say.Number(MostProducts))));
        foreach (var name in products.GroupBy(p => p.Name, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => g.Key).Order(StringComparer.Ordinal))
            problems.Add(NutritionProblems.ProductTwice.At("products", ("name", name)));
        foreach (var product in products)
        {
            foreach (var (nutrient, name) in Order.Where(o => product.Grade(o.Nutrient) > Fraction.Zero && product.Grade(o.Nutrient) < Fraction.FromPercent(ThinPercent)))
                problems.Add(NutritionProblems.GradeTooThin.At("products", ("value", Wording.Say.Figure(product.Grade(nutrient).Percent)), ("nutrient", name), ("name", product.Name), ("least", Wording.Say.Figure(ThinPercent))));
        }

        foreach (var (nutrient, name) in Order)
        {
            var target = targets.Of(nutrient);
            if (target > NutrientRate.Zero && products.All(p => p.Grade(nutrient) <= Fraction.Zero))
                problems.Add(NutritionProblems.NothingCarries.At("products", ("nutrient", name), ("target", Wording.Say.Figure(target.PoundsPerAcre) + " lb/ac")));
        }

        return problems.ToImmutable();
    }
}
