namespace Watersown.Nutrition;

/// <summary>A nutrient as it is sold: phosphorus and potassium are named by their oxides.</summary>
public enum Nutrient
{
    Nitrogen,
    PhosphorusPentoxide,
    PotassiumOxide,
}

/// <summary>Three nutrients by rate: what is wanted, or what is supplied. Phosphorus and potassium are counted as oxides.</summary>
public sealed record NutrientRates(NutrientRate Nitrogen, NutrientRate PhosphorusPentoxide, NutrientRate PotassiumOxide)
{
    public NutrientRate Of(Nutrient nutrient) => nutrient switch
    {
        Nutrient.Nitrogen => Nitrogen,
        Nutrient.PhosphorusPentoxide => PhosphorusPentoxide,
        Nutrient.PotassiumOxide => PotassiumOxide,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}

/// <summary>A fertilizer that can be bought: its grade and its price.</summary>
/// <param name="Name">The farm's name for it, unique among those compared.</param>
/// <param name="PricePerPound">Price of a pound, not below zero.</param>
public sealed record Product(string Name, Money PricePerPound)
{
    public Fraction Nitrogen { get; init; }

    public Fraction PhosphorusPentoxide { get; init; }

    public Fraction PotassiumOxide { get; init; }

    public Fraction Grade(Nutrient nutrient) => nutrient switch
    {
        Nutrient.Nitrogen => Nitrogen,
        Nutrient.PhosphorusPentoxide => PhosphorusPentoxide,
        Nutrient.PotassiumOxide => PotassiumOxide,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}

/// <summary>One product of a blend and how much of it goes on.</summary>
/// <param name="Product">The fertilizer.</param>
/// <param name="OnAnAcre">Weight of the fertilizer itself, not of its nutrient, on one acre.</param>
public sealed record BlendPart(Product Product, Mass OnAnAcre);

/// <summary>The cheapest mix that meets every target.</summary>
/// <param name="Parts">In the order the products were given; none at zero.</param>
/// <param name="CostPerAcre">Price of one acre's worth.</param>
/// <param name="Supplied">Nutrients it brings; not below the targets.</param>
public sealed record Blend(ImmutableArray<BlendPart> Parts, Money CostPerAcre, NutrientRates Supplied)
{
    /// <summary>
    /// What one more pound of each nutrient would add to the cost. They prove the blend: no product is worth more at these
    /// prices than it costs, and the targets at these prices come to the blend's cost. Empty where several corners meet
    /// and this one does not prove itself.
    /// </summary>
    public ImmutableArray<(Nutrient Nutrient, Money PerPound)> NextPound { get; init; } = [];
}
