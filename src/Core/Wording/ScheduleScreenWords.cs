namespace Watersown.Wording;

/// <summary>Words of the schedule: the board and the days.</summary>
public sealed partial record ScheduleScreenWords
{
    public required string Title { get; init; }

    public required string PlanLine { get; init; }

    public required string NoPlan { get; init; }

    public required string View { get; init; }

    public required string AsBoard { get; init; }

    public required string AsList { get; init; }

    public required string Zoom { get; init; }

    public required string ZoomDay { get; init; }

    public required string ZoomThree { get; init; }

    public required string ZoomWeek { get; init; }

    public required string ZoomSeason { get; init; }

    public required string Earlier { get; init; }

    public required string Later { get; init; }

    public required string Today { get; init; }

    public required string Board { get; init; }

    public required string BoardLead { get; init; }

    public required string Fields { get; init; }

    public required string WhatHolds { get; init; }

    public required string Wind { get; init; }

    public required string WindLead { get; init; }

    public required string WindForecast { get; init; }

    public required string WindNone { get; init; }

    public required string WindLimit { get; init; }

    public required string WindUntil { get; init; }

    public required string Water { get; init; }

    public required string WaterCap { get; init; }

    public required string Planes { get; init; }

    public required string Trailers { get; init; }

    public required string SoakPlaces { get; init; }

    public required string Tractors { get; init; }

    public required string LaneMostUsed { get; init; }

    public required string LaneUsed { get; init; }

    public required string LaneNothing { get; init; }

    public required string SlotHours { get; init; }

    public required string ChangeUp { get; init; }

    public required string ChangeDown { get; init; }

    public required string ChangeLine { get; init; }

    public required string ChangeNone { get; init; }

    public required string FlowOver { get; init; }

    public required string FlowShort { get; init; }

    public required string BarTooWet { get; init; }

    public required string BarDry { get; init; }

    public required string BarWorking { get; init; }

    public required string BarFilling { get; init; }

    public required string BarFull { get; init; }

    public required string BarSowing { get; init; }

    public required string BarSown { get; init; }

    public required string BarInSoak { get; init; }

    public required string BarDrained { get; init; }

    public required string BarRoad { get; init; }

    public required string BarNoWord { get; init; }

    public required string NightWord { get; init; }

    public required string WindWord { get; init; }

    public required string PeggedWord { get; init; }

    public required string LastMomentWord { get; init; }

    public required string SowWord { get; init; }

    public required string HoldPinned { get; init; }

    public required string HoldGround { get; init; }

    public required string HoldWater { get; init; }

    public required string HoldSeed { get; init; }

    public required string HoldWind { get; init; }

    public required string HoldPlane { get; init; }

    public required string HoldTrailers { get; init; }

    public required string HoldOthers { get; init; }

    public required string HoldTooWet { get; init; }

    public required string HoldNotInPlan { get; init; }

    public required string HoldSown { get; init; }

    public required string ReasonPinned { get; init; }

    public required string ReasonPinnedTold { get; init; }

    public required string ReasonGround { get; init; }

    public required string ReasonWater { get; init; }

    public required string ReasonFull { get; init; }

    public required string ReasonSeed { get; init; }

    public required string ReasonSeedOf { get; init; }

    public required string ReasonWind { get; init; }

    public required string ReasonPlane { get; init; }

    public required string ReasonTrailers { get; init; }

    public required string ReasonOthers { get; init; }

    public required string ReasonTooWet { get; init; }

    public required string ReasonTooWetUntold { get; init; }

    public required string ReasonNotInPlan { get; init; }

    public required string ReasonSownUntold { get; init; }

    public required string RowSaid { get; init; }

    public required string BarSaid { get; init; }

    public required string BarSaidOn { get; init; }

    public required string SowSaid { get; init; }

    public required string StepSaid { get; init; }

    public required string StepPinned { get; init; }

    public required string StepFixed { get; init; }

    public required string StepTold { get; init; }

    public required string StepPress { get; init; }

    public required string Season { get; init; }

    public required string SeasonLast { get; init; }

    public required string Proved { get; init; }

    public required string ProvedBest { get; init; }

    public required string CostWorking { get; init; }

    public required string InTheWay { get; init; }

    public required string InTheWayNone { get; init; }

    public required string Lift { get; init; }

    public required string Decide { get; init; }

    public required string DecideNone { get; init; }

    public required string DecideBy { get; init; }

    public required string DecideNow { get; init; }

    public required string DecideLate { get; init; }

    public required string DecideWait { get; init; }

    public required string DecideMore { get; init; }

    public required string Assumed { get; init; }

    public required string Key { get; init; }

    public required string ListNothing { get; init; }

    public required string ListSlots { get; init; }

    public required string ListSlotNone { get; init; }

    public required string ListWind { get; init; }

    public required string ListWindNone { get; init; }

    public required string ListLight { get; init; }

    public required string ListUntil { get; init; }

    public required string ListBy { get; init; }

    public required string ListLoads { get; init; }

    public required string ListMove { get; init; }

    public required string ListMoveOf { get; init; }
}
