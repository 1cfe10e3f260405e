namespace Watersown.Wording;

/// <summary>Words of the page of the ditches: how water is led, what a joint and what comes back are worth.</summary>
public sealed partial record DitchWords
{
    public required string Title { get; init; }

    public required string Open { get; init; }

    public required string Lead { get; init; }

    public required string Picture { get; init; }

    public required string PictureSaid { get; init; }

    public required string GivesOf { get; init; }

    public required string HoldsLeft { get; init; }

    public required string HoldsShort { get; init; }

    public required string Down { get; init; }

    public required string Takes { get; init; }

    public required string KeyDitch { get; init; }

    public required string KeyJoint { get; init; }

    public required string KeyReturn { get; init; }

    public required string KeyDrains { get; init; }

    public required string KeyCap { get; init; }

    public required string Turnout { get; init; }

    public required string Pump { get; init; }

    public required string Well { get; init; }

    public required string Tailwater { get; init; }

    public required string JoinedDitch { get; init; }

    public required string Led { get; init; }

    public required string SourceLine { get; init; }

    public required string CapLine { get; init; }

    public required string JointLine { get; init; }

    public required string ReturnLine { get; init; }

    public required string WaitsLine { get; init; }

    public required string ComesNow { get; init; }

    public required string ComesFrom { get; init; }

    public required string ComesNever { get; init; }

    public required string Compared { get; init; }

    public required string ComparedLead { get; init; }

    public required string Alone { get; init; }

    public required string Together { get; init; }

    public required string UnderCap { get; init; }

    public required string WithReturn { get; init; }

    public required string ReturnFrom { get; init; }

    public required string Change { get; init; }

    public required string ChangeJoint { get; init; }

    public required string First { get; init; }

    public required string Second { get; init; }

    public required string JoinButton { get; init; }

    public required string PartButton { get; init; }

    public required string ChangeCap { get; init; }

    public required string CapName { get; init; }

    public required string CapSources { get; init; }

    public required string CapFlow { get; init; }

    public required string CapFlowKey { get; init; }

    public required string CapOver { get; init; }

    public required string ChangeWaits { get; init; }

    public required string WaitsFields { get; init; }

    public required string WaitsAcres { get; init; }

    public required string WaitsAcresKey { get; init; }

    public required string WaitsNone { get; init; }

    public required string MarkJoined { get; init; }

    public required string MarkParted { get; init; }

    public required string MarkCap { get; init; }

    public required string MarkCapOver { get; init; }

    public required string MarkWaits { get; init; }

    public required string MarkWaitsNone { get; init; }

    public required string TurnsMean { get; init; }
}
