namespace Watersown.Schedule;

/// <summary>Which ground work is left before the water may come.</summary>
public static class GroundChain
{
    /// <summary>Work left in its order, by what the farm said or else by the stage.</summary>
    [Source(nameof(Sources.CommonPractice), "chisel, disc, plane, aqua, roll, then water")]
    public static ImmutableArray<GroundWork> Left(FieldSeason season) => season.WorkLeft ?? season.Stage switch
    {
        FieldStage.TooWet or FieldStage.Unworked => [GroundWork.Chisel, GroundWork.Disc, GroundWork.Plane, GroundWork.Aqua, GroundWork.Roll],
        FieldStage.Chiselled => [GroundWork.Disc, GroundWork.Plane, GroundWork.Aqua, GroundWork.Roll],
        FieldStage.Disced => [GroundWork.Plane, GroundWork.Aqua, GroundWork.Roll],
        FieldStage.Planed => [GroundWork.Aqua, GroundWork.Roll],
        FieldStage.AquaOn => [GroundWork.Roll],
        FieldStage.Rolled or FieldStage.Flooding or FieldStage.Full or FieldStage.Sown => [],
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
