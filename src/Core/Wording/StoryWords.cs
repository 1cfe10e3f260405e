namespace Watersown.Wording;

/// <summary>Words in which marks are told again, and words for how far a field has come and for the steps of a plan.</summary>
public sealed partial record StoryWords
{
    public required string CheckWet { get; init; }

    public required string CheckFull { get; init; }

    public required string CheckDry { get; init; }

    public required string CheckReflooded { get; init; }

    public required string DepthAt { get; init; }

    public required string DepthWhole { get; init; }

    public required string StageNow { get; init; }

    public required string Boards { get; init; }

    public required string FlowSeen { get; init; }

    public required string Ordered { get; init; }

    public required string OrderAsked { get; init; }

    public required string OrderAccepted { get; init; }

    public required string OrderRunning { get; init; }

    public required string OrderChanged { get; init; }

    public required string OrderEnded { get; init; }

    public required string Curtailed { get; init; }

    public required string CurtailedUntil { get; init; }

    public required string CurtailedNoLonger { get; init; }

    public required string SourceUp { get; init; }

    public required string SourceDown { get; init; }

    public required string FaultLevee { get; init; }

    public required string FaultLeveeBetween { get; init; }

    public required string FaultBox { get; init; }

    public required string FaultBoxNumber { get; init; }

    public required string FaultPump { get; init; }

    public required string FaultGate { get; init; }

    public required string FaultAt { get; init; }

    public required string Mended { get; init; }

    public required string SownAll { get; init; }

    public required string Billed { get; init; }

    public required string TrackLooked { get; init; }

    public required string SownPart { get; init; }

    public required string SownAgain { get; init; }

    public required string OfBatch { get; init; }

    public required string DryWeight { get; init; }

    public required string WetWeight { get; init; }

    public required string Loads { get; init; }

    public required string LoadGone { get; init; }

    public required string LoadGoneBare { get; init; }

    public required string OfTrailer { get; init; }

    public required string Slot { get; init; }

    public required string StoodDown { get; init; }

    public required string WhyWind { get; init; }

    public required string WhyRain { get; init; }

    public required string WhyFog { get; init; }

    public required string WhyAeroplane { get; init; }

    public required string WhySeed { get; init; }

    public required string WhyField { get; init; }

    public required string WhyOther { get; init; }

    public required string Corrected { get; init; }

    public required string NetNow { get; init; }

    public required string GrossNow { get; init; }

    public required string CertifiedNow { get; init; }

    public required string RateNow { get; init; }

    public required string VarietyNow { get; init; }

    public required string NameNow { get; init; }

    public required string EdgeNow { get; init; }

    public required string Counted { get; init; }

    public required string Photo { get; init; }

    public required string InSoak { get; init; }

    public required string Drained { get; init; }

    public required string Dumped { get; init; }

    public required string TrailerSeen { get; init; }

    public required string SeedLeft { get; init; }

    public required string For { get; init; }

    public required string At { get; init; }

    public required string Wind { get; init; }

    public required string WindSteady { get; init; }

    public required string Forecast { get; init; }

    public required string ForecastBare { get; init; }

    public required string Warmth { get; init; }

    public required string Told { get; init; }

    public required string Heard { get; init; }

    public required string Agreed { get; init; }

    public required string NotReached { get; init; }

    public required string ByVoice { get; init; }

    public required string Pinned { get; init; }

    public required string Unpinned { get; init; }

    public required string Overrode { get; init; }

    public required string PersonNamed { get; init; }

    public required string PlanIssued { get; init; }

    public required string PlanForMarks { get; init; }

    public required string PlanForFarm { get; init; }

    public required string PlanAsked { get; init; }

    public required string TakenBack { get; init; }

    public required string NewerSort { get; init; }

    public required string TaskGround { get; init; }

    public required string TaskOrderWater { get; init; }

    public required string TaskFill { get; init; }

    public required string TaskCallSeed { get; init; }

    public required string TaskSoak { get; init; }

    public required string TaskDrain { get; init; }

    public required string TaskHaul { get; init; }

    public required string TaskSow { get; init; }

    public required string StageUntold { get; init; }

    public required string StageTooWet { get; init; }

    public required string StageUnworked { get; init; }

    public required string StageChiseled { get; init; }

    public required string StageDisced { get; init; }

    public required string StagePlaned { get; init; }

    public required string StageAquaOn { get; init; }

    public required string StageRolled { get; init; }

    public required string StageFlooding { get; init; }

    public required string StageFull { get; init; }

    public required string StageSown { get; init; }
}
