namespace Watersown.Wording;

/// <summary>Words of harvest: moisture, combines and dryer, tickets and shares.</summary>
public sealed partial record HarvestWords
{
    public required string Title { get; init; }

    public required string Lead { get; init; }

    public required string Safety { get; init; }

    public required string ToTickets { get; init; }

    public required string Back { get; init; }

    public required string PaceTitle { get; init; }

    public required string PaceNeeds { get; init; }

    public required string DryerBinds { get; init; }

    public required string CombinesBind { get; init; }

    public required string SetsCould { get; init; }

    public required string LandLeft { get; init; }

    public required string FinishHead { get; init; }

    public required string FinishNever { get; init; }

    public required string FinishAlone { get; init; }

    public required string NotBefore { get; init; }

    public required string WaitingIs { get; init; }

    public required string AcreDays { get; init; }

    public required string HectareDays { get; init; }

    public required string OrderTitle { get; init; }

    public required string OrderNone { get; init; }

    public required string BoardSaid { get; init; }

    public required string Day { get; init; }

    public required string What { get; init; }

    public required string SetsHead { get; init; }

    public required string CutLine { get; init; }

    public required string SetsLine { get; init; }

    public required string OfRoom { get; init; }

    public required string NoVariety { get; init; }

    public required string MoistTitle { get; init; }

    public required string MoistNone { get; init; }

    public required string MoistOthers { get; init; }

    public required string MoistIs { get; init; }

    public required string MoistBand { get; init; }

    public required string MoistRate { get; init; }

    public required string MoistPublished { get; init; }

    public required string MoistWetter { get; init; }

    public required string FitOn { get; init; }

    public required string RiskOn { get; init; }

    public required string LiesNow { get; init; }

    public required string CutSoFar { get; init; }

    public required string TrendSaid { get; init; }

    public required string AddSample { get; init; }

    public required string SampleKey { get; init; }

    public required string SayLies { get; init; }

    public required string SayStands { get; init; }

    public required string SayCut { get; init; }

    public required string SayCutLand { get; init; }

    public required string SayBoards { get; init; }

    public required string BoardsSince { get; init; }

    public required string ToDrain { get; init; }

    public required string DrainTitle { get; init; }

    public required string DrainLead { get; init; }

    public required string DrainSources { get; init; }

    public required string DrainNone { get; init; }

    public required string DrainHeading { get; init; }

    public required string DrainEarliest { get; init; }

    public required string DrainTell { get; init; }

    public required string DrainCarries { get; init; }

    public required string DrainRipe { get; init; }

    public required string DrainSeen { get; init; }

    public required string DrainAbout { get; init; }

    public required string DrainNoSpill { get; init; }

    public required string DrainLate { get; init; }

    public required string DrainOut { get; init; }

    public required string Span { get; init; }

    public required string MeansTitle { get; init; }

    public required string CombinesAre { get; init; }

    public required string EachIs { get; init; }

    public required string SetsAre { get; init; }

    public required string SetIs { get; init; }

    public required string ExpectedIs { get; init; }

    public required string CutFromIs { get; init; }

    public required string CutToIs { get; init; }

    public required string AskCombines { get; init; }

    public required string AskEach { get; init; }

    public required string AskSets { get; init; }

    public required string AskSet { get; init; }

    public required string AskExpected { get; init; }

    public required string AskCutFrom { get; init; }

    public required string AskCutTo { get; init; }

    public required string RoomTitle { get; init; }

    public required string RoomDryer { get; init; }

    public required string RoomVariety { get; init; }

    public required string RoomFrom { get; init; }

    public required string RoomUntil { get; init; }

    public required string RoomSets { get; init; }

    public required string RoomKeep { get; init; }

    public required string RoomLine { get; init; }

    public required string RoomOwn { get; init; }

    public required string TicketsTitle { get; init; }

    public required string TicketNew { get; init; }

    public required string TicketNumber { get; init; }

    public required string TicketField { get; init; }

    public required string TicketGross { get; init; }

    public required string TicketTare { get; init; }

    public required string TicketMoisture { get; init; }

    public required string TicketForeign { get; init; }

    public required string TicketVariety { get; init; }

    public required string TicketDryer { get; init; }

    public required string TicketSecond { get; init; }

    public required string TicketSecondShare { get; init; }

    public required string TicketKeep { get; init; }

    public required string TicketMissing { get; init; }

    public required string TicketList { get; init; }

    public required string TicketNone { get; init; }

    public required string TicketLine { get; init; }

    public required string PaidIs { get; init; }

    public required string YieldTitle { get; init; }

    public required string Grain { get; init; }

    public required string Yield { get; init; }

    public required string Tickets { get; init; }

    public required string Land { get; init; }

    public required string AllFields { get; init; }

    public required string YieldNeedsCut { get; init; }

    public required string Homeless { get; init; }

    public required string ByVariety { get; init; }

    public required string SharesTitle { get; init; }

    public required string ShareLandlord { get; init; }

    public required string ShareAsk { get; init; }

    public required string SharesFarm { get; init; }

    public required string SharesNote { get; init; }

    public required string MarkMeans { get; init; }

    public required string MarkRoom { get; init; }

    public required string MarkMoisture { get; init; }

    public required string MarkLies { get; init; }

    public required string MarkStands { get; init; }

    public required string MarkBoardsOut { get; init; }

    public required string MarkCut { get; init; }

    public required string MarkCutLand { get; init; }

    public required string MarkTicket { get; init; }

    public required string MarkShare { get; init; }
}
