namespace Watersown.Wording;

/// <summary>Words of the page of one source: when what it fills is full, the next gates, orders, raising.</summary>
public sealed partial record SourceScreenWords
{
    public required string Title { get; init; }

    public required string Gives { get; init; }

    public required string NothingFills { get; init; }

    public required string AllFull { get; init; }

    public required string FullAt { get; init; }

    public required string Never { get; init; }

    public required string NeverShort { get; init; }

    public required string NeverStops { get; init; }

    public required string Tried { get; init; }

    public required string AsItRuns { get; init; }

    public required string OtherFlow { get; init; }

    public required string OtherFlowKey { get; init; }

    public required string With { get; init; }

    public required string Finish { get; init; }

    public required string FinishLead { get; init; }

    public required string ToCome { get; init; }

    public required string NextWet { get; init; }

    public required string HeadFull { get; init; }

    public required string HeadThen { get; init; }

    public required string IsFull { get; init; }

    public required string NotFull { get; init; }

    public required string Gates { get; init; }

    public required string GatesLead { get; init; }

    public required string GatesAsk { get; init; }

    public required string GatesNone { get; init; }

    public required string SideBySide { get; init; }

    public required string SowFrom { get; init; }

    public required string SeedLost { get; init; }

    public required string Orders { get; init; }

    public required string OrdersNone { get; init; }

    public required string Over { get; init; }

    public required string Missing { get; init; }

    public required string CapBroken { get; init; }

    public required string NoSpill { get; init; }

    public required string WaysOut { get; init; }

    public required string WayOpen { get; init; }

    public required string WayOpenWork { get; init; }

    public required string InsteadOf { get; init; }

    public required string WayMove { get; init; }

    public required string WayMoveNone { get; init; }

    public required string WayCut { get; init; }

    public required string Raise { get; init; }

    public required string RaiseBy { get; init; }

    public required string RaiseDays { get; init; }

    public required string RaiseNone { get; init; }

    public required string RaiseTakes { get; init; }

    public required string RaiseInTime { get; init; }

    public required string RaiseLate { get; init; }

    public required string RaiseNever { get; init; }

    public required string RaiseOrder { get; init; }

    public required string RaiseOverCap { get; init; }

    public required string RaisePart { get; init; }

    public required string RaiseUntold { get; init; }

    public required string RaiseTarget { get; init; }

    public required string Open { get; init; }

    public required string Block { get; init; }

    public required string BlockLead { get; init; }

    public required string BlockDays { get; init; }

    public required string BlockNaive { get; init; }

    public required string BlockFlow { get; init; }

    public required string Farm { get; init; }

    public required string FarmNow { get; init; }

    public required string FarmDry { get; init; }

    public required string CurtailedOpen { get; init; }

    public required string CurtailedUntil { get; init; }

    public required string TurnsOn { get; init; }

    public required string TurnsOff { get; init; }

    public required string GivesFrom { get; init; }

    public required string Curtail { get; init; }

    public required string CurtailFrom { get; init; }

    public required string CurtailNow { get; init; }

    public required string CurtailUntil { get; init; }

    public required string CurtailOpen { get; init; }

    public required string CurtailLeft { get; init; }

    public required string CurtailLeftKey { get; init; }

    public required string CurtailOver { get; init; }

    public required string CurtailDays { get; init; }
}
