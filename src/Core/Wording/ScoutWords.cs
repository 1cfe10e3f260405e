namespace Watersown.Wording;

/// <summary>Words of looking for pests and of counting a stand.</summary>
public sealed partial record ScoutWords
{
    public required string Round { get; init; }

    public required string RoundLead { get; init; }

    public required string RoundNone { get; init; }

    public required string RoundCount { get; init; }

    public required string Shrimp { get; init; }

    public required string Midge { get; init; }

    public required string Scum { get; init; }

    public required string Weevil { get; init; }

    public required string ArmywormLeaf { get; init; }

    public required string ArmywormPanicle { get; init; }

    public required string Seen { get; init; }

    public required string NotSeen { get; init; }

    public required string SeenOf { get; init; }

    public required string NotSeenOf { get; init; }

    public required string Share { get; init; }

    public required string SharePlants { get; init; }

    public required string SharePanicles { get; init; }

    public required string ShareScars { get; init; }

    public required string LastSeen { get; init; }

    public required string LastNot { get; init; }

    public required string LastNever { get; init; }

    public required string UntilReckoned { get; init; }

    public required string UntilSeen { get; init; }

    public required string LevelReached { get; init; }

    public required string LevelNot { get; init; }

    public required string LevelUnknown { get; init; }

    public required string FactShrimp { get; init; }

    public required string FactMidge { get; init; }

    public required string FactScum { get; init; }

    public required string FactWeevil { get; init; }

    public required string FactArmywormLeaf { get; init; }

    public required string FactArmywormPanicle { get; init; }

    public required string Defers { get; init; }

    public required string MarkSeen { get; init; }

    public required string MarkSeenShare { get; init; }

    public required string MarkNot { get; init; }

    public required string MarkResponse { get; init; }

    public required string ToStand { get; init; }

    public required string StandTitle { get; init; }

    public required string StandLead { get; init; }

    public required string Zone { get; init; }

    public required string ZoneUpwind { get; init; }

    public required string ZoneMiddle { get; init; }

    public required string ZoneLee { get; init; }

    public required string ZoneLandAsk { get; init; }

    public required string ZoneLandKept { get; init; }

    public required string RingSize { get; init; }

    public required string RingFoot { get; init; }

    public required string RingQuarter { get; init; }

    public required string RingStation { get; init; }

    public required string PadRing { get; init; }

    public required string RingsSoFar { get; init; }

    public required string RingsNone { get; init; }

    public required string UndoRing { get; init; }

    public required string UndoRingOf { get; init; }

    public required string RingOf { get; init; }

    public required string WholeField { get; init; }

    public required string StandBare { get; init; }

    public required string PlainNot { get; init; }

    public required string Hides { get; init; }

    public required string ThinOnly { get; init; }

    public required string AllStand { get; init; }

    public required string Freedom { get; init; }

    public required string ToGo { get; init; }

    public required string Enough { get; init; }

    public required string ToGoUnknown { get; init; }

    public required string Precision { get; init; }

    public required string LandOff { get; init; }

    public required string RingsHead { get; init; }

    public required string MeanHead { get; init; }

    public required string ToGoHead { get; init; }

    public required string DrawingSpoken { get; init; }

    public required string Overseed { get; init; }

    public required string OverseedLead { get; init; }

    public required string OverseedOf { get; init; }

    public required string RegionCalifornia { get; init; }

    public required string RegionMidSouth { get; init; }

    public required string RegionAustralia { get; init; }

    public required string RegionOwn { get; init; }

    public required string ViewHead { get; init; }

    public required string TrialsHead { get; init; }

    public required string SayingHead { get; init; }

    public required string SowAgain { get; init; }

    public required string Keep { get; init; }

    public required string AllAgree { get; init; }

    public required string Disagree { get; init; }

    public required string After { get; init; }

    public required string Yield { get; init; }

    public required string AcreCost { get; init; }

    public required string On { get; init; }

    public required string Response { get; init; }

    public required string ResponseAt { get; init; }

    public required string ResponseKeep { get; init; }

    public required string NotFalling { get; init; }

    public required string Published { get; init; }
}
