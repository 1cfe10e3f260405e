namespace Watersown.Nutrition;

internal static class Some
{
    public static Product Product(string name, double n, double p, double k, double price) => new(name, new Money((decimal)price))
    {
        Nitrogen = Fraction.FromPercent(n),
        PhosphorusPentoxide = Fraction.FromPercent(p),
        PotassiumOxide = Fraction.FromPercent(k),
    };

    public static NutrientRates Rates(double n, double p, double k) =>
        new(NutrientRate.FromPoundsPerAcre(n), NutrientRate.FromPoundsPerAcre(p), NutrientRate.FromPoundsPerAcre(k));

    public static Datum Row(string name, double n, double p, double k, double price) =>
        Datum.Row(("name", name), ("n_pct", n), ("p2o5_pct", p), ("k2o_pct", k), ("price_lb", price));
}
