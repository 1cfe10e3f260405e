namespace Watersown.Wording;

/// <summary>Words of moving and pinning a step, of working out a plan, and of what it moves.</summary>
public sealed partial record PinScreenWords
{
    public required string MoveTitle { get; init; }

    public required string MoveFrom { get; init; }

    public required string MoveBy { get; init; }

    public required string MoveByEarlier { get; init; }

    public required string MoveSame { get; init; }

    public required string MoveKeys { get; init; }

    public required string MoveMinus { get; init; }

    public required string MovePlus { get; init; }

    public required string Day1 { get; init; }

    public required string PinHere { get; init; }

    public required string PinSaid { get; init; }

    public required string Leave { get; init; }

    public required string BreaksNone { get; init; }

    public required string Breaks { get; init; }

    public required string BreaksAnyway { get; init; }

    public required string BreakPast { get; init; }

    public required string BreakSlot { get; init; }

    public required string BreakSlotNone { get; init; }

    public required string BreakLight { get; init; }

    public required string BreakWind { get; init; }

    public required string BreakPlane { get; init; }

    public required string BreakWater { get; init; }

    public required string BreakSeedYoung { get; init; }

    public required string BreakSeedOld { get; init; }

    public required string BreakSeedNone { get; init; }

    public required string BreakGround { get; init; }

    public required string BreakNotice { get; init; }

    public required string BreakFlow { get; init; }

    public required string BreakSown { get; init; }

    public required string BreakHead { get; init; }

    public required string BreakTold { get; init; }

    public required string Pins { get; init; }

    public required string PinsNone { get; init; }

    public required string PinLine { get; init; }

    public required string ListPinned { get; init; }

    public required string PinWaits { get; init; }

    public required string PinCannot { get; init; }

    public required string PinNone { get; init; }

    public required string PinNotInPlan { get; init; }

    public required string PinTold { get; init; }

    public required string LetGo { get; init; }

    public required string LetGoOf { get; init; }

    public required string LetGoSaid { get; init; }

    public required string Planning { get; init; }

    public required string PlanAsk { get; init; }

    public required string PlanStale { get; init; }

    public required string PlanStaleOne { get; init; }

    public required string PlanFresh { get; init; }

    public required string PlanOffline { get; init; }

    public required string PlanNotYours { get; init; }

    public required string PlanRunning { get; init; }

    public required string PlanStarting { get; init; }

    public required string PlanSoFar { get; init; }

    public required string PlanStop { get; init; }

    public required string PlanFailed { get; init; }

    public required string PlanAuto { get; init; }

    public required string Moves { get; init; }

    public required string MovesLead { get; init; }

    public required string MoveLine { get; init; }

    public required string MoveGone { get; init; }

    public required string MoveLater { get; init; }

    public required string MoveEarlier { get; init; }

    public required string NewPlan { get; init; }

    public required string NewPlanWhy { get; init; }

    public required string NewPlanTake { get; init; }

    public required string StepWas { get; init; }

    public required string StepNow { get; init; }

    public required string StepGone { get; init; }

    public required string StepNew { get; init; }

    public required string StepMoved { get; init; }

    public required string StepOther { get; init; }

    public required string AllMoves { get; init; }

    public required string MovePin { get; init; }
}
