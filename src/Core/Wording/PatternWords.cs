namespace Watersown.Wording;

/// <summary>Words of a pattern test: trays, swaths, unevenness.</summary>
public sealed partial record PatternWords
{
    public required string Title { get; init; }

    public required string Kind { get; init; }

    public required string Lead { get; init; }

    public required string Holds { get; init; }

    public required string NoPeople { get; init; }

    public required string LeadOf { get; init; }

    public required string SeedUntold { get; init; }

    public required string Swath { get; init; }

    public required string OneWay { get; init; }

    public required string BackForth { get; init; }

    public required string Steady { get; init; }

    public required string Exact { get; init; }

    public required string AtSteady { get; init; }

    public required string None { get; init; }

    public required string OfPasses { get; init; }

    public required string OnePass { get; init; }

    public required string Half { get; init; }

    public required string Middle { get; init; }

    public required string MiddleOn { get; init; }

    public required string MiddleRight { get; init; }

    public required string MiddleLeft { get; init; }

    public required string MoveLeft { get; init; }

    public required string MoveRight { get; init; }

    public required string NoMove { get; init; }

    public required string Laid { get; init; }

    public required string Closure { get; init; }

    public required string NoGate { get; init; }

    public required string Chance { get; init; }

    public required string ChanceOut { get; init; }

    public required string ChanceIn { get; init; }

    public required string Check { get; init; }

    public required string CheckOff { get; init; }

    public required string LimitBasis { get; init; }

    public required string AtSwath { get; init; }

    public required string AtSwathIs { get; init; }

    public required string TraysTitle { get; init; }

    public required string TraysSaid { get; init; }

    public required string LaidTitle { get; init; }

    public required string LaidSaid { get; init; }

    public required string CurveTitle { get; init; }

    public required string CurveSaid { get; init; }

    public required string Line { get; init; }

    public required string Mean { get; init; }

    public required string Limit { get; init; }

    public required string Enter { get; init; }

    public required string Spacing { get; init; }

    public required string SpacingKey { get; init; }

    public required string TrayArea { get; init; }

    public required string TrayAreaKey { get; init; }

    public required string OffsetIs { get; init; }

    public required string OffsetKey { get; init; }

    public required string OffsetSide { get; init; }

    public required string Right { get; init; }

    public required string Left { get; init; }

    public required string SpeedIs { get; init; }

    public required string SpeedKey { get; init; }

    public required string GateIs { get; init; }

    public required string GateKey { get; init; }

    public required string GrainIs { get; init; }

    public required string GrainKey { get; init; }

    public required string LimitIs { get; init; }

    public required string LimitKey { get; init; }

    public required string SteeringIs { get; init; }

    public required string SteeringKey { get; init; }

    public required string SeedAsk { get; init; }

    public required string Pass { get; init; }

    public required string AddTray { get; init; }

    public required string NextPass { get; init; }

    public required string DropTray { get; init; }

    public required string DropPass { get; init; }

    public required string Paste { get; init; }

    public required string PasteTake { get; init; }

    public required string PasteBad { get; init; }

    public required string Uneven { get; init; }

    public required string TooFew { get; init; }

    public required string Keep { get; init; }

    public required string Kept { get; init; }

    public required string NoTest { get; init; }

    public required string Open { get; init; }

    public required string Mark { get; init; }

    public required string Load { get; init; }

    public required string Says { get; init; }

    public required string Ask { get; init; }
}
