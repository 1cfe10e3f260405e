namespace Watersown.Wording;

/// <summary>Words of the flight screens: mornings, load sheet, what went out, who stood down.</summary>
public sealed partial record FlightScreenWords
{
    public required string Title { get; init; }

    public required string Mornings { get; init; }

    public required string Slot { get; init; }

    public required string SlotNone { get; init; }

    public required string Wind { get; init; }

    public required string WindOf { get; init; }

    public required string Limits { get; init; }

    public required string NoWord { get; init; }

    public required string Within { get; init; }

    public required string PartOver { get; init; }

    public required string Over { get; init; }

    public required string CalmFrom { get; init; }

    public required string ForecastOf { get; init; }

    public required string Needs { get; init; }

    public required string TooLong { get; init; }

    public required string NothingPlanned { get; init; }

    public required string NoPlan { get; init; }

    public required string Order { get; init; }

    public required string Field { get; init; }

    public required string From { get; init; }

    public required string Land { get; init; }

    public required string SeedHead { get; init; }

    public required string Loads { get; init; }

    public required string DryEach { get; init; }

    public required string WetEach { get; init; }

    public required string HoursHead { get; init; }

    public required string OpenSheet { get; init; }

    public required string WindHere { get; init; }

    public required string WindSteady { get; init; }

    public required string WindGust { get; init; }

    public required string WindFrom { get; init; }

    public required string North { get; init; }

    public required string NorthEast { get; init; }

    public required string East { get; init; }

    public required string SouthEast { get; init; }

    public required string South { get; init; }

    public required string SouthWest { get; init; }

    public required string West { get; init; }

    public required string NorthWest { get; init; }

    public required string StandDown { get; init; }

    public required string StandDownWho { get; init; }

    public required string StandDownWhy { get; init; }

    public required string ByPilot { get; init; }

    public required string ByDispatcher { get; init; }

    public required string ByGrower { get; init; }

    public required string WhyOther { get; init; }

    public required string StoodDownLine { get; init; }

    public required string SheetTitle { get; init; }

    public required string SheetLead { get; init; }

    public required string GateWet { get; init; }

    public required string RateDry { get; init; }

    public required string Weight { get; init; }

    public required string WeightKey { get; init; }

    public required string WeightIs { get; init; }

    public required string WeightPlan { get; init; }

    public required string WeightToday { get; init; }

    public required string LoadN { get; init; }

    public required string No { get; init; }

    public required string LoadWet { get; init; }

    public required string DrySoFar { get; init; }

    public required string GoneHead { get; init; }

    public required string GoneMark { get; init; }

    public required string GoneAt { get; init; }

    public required string NotGone { get; init; }

    public required string Tally { get; init; }

    public required string Remaining { get; init; }

    public required string AllGone { get; init; }

    public required string OtherWays { get; init; }

    public required string FullRest { get; init; }

    public required string SmallLast { get; init; }

    public required string FewerLoads { get; init; }

    public required string FewerWithin { get; init; }

    public required string FewerOver { get; init; }

    public required string FewerUnknown { get; init; }

    public required string TrailerN { get; init; }

    public required string SownMark { get; init; }

    public required string SownPart { get; init; }

    public required string SownPartKey { get; init; }

    public required string LeftKey { get; init; }

    public required string LeftAsk { get; init; }

    public required string Links { get; init; }

    public required string LinkMake { get; init; }

    public required string LinkFor { get; init; }

    public required string LinkOnce { get; init; }

    public required string LinkText { get; init; }

    public required string LinkMade { get; init; }

    public required string LinkWithdraw { get; init; }

    public required string LinkOffline { get; init; }

    public required string LinkRefused { get; init; }

    public required string LinkCopy { get; init; }

    public required string LinkOver { get; init; }

    public required string LinkNone { get; init; }

    public required string SmsBody { get; init; }

    public required string Print { get; init; }

    public required string Keep { get; init; }

    public required string Back { get; init; }
}
