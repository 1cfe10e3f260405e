using CsCheck;

namespace Watersown.Nutrition;

public sealed class BlendsProperties
{
    private static readonly Gen<double> Grade = Gen.Frequency((2, Gen.Const(0.0)), (3, Gen.Int[1, 60].Select(i => (double)i)));

    private static readonly Gen<Product[]> Products = Gen.Select(Grade, Grade, Grade, Gen.Int[1, 90])
        .Select((n, p, k, cents) => (n, p, k, cents)).Array[1, 9]
        .Select(rows => rows.Select((r, i) => Some.Product("P" + i, r.n, r.p, r.k, r.cents / 100.0)).ToArray());

    private static readonly Gen<double[]> Targets = Gen.Frequency((1, Gen.Const(0.0)), (3, Gen.Double[1, 200])).Array[3];

    [Fact]
    public void A_blend_meets_every_target_with_nothing_below_nothing() => Sample((products, targets, blend) =>
    {
        Assert.All(blend.Parts, part => Assert.True(part.OnAnAcre > Mass.Zero));
        for (var i = 0; i < 3; i++)
        {
            var supplied = blend.Parts.Sum(part => part.OnAnAcre.Pounds * Share(part.Product, i));
            Assert.True(supplied >= targets[i] * (1 - 1e-9));
            Assert.Equal(supplied, new[] { blend.Supplied.Nitrogen, blend.Supplied.PhosphorusPentoxide, blend.Supplied.PotassiumOxide }[i].PoundsPerAcre, 1e-6);
        }

        Assert.Equal(blend.Parts.Sum(part => part.OnAnAcre.Pounds * (double)part.Product.PricePerPound.Amount), (double)blend.CostPerAcre.Amount, 1e-6);
        Assert.True(products.Length >= blend.Parts.Length);
    });

    [Fact]
    public void No_other_mix_that_meets_the_targets_is_cheaper() => Gen.Select(Products, Targets, Gen.Double[0, 1].Array[9].Array[40]).Sample((products, targets, mixes) =>
    {
        if (Cheapest(products, targets) is not { } blend) return;
        foreach (var mix in mixes)
        {
            // Any mix at all, made just strong enough.
            var brings = Enumerable.Range(0, 3).Select(i => products.Select((p, j) => mix[j] * mix[j] * Share(p, i)).Sum()).ToArray();
            if (Enumerable.Range(0, 3).Any(i => targets[i] > 0 && brings[i] <= 0)) continue;
            var strength = Enumerable.Range(0, 3).Max(i => targets[i] > 0 ? targets[i] / brings[i] : 0);
            var cost = products.Select((p, j) => mix[j] * mix[j] * strength * (double)p.PricePerPound.Amount).Sum();
            Assert.True((double)blend.CostPerAcre.Amount <= cost * (1 + 1e-9), "a random mix was cheaper");
        }
    });

    // Duality: prices for the nutrients at which no product is worth more than it costs put the targets at no more than any
    // blend's cost, and the best such prices put them at exactly the least cost. Found here over all corners of the prices.
    [Fact]
    public void The_cheapest_blend_costs_what_the_best_nutrient_prices_say() => Sample((products, targets, blend) =>
    {
        var best = 0.0;
        var planes = products.Select(p => (Normal: new[] { Share(p, 0), Share(p, 1), Share(p, 2) }, Right: (double)p.PricePerPound.Amount))
            .Concat(Enumerable.Range(0, 3).Select(i => (Normal: new[] { i == 0 ? 1.0 : 0, i == 1 ? 1.0 : 0, i == 2 ? 1.0 : 0 }, Right: 0.0))).ToArray();
        for (var i = 0; i < planes.Length; i++)
        {
            for (var j = i + 1; j < planes.Length; j++)
            {
                for (var k = j + 1; k < planes.Length; k++)
                {
                    if (Cross(planes[i], planes[j], planes[k]) is not { } y || y.Any(v => v < -1e-9)) continue;
                    if (products.Any(p => (y[0] * Share(p, 0)) + (y[1] * Share(p, 1)) + (y[2] * Share(p, 2)) > (double)p.PricePerPound.Amount + 1e-9)) continue;
                    // A nutrient that no product carries has no upper price; it is not wanted here, so it adds nothing.
                    best = Math.Max(best, (y[0] * targets[0]) + (y[1] * targets[1]) + (y[2] * targets[2]));
                }
            }
        }

        Assert.Equal(best, (double)blend.CostPerAcre.Amount, 1e-6 * (1 + best));
    });

    [Fact]
    public void A_dearer_product_never_makes_the_blend_cheaper() => Sample((products, targets, blend) =>
    {
        var dearer = products.Select((p, i) => i == 0 ? p with { PricePerPound = p.PricePerPound * 1.5 } : p).ToArray();
        Assert.True((double)Cheapest(dearer, targets)!.CostPerAcre.Amount >= (double)blend.CostPerAcre.Amount * (1 - 1e-9));
    });

    [Fact]
    public void Forty_products_are_compared_without_waiting()
    {
        var products = Enumerable.Range(0, 40).Select(i => Some.Product("P" + i, 1 + (i * 7 % 46), i * 11 % 40, i * 5 % 60, 0.1 + (i % 13 * 0.05))).ToImmutableArray();
        var clock = System.Diagnostics.Stopwatch.StartNew();
        Assert.True(Blends.Cheapest(Some.Rates(120, 40, 30), products).HasValue);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(5));
    }

    private static void Sample(Action<Product[], double[], Blend> assert) => Gen.Select(Products, Targets).Sample((products, targets) =>
    {
        if (Cheapest(products, targets) is { } blend) assert(products, targets, blend);
    });

    private static Blend? Cheapest(Product[] products, double[] targets)
    {
        var outcome = Blends.Cheapest(Some.Rates(targets[0], targets[1], targets[2]), [.. products]);
        Assert.Equal(Enumerable.Range(0, 3).All(i => targets[i] == 0 || products.Any(p => Share(p, i) > 0)), outcome.HasValue);
        return outcome.HasValue ? outcome.Value : null;
    }

    private static double Share(Product product, int nutrient) => product.Grade((Nutrient)nutrient).Share;

    // The point where three planes meet, by Cramer's rule; nothing where they do not meet in one.
    private static double[]? Cross(params (double[] Normal, double Right)[] p)
    {
        static double Det(double[] a, double[] b, double[] c) =>
            (a[0] * ((b[1] * c[2]) - (b[2] * c[1]))) - (a[1] * ((b[0] * c[2]) - (b[2] * c[0]))) + (a[2] * ((b[0] * c[1]) - (b[1] * c[0])));
        var det = Det(p[0].Normal, p[1].Normal, p[2].Normal);
        if (Math.Abs(det) < 1e-12) return null;
        double[] With(double[] row, int column, double right) => [.. row.Select((v, i) => i == column ? right : v)];
        return [.. Enumerable.Range(0, 3).Select(i => Det(With(p[0].Normal, i, p[0].Right), With(p[1].Normal, i, p[1].Right), With(p[2].Normal, i, p[2].Right)) / det)];
    }
}
