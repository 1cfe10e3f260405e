namespace Watersown.Wording;

/// <summary>Words of the water screens: sources, order book, checks, a source that stopped, the route.</summary>
public sealed partial record WaterScreenWords
{
    public required string Title { get; init; }

    public required string Sources { get; init; }

    public required string SourcesLead { get; init; }

    public required string Gives { get; init; }

    public required string Holds { get; init; }

    public required string OverOrShort { get; init; }

    public required string Fills { get; init; }

    public required string Over { get; init; }

    public required string OverFill { get; init; }

    public required string Short { get; init; }

    public required string Even { get; init; }

    public required string Idle { get; init; }

    public required string NothingFills { get; init; }

    public required string FillLine { get; init; }

    public required string FullAt { get; init; }

    public required string FullAsMarked { get; init; }

    public required string FullBetween { get; init; }

    public required string FullOrNever { get; init; }

    public required string FullUntold { get; init; }

    public required string FullNotSoon { get; init; }

    public required string Never { get; init; }

    public required string NeverAtAll { get; init; }

    public required string CapWord { get; init; }

    public required string HoldsAll { get; init; }

    public required string HoldsAllOver { get; init; }

    public required string Waits { get; init; }

    public required string Down { get; init; }

    public required string DownSince { get; init; }

    public required string Together { get; init; }

    public required string Capped { get; init; }

    public required string Joined { get; init; }

    public required string GroupCap { get; init; }

    public required string GroupSpare { get; init; }

    public required string GroupShort { get; init; }

    public required string WithoutTailwater { get; init; }

    public required string Stopped { get; init; }

    public required string Runs { get; init; }

    public required string WhatNow { get; init; }

    public required string FlowSeen { get; init; }

    public required string FlowSeenAt { get; init; }

    public required string SeenAge { get; init; }

    public required string Orders { get; init; }

    public required string OrdersLead { get; init; }

    public required string OrdersLater { get; init; }

    public required string OrdersNone { get; init; }

    public required string SendBy { get; init; }

    public required string SendLate { get; init; }

    public required string Change { get; init; }

    public required string ChangeTo { get; init; }

    public required string ChangeAt { get; init; }

    public required string CutWord { get; init; }

    public required string RaiseWord { get; init; }

    public required string NotAsked { get; init; }

    public required string OwnOrder { get; init; }

    public required string Asked { get; init; }

    public required string Accepted { get; init; }

    public required string Running { get; init; }

    public required string Changed { get; init; }

    public required string Ended { get; init; }

    public required string ByVoice { get; init; }

    public required string OrderNumber { get; init; }

    public required string OrderNumberIs { get; init; }

    public required string WordFrom { get; init; }

    public required string NewOrder { get; init; }

    public required string NewOrderFlow { get; init; }

    public required string NewOrderWhen { get; init; }

    public required string AnyHour { get; init; }

    public required string Checks { get; init; }

    public required string ChecksLead { get; init; }

    public required string CheckNumber { get; init; }

    public required string CheckSaid { get; init; }

    public required string NextWet { get; init; }

    public required string AllFull { get; init; }

    public required string SownFields { get; init; }

    public required string DryFields { get; init; }

    public required string Unknown { get; init; }

    public required string Dry { get; init; }

    public required string WetWord { get; init; }

    public required string FullWord { get; init; }

    public required string Reflooded { get; init; }

    public required string Implied { get; init; }

    public required string DepthMark { get; init; }

    public required string WholeField { get; init; }

    public required string HeadAge { get; init; }

    public required string WetOf { get; init; }

    public required string NoChecks { get; init; }

    public required string NoSpillTag { get; init; }

    public required string Faults { get; init; }

    public required string FaultsNone { get; init; }

    public required string Levee { get; init; }

    public required string Box { get; init; }

    public required string Pump { get; init; }

    public required string Gate { get; init; }

    public required string Mended { get; init; }

    public required string FaultSince { get; init; }

    public required string NewFault { get; init; }

    public required string AtCheck { get; init; }

    public required string AtBox { get; init; }

    public required string FillTitle { get; init; }

    public required string FillSee { get; init; }

    public required string FillWetOf { get; init; }

    public required string FillFull { get; init; }

    public required string FillNever { get; init; }

    public required string FillDone { get; init; }

    public required string FillNoSource { get; init; }

    public required string FillHour { get; init; }

    public required string FillEarlier { get; init; }

    public required string FillLater { get; init; }

    public required string FillAlong { get; init; }

    public required string FillTime { get; init; }

    public required string FillCheck { get; init; }

    public required string FillFirstWet { get; init; }

    public required string FillCovered { get; init; }

    public required string FillAllCovered { get; init; }

    public required string FillDepthThen { get; init; }

    public required string FillIsWet { get; init; }

    public required string FillIsWetSince { get; init; }

    public required string FillExpect { get; init; }

    public required string FillIsFull { get; init; }

    public required string FillNeverCheck { get; init; }

    public required string FillSharpness { get; init; }

    public required string FillKeyStick { get; init; }

    public required string FillKeyWet { get; init; }

    public required string FillKeyWanted { get; init; }

    public required string FillKeyNow { get; init; }

    public required string FillKeyHour { get; init; }

    public required string FillTry { get; init; }

    public required string FillTried { get; init; }

    public required string FillOwnFlow { get; init; }

    public required string FillSaid { get; init; }

    public required string BoxesTitle { get; init; }

    public required string BoxesLead { get; init; }

    public required string BoxBelow { get; init; }

    public required string BoxPasses { get; init; }

    public required string BoxUsual { get; init; }

    public required string BoxBoards { get; init; }

    public required string BoxSmall { get; init; }

    public required string BoxFarTooSmall { get; init; }

    public required string SourcesOverTime { get; init; }

    public required string SourceTime { get; init; }

    public required string SourceSeen { get; init; }

    public required string SourceOrdered { get; init; }

    public required string SourceHolding { get; init; }

    public required string SourceFilling { get; init; }

    public required string SourceOver { get; init; }

    public required string SourceShort { get; init; }

    public required string RouteLink { get; init; }

    public required string RouteTitle { get; init; }

    public required string RouteMark { get; init; }

    public required string RouteLeak { get; init; }

    public required string RouteDone { get; init; }

    public required string RoutePerson { get; init; }

    public required string Print { get; init; }

    public required string PutOff { get; init; }

    public required string Back { get; init; }

    public required string Keep { get; init; }
}
