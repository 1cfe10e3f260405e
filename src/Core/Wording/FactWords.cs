namespace Watersown.Wording;

/// <summary>
/// Words that tell what a mark says, in the story of a field and as the answer to a text message. They are chosen so that a
/// text message written in them is understood again.
/// </summary>
public sealed partial record FactWords
{
    public required string Check { get; init; }

    public required string Wet { get; init; }

    public required string Full { get; init; }

    public required string Dry { get; init; }

    public required string Reflooded { get; init; }

    public required string DepthCheck { get; init; }

    public required string Boards { get; init; }

    public required string Flow { get; init; }

    public required string Order { get; init; }

    public required string Asked { get; init; }

    public required string Accepted { get; init; }

    public required string Running { get; init; }

    public required string Changed { get; init; }

    public required string Ended { get; init; }

    public required string SourceOn { get; init; }

    public required string SourceOff { get; init; }

    public required string LeveeOut { get; init; }

    public required string LeveeOutAt { get; init; }

    public required string LeveeOutCheck { get; init; }

    public required string BoxLeaks { get; init; }

    public required string BoxLeaksSome { get; init; }

    public required string Broken { get; init; }

    public required string PumpWord { get; init; }

    public required string GateWord { get; init; }

    public required string LeveeWord { get; init; }

    public required string BoxWord { get; init; }

    public required string Wide { get; init; }

    public required string Mended { get; init; }

    public required string StageTooWet { get; init; }

    public required string StageUnworked { get; init; }

    public required string StageChiseled { get; init; }

    public required string StageDisced { get; init; }

    public required string StagePlaned { get; init; }

    public required string StageAqua { get; init; }

    public required string StageRolled { get; init; }

    public required string StageFlooding { get; init; }

    public required string StageSown { get; init; }

    public required string NetIs { get; init; }

    public required string GrossIs { get; init; }

    public required string CertifiedIs { get; init; }

    public required string RateIs { get; init; }

    public required string VarietyIs { get; init; }

    public required string NameIs { get; init; }

    public required string Edge { get; init; }

    public required string Rings { get; init; }

    public required string Shrimp { get; init; }

    public required string Leaf { get; init; }

    public required string SeenNone { get; init; }

    public required string SeenSmall { get; init; }

    public required string SeenLarge { get; init; }

    public required string Note { get; init; }

    public required string NoteField { get; init; }

    public required string Photo { get; init; }

    public required string PhotoField { get; init; }

    public required string InSoak { get; init; }

    public required string Drained { get; init; }

    public required string Dumped { get; init; }

    public required string Trailer { get; init; }

    public required string Left { get; init; }

    public required string WithBatch { get; init; }

    public required string WithDry { get; init; }

    public required string WithWet { get; init; }

    public required string WithField { get; init; }

    public required string WithPlace { get; init; }

    public required string WithLoads { get; init; }

    public required string WithTrailer { get; init; }

    public required string Loaded { get; init; }

    public required string Sown { get; init; }

    public required string Resown { get; init; }

    public required string LoadGone { get; init; }

    public required string LoadGoneSome { get; init; }

    public required string Slot { get; init; }

    public required string StoodDown { get; init; }

    public required string StoodDownField { get; init; }

    public required string WhyWind { get; init; }

    public required string WhyRain { get; init; }

    public required string WhyFog { get; init; }

    public required string WhyAeroplane { get; init; }

    public required string WhySeed { get; init; }

    public required string WhyField { get; init; }

    public required string WhyOther { get; init; }

    public required string Wind { get; init; }

    public required string WindFrom { get; init; }

    public required string Forecast { get; init; }

    public required string Warmth { get; init; }

    public required string ToldWord { get; init; }

    public required string HeardWord { get; init; }

    public required string AgreedWord { get; init; }

    public required string NotReachedWord { get; init; }

    public required string Pinned { get; init; }

    public required string Unpinned { get; init; }

    public required string TaskGround { get; init; }

    public required string TaskOrder { get; init; }

    public required string TaskFill { get; init; }

    public required string TaskCall { get; init; }

    public required string TaskSoak { get; init; }

    public required string TaskDrain { get; init; }

    public required string TaskHaul { get; init; }

    public required string TaskSow { get; init; }

    public required string Overridden { get; init; }

    public required string PlanIssued { get; init; }

    public required string Withdrawn { get; init; }

    public required string Unknown { get; init; }

    public required string Got { get; init; }

    public required string NotGot { get; init; }

    public required string WhichField { get; init; }

    public required string WhichOf { get; init; }

    public required string NoSuchField { get; init; }

    public required string WhichTrailer { get; init; }

    public required string WhichBatch { get; init; }

    public required string WhichCheck { get; init; }

    public required string WhichBox { get; init; }

    public required string WhichMessage { get; init; }

    public required string Nothing { get; init; }

    public required string Example { get; init; }

    public required string InchWord { get; init; }
}
