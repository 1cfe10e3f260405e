using Watersown.Growth;
using Watersown.Seed;
using Watersown.Wording;

namespace Watersown.Season.Crop;

/// <summary>Stages and classes in the reader's words.</summary>
public static class StageSpeech
{
    public static string Name(StagePoint point, CropWords words) => point.Stage switch
    {
        CropStage.Leaf => Template.Fill(words.StageLeaf, ("n", Say.Number(point.Leaf))),
        CropStage.Tillering => words.StageTillering,
        CropStage.PanicleInitiation => words.StageInitiation,
        CropStage.Booting => words.StageBooting,
        CropStage.Heading => words.StageHeading,
        CropStage.Mature => words.StageMature,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    public static string Class(Maturity maturity, CropWords words) => maturity switch
    {
        Maturity.VeryEarly => words.ClassVeryEarly,
        Maturity.Early => words.ClassEarly,
        Maturity.Intermediate => words.ClassIntermediate,
        Maturity.Late => words.ClassLate,
        Maturity.Other => words.ClassOther,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>Whose targets these are, as a sentence that is never left out.</summary>
    public static string Basis(ClassTargets targets, bool unknown, CropWords words) => targets.Basis switch
    {
        TargetBasis.Farm => Template.Fill(words.TargetsFarm, ("class", Class(targets.Class, words))),
        TargetBasis.Usual => Template.Fill(words.TargetsUsual, ("class", Class(targets.Class, words))),
        _ => unknown ? words.TargetsUnknown : Template.Fill(words.TargetsBorrowed, ("class", Class(targets.Class, words))),
    };
}
