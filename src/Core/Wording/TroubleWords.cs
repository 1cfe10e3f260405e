namespace Watersown.Wording;

/// <summary>Words for when something goes wrong: a pump, a levee, a trailer, a short load, seed left over, wind after sowing.</summary>
public sealed partial record TroubleWords
{
    public required string StoppedTitle { get; init; }

    public required string StoppedIf { get; init; }

    public required string StoppedRuns { get; init; }

    public required string StoppedSince { get; init; }

    public required string FirstBare { get; init; }

    public required string FirstBareAt { get; init; }

    public required string NothingBare { get; init; }

    public required string LeftNow { get; init; }

    public required string BareNow { get; init; }

    public required string Lasting { get; init; }

    public required string LastingCaption { get; init; }

    public required string Days { get; init; }

    public required string BareFrom { get; init; }

    public required string FlightHead { get; init; }

    public required string FlightStands { get; init; }

    public required string FlightBare { get; init; }

    public required string DepthNeeded { get; init; }

    public required string DepthNow { get; init; }

    public required string AtCheck { get; init; }

    public required string OtherWater { get; init; }

    public required string NeverBare { get; init; }

    public required string Fills { get; init; }

    public required string FillsNone { get; init; }

    public required string FillStops { get; init; }

    public required string FillStopsPlain { get; init; }

    public required string FillWaits { get; init; }

    public required string HeadAge { get; init; }

    public required string FlightOff { get; init; }

    public required string HeadAgeAtFlight { get; init; }

    public required string BackBy { get; init; }

    public required string BackNever { get; init; }

    public required string CancelSoak { get; init; }

    public required string SoakUnder { get; init; }

    public required string SoakInstead { get; init; }

    public required string SoakNowhere { get; init; }

    public required string WakeTitle { get; init; }

    public required string WakeNow { get; init; }

    public required string SleepUntil { get; init; }

    public required string SleepAll { get; init; }

    public required string RoleRepair { get; init; }

    public required string RoleDistrict { get; init; }

    public required string RoleWarehouse { get; init; }

    public required string RoleDispatcher { get; init; }

    public required string RoleIrrigator { get; init; }

    public required string RoleTractor { get; init; }

    public required string CallRepair { get; init; }

    public required string CallWarehouse { get; init; }

    public required string CallDispatcher { get; init; }

    public required string CallIrrigator { get; init; }

    public required string CallIrrigatorAll { get; init; }

    public required string Ring { get; init; }

    public required string Told { get; init; }

    public required string NotReached { get; init; }

    public required string ToldShort { get; init; }

    public required string NotReachedShort { get; init; }

    public required string SaidTold { get; init; }

    public required string SaidNotReached { get; init; }

    public required string OtherLoss { get; init; }

    public required string OtherLossKey { get; init; }

    public required string OtherLossNow { get; init; }

    public required string OwnLoss { get; init; }

    public required string NoSource { get; init; }

    public required string KeyTrailer { get; init; }

    public required string KeyTrailerLead { get; init; }

    public required string KeyOther { get; init; }

    public required string KeyNumber { get; init; }

    public required string TrailerN { get; init; }

    public required string TrailerFits { get; init; }

    public required string TrailerMeant { get; init; }

    public required string Stop { get; init; }

    public required string StopLine { get; init; }

    public required string StopWhat { get; init; }

    public required string StopTake { get; init; }

    public required string StopFits { get; init; }

    public required string StopFitsNone { get; init; }

    public required string StopOther { get; init; }

    public required string StopOverride { get; init; }

    public required string StopOverrideWho { get; init; }

    public required string StopOverrideName { get; init; }

    public required string StopOverrideReason { get; init; }

    public required string StopOverrideKeep { get; init; }

    public required string StopOverrideMissing { get; init; }

    public required string StopOverridden { get; init; }

    public required string Confirm { get; init; }

    public required string ConfirmTrailer { get; init; }

    public required string ConfirmSeed { get; init; }

    public required string ConfirmField { get; init; }

    public required string ConfirmAsk { get; init; }

    public required string ConfirmBatch { get; init; }

    public required string ConfirmKeep { get; init; }

    public required string ConfirmNote { get; init; }

    public required string ReasonMoved { get; init; }

    public required string ReasonTag { get; init; }

    public required string ReasonOther { get; init; }

    public required string TrailerFor { get; init; }

    public required string Back { get; init; }

    public required string ScaleTitle { get; init; }

    public required string ScaleKeep { get; init; }

    public required string ScaleKey { get; init; }

    public required string ScaleWaits { get; init; }

    public required string ScaleLine { get; init; }

    public required string ScaleDry { get; init; }

    public required string ScaleShort { get; init; }

    public required string ScaleOver { get; init; }

    public required string ScaleEven { get; init; }

    public required string ScaleWithin { get; init; }

    public required string ScaleBeyond { get; init; }

    public required string ScaleFactor { get; init; }

    public required string ScaleWays { get; init; }

    public required string ScaleSpread { get; init; }

    public required string ScalePart { get; init; }

    public required string ScaleLoads { get; init; }

    public required string ScaleDecide { get; init; }

    public required string ScaleSpare { get; init; }

    public required string ScaleSource { get; init; }

    public required string ScaleToLoads { get; init; }

    public required string OutTitle { get; init; }

    public required string OutLine { get; init; }

    public required string OutRate { get; init; }

    public required string OutMissed { get; init; }

    public required string OutHeavy { get; init; }

    public required string OutLook { get; init; }

    public required string OutLookAny { get; init; }

    public required string OutWithin { get; init; }

    public required string OutListed { get; init; }

    public required string ScoutTitle { get; init; }

    public required string ScoutNone { get; init; }

    public required string ScoutLevee { get; init; }

    public required string ScoutLeveeAny { get; init; }

    public required string ScoutWind { get; init; }

    public required string ScoutLeft { get; init; }

    public required string ScoutLeftAny { get; init; }

    public required string ScoutBare { get; init; }

    public required string ScoutDone { get; init; }

    public required string ScoutGood { get; init; }

    public required string ScoutThin { get; init; }

    public required string ScoutMoved { get; init; }

    public required string ScoutWhat { get; init; }

    public required string TroubleTitle { get; init; }

    public required string LeveeWhich { get; init; }

    public required string LeveeBetween { get; init; }

    public required string LeveeLast { get; init; }

    public required string LeveeWidth { get; init; }

    public required string LeveePhoto { get; init; }

    public required string LeveePhotoTaken { get; init; }

    public required string LeveePhotoOf { get; init; }

    public required string LeveeKeepAny { get; init; }

    public required string LeveeOut { get; init; }

    public required string LeveeOutLast { get; init; }

    public required string LeveeOutAny { get; init; }

    public required string LeveeSaid { get; init; }

    public required string LeveeAbove { get; init; }

    public required string LeveeBelow { get; init; }

    public required string LeveeLeaves { get; init; }

    public required string LeveeHalf { get; init; }

    public required string LeveeHalfAny { get; init; }

    public required string LeveeHours { get; init; }

    public required string LeveeWhen { get; init; }

    public required string LeveeFlow { get; init; }

    public required string LeveeGuessed { get; init; }

    public required string LeveeWidthTaken { get; init; }

    public required string LeveeHeadTaken { get; init; }

    public required string LeveeHold { get; init; }

    public required string LeveeHoldLeaves { get; init; }

    public required string StepCloseGap { get; init; }

    public required string StepTarp { get; init; }

    public required string StepPassBelow { get; init; }

    public required string StepKeepIn { get; init; }

    public required string StepFeedAbove { get; init; }

    public required string StepReadSticks { get; init; }

    public required string StepLetDown { get; init; }

    public required string StepRingAdviser { get; init; }

    public required string LeveeScout { get; init; }

    public required string LeveeScouted { get; init; }

    public required string LeveeFlight { get; init; }

    public required string LeveeMended { get; init; }

    public required string FaultMeaning { get; init; }
}
