namespace Watersown.Nutrition;

/// <summary>Ammonia dissolved in water, as the delivery ticket describes it.</summary>
/// <param name="Nitrogen">Nitrogen in it by weight, above zero.</param>
/// <param name="Gallon">What one US gallon of it weighs, above zero.</param>
public sealed record AquaGrade(Fraction Nitrogen, Mass Gallon)
{
    /// <summary>Nitrogen in one US gallon.</summary>
    [Source(nameof(Sources.Arithmetic), "share of nitrogen × weight of a gallon")]
    public Mass NitrogenInGallon => Gallon * Nitrogen.Share;
}

/// <summary>How much aqua a nitrogen rate takes.</summary>
public static class Aqua
{
    /// <summary>
    /// Aqua for a piece of land at a nitrogen rate. As exact as the grade and the weight of a gallon: both change with
    /// the delivery and the warmth, so take them from the ticket.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The grade holds no nitrogen.</exception>
    [Source(nameof(Sources.Arithmetic), "nitrogen / (share of nitrogen × weight of a gallon)")]
    public static Volume Needed(NutrientRate nitrogen, Area land, AquaGrade grade)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(grade.NitrogenInGallon.Kilograms, 0, nameof(grade));
        return Volume.FromGallons(nitrogen * land / grade.NitrogenInGallon);
    }
}
