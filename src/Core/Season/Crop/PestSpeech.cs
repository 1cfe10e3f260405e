using Watersown.Wording;

namespace Watersown.Season.Crop;

/// <summary>Dangers in the reader's words, and what was published of each.</summary>
public static class PestSpeech
{
    public static string Name(Pest pest, ScoutWords words) => pest switch
    {
        Pest.Shrimp => words.Shrimp,
        Pest.Midge => words.Midge,
        Pest.Scum => words.Scum,
        Pest.Weevil => words.Weevil,
        Pest.ArmywormLeaf => words.ArmywormLeaf,
        Pest.ArmywormPanicle => words.ArmywormPanicle,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    public static string Fact(Pest pest, ScoutWords words) => pest switch
    {
        Pest.Shrimp => words.FactShrimp,
        Pest.Midge => words.FactMidge,
        Pest.Scum => words.FactScum,
        Pest.Weevil => words.FactWeevil,
        Pest.ArmywormLeaf => words.FactArmywormLeaf,
        Pest.ArmywormPanicle => words.FactArmywormPanicle,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
