using Watersown.Season;

namespace Watersown.Pocket.Season;

/// <summary>The word for how somebody knows.</summary>
public static class SureWords
{
    public static string Of(Sureness sure, Wording.DeskWords words) => sure switch
    {
        Sureness.Measured => words.Measured,
        Sureness.Told => words.ToldSure,
        Sureness.Guessed => words.Guessed,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
