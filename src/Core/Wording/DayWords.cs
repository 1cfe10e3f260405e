namespace Watersown.Wording;

/// <summary>Words of the day sheet.</summary>
public sealed partial record DayWords
{
    public required string Kind { get; init; }

    public required string Lead { get; init; }

    public required string Decide { get; init; }

    public required string NoDecision { get; init; }

    public required string By { get; init; }

    public required string What { get; init; }

    public required string Who { get; init; }

    public required string IfYouWait { get; init; }

    public required string About { get; init; }

    public required string DecidedTick { get; init; }

    public required string OrderWater { get; init; }

    public required string CutWater { get; init; }

    public required string CallSoak { get; init; }

    public required string PutInSoak { get; init; }

    public required string DrainSeed { get; init; }

    public required string ListFlight { get; init; }

    public required string DumpSeed { get; init; }

    public required string Decision { get; init; }

    public required string MoreDecisions { get; init; }

    public required string Wind { get; init; }

    public required string WindWhen { get; init; }

    public required string WindSteady { get; init; }

    public required string WindGust { get; init; }

    public required string WindFrom { get; init; }

    public required string WindBasis { get; init; }

    public required string WindSeen { get; init; }

    public required string WindForecast { get; init; }

    public required string WindOver { get; init; }

    public required string WindWithin { get; init; }

    public required string WindLimits { get; init; }

    public required string WindAgainst { get; init; }

    public required string WindNone { get; init; }

    public required string WindCaution { get; init; }

    public required string Board { get; init; }

    public required string BoardKey { get; init; }

    public required string BoardCan { get; init; }

    public required string BlockGround { get; init; }

    public required string BlockWater { get; init; }

    public required string BlockSeed { get; init; }

    public required string BlockPlane { get; init; }

    public required string BlockWind { get; init; }

    public required string Seed { get; init; }

    public required string SeedNone { get; init; }

    public required string Batch { get; init; }

    public required string DryWeight { get; init; }

    public required string Age { get; init; }

    public required string AgeDue { get; init; }

    public required string AgeSoaking { get; init; }

    public required string AgeDrained { get; init; }

    public required string UseBy { get; init; }

    public required string For { get; init; }

    public required string LostSeed { get; init; }

    public required string Calls { get; init; }

    public required string CallsNone { get; init; }

    public required string Say { get; init; }

    public required string Told { get; init; }

    public required string Heard { get; init; }

    public required string Agreed { get; init; }

    public required string NotReached { get; init; }

    public required string Conflicts { get; init; }

    public required string Remedy { get; init; }

    public required string Assumed { get; init; }

    public required string Derived { get; init; }
}
