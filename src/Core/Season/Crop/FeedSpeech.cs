using Watersown.Nutrition;
using Watersown.Wording;

namespace Watersown.Season.Crop;

/// <summary>Nitrogen and readings in the reader's words.</summary>
public static class FeedSpeech
{
    public static string Name(NitrogenTiming timing, FeedWords words) => timing switch
    {
        NitrogenTiming.Aqua => words.TimingAqua,
        NitrogenTiming.Starter => words.TimingStarter,
        NitrogenTiming.Topdress => words.TimingTopdress,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    public static string Name(NutrientReading reading, FeedWords words) => reading switch
    {
        NutrientReading.OlsenPhosphorus => words.ReadOlsen,
        NutrientReading.LeafPhosphorus => words.ReadLeafP,
        NutrientReading.SoilPotassium => words.ReadSoilK,
        NutrientReading.FlagLeafPotassium => words.ReadFlagK,
        NutrientReading.NitrogenStrip => words.ReadStrip,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
