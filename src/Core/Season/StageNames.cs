using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Season;

/// <summary>The words for how far a field has come, for the steps of a plan and for why nobody flew, in the reader's language.</summary>
public static class StageNames
{
    /// <summary>The word for a field's stage; that nobody has said is a word of its own.</summary>
    public static string Of(FieldSeason season, StoryWords words) => season.StageUntold ? words.StageUntold : Of(season.Stage, words);

    public static string Of(FieldStage stage, StoryWords words) => stage switch
    {
        FieldStage.TooWet => words.StageTooWet,
        FieldStage.Unworked => words.StageUnworked,
        FieldStage.Chiselled => words.StageChiseled,
        FieldStage.Disced => words.StageDisced,
        FieldStage.Planed => words.StagePlaned,
        FieldStage.AquaOn => words.StageAquaOn,
        FieldStage.Rolled => words.StageRolled,
        FieldStage.Flooding => words.StageFlooding,
        FieldStage.Full => words.StageFull,
        FieldStage.Sown => words.StageSown,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    public static string Of(PlanTaskKind task, StoryWords words) => task switch
    {
        PlanTaskKind.Ground => words.TaskGround,
        PlanTaskKind.OrderWater => words.TaskOrderWater,
        PlanTaskKind.Fill => words.TaskFill,
        PlanTaskKind.CallSeed => words.TaskCallSeed,
        PlanTaskKind.Soak => words.TaskSoak,
        PlanTaskKind.Drain => words.TaskDrain,
        PlanTaskKind.Haul => words.TaskHaul,
        PlanTaskKind.Sow => words.TaskSow,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>Ground work by what it brings the field to.</summary>
    public static string Of(GroundWork work, StoryWords words) => words.TaskGround + ": " + work switch
    {
        GroundWork.Chisel => words.StageChiseled,
        GroundWork.Disc => words.StageDisced,
        GroundWork.Plane => words.StagePlaned,
        GroundWork.Aqua => words.StageAquaOn,
        GroundWork.Roll => words.StageRolled,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    public static string Of(StandDownReason why, StoryWords words) => why switch
    {
        StandDownReason.Wind => words.WhyWind,
        StandDownReason.Rain => words.WhyRain,
        StandDownReason.Fog => words.WhyFog,
        StandDownReason.Aeroplane => words.WhyAeroplane,
        StandDownReason.Seed => words.WhySeed,
        StandDownReason.Field => words.WhyField,
        StandDownReason.Other => words.WhyOther,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
