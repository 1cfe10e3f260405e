namespace Watersown.Nutrition;

/// <summary>A reading of soil or leaf that was held against published levels.</summary>
public enum NutrientReading
{
    /// <summary>Olsen phosphorus of the soil, mg/kg.</summary>
    OlsenPhosphorus,

    /// <summary>Phosphorus of the youngest full leaf, %.</summary>
    LeafPhosphorus,

    /// <summary>Potassium of the soil, ppm.</summary>
    SoilPotassium,

    /// <summary>Potassium of the flag leaf at heading, %.</summary>
    FlagLeafPotassium,

    /// <summary>Reading of an N-rich strip over that of the field, at panicle initiation.</summary>
    NitrogenStrip,
}

/// <summary>What a published level says of a reading.</summary>
/// <param name="Level">The level.</param>
/// <param name="Short">The nutrient is short by it.</param>
/// <param name="Source">Where it was published.</param>
public sealed record LevelSaid([property: PlainNumber("in the unit of the reading")] double Level, bool Short, Citation Source);

/// <summary>Published critical levels as plain conditions.</summary>
public static class CriticalLevels
{
    /// <summary>A reading held against its level. Soil and leaf are short below it; the strip says that the field is short at or above it.</summary>
    [Source(nameof(Sources.OlsenP2011), "Olsen P 6 mg/kg, Y-leaf P 0.2 %, 64 on-farm sites")]
    [Source(nameof(Sources.RicePotassium2013), "soil K 60 ppm, flag-leaf K 1.2 %")]
    [Source(nameof(Sources.NitrogenStrip2021), "strip over field 1.07")]
    public static LevelSaid Of(NutrientReading reading, [PlainNumber("in the unit of the reading")] double value) => reading switch
    {
        NutrientReading.OlsenPhosphorus => Below(6, value, Sources.OlsenP2011),
        NutrientReading.LeafPhosphorus => Below(0.2, value, Sources.OlsenP2011),
        NutrientReading.SoilPotassium => Below(60, value, Sources.RicePotassium2013),
        NutrientReading.FlagLeafPotassium => Below(1.2, value, Sources.RicePotassium2013),
        NutrientReading.NitrogenStrip => new LevelSaid(1.07, value >= 1.07, Sources.NitrogenStrip2021),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static LevelSaid Below(double level, double value, Source source) => new(level, value < level, source);
}
