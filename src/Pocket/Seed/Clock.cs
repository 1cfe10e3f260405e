using System.Globalization;
using Watersown.Season.Boards;
using Watersown.Wording;

namespace Watersown.Pocket.Seed;

/// <summary>How the parts of a batch's time are said and drawn.</summary>
internal static class Clock
{
    public static string Percent(Fraction share) => share.Percent.ToString("0.###", CultureInfo.InvariantCulture) + "%";

    /// <summary>Word of a stage.</summary>
    public static string Word(BatchStage stage, SeedScreenWords words) => stage switch
    {
        BatchStage.Due => words.Due,
        BatchStage.InSoak => words.InSoak,
        BatchStage.SoakLong => words.SoakLong,
        BatchStage.Draining => words.Draining,
        BatchStage.Usable => words.Usable,
        BatchStage.PastUse => words.Spent,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>Pattern of a part in the style sheet.</summary>
    public static string Pattern(ClockPart part) => part switch
    {
        ClockPart.InSoak => "state-soaking",
        ClockPart.SoakLong => "clock-long",
        ClockPart.Draining => "clock-draining",
        ClockPart.Usable => "state-drained",
        ClockPart.PastUse => "state-spent",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
