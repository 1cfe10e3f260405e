namespace Watersown.Wording;

/// <summary>Words of the page that lays a field out in passes.</summary>
public sealed partial record PassWords
{
    public required string Title { get; init; }

    public required string Open { get; init; }

    public required string Lead { get; init; }

    public required string NoPlace { get; init; }

    public required string NothingLeft { get; init; }

    public required string CellSaid { get; init; }

    public required string Heading { get; init; }

    public required string HeadingBoth { get; init; }

    public required string Passes { get; init; }

    public required string SpacingOf { get; init; }

    public required string Flight { get; init; }

    public required string Loads { get; init; }

    public required string Ferry { get; init; }

    public required string Job { get; init; }

    public required string Unsown { get; init; }

    public required string UnsownRound { get; init; }

    public required string Bound { get; init; }

    public required string BoundLoose { get; init; }

    public required string RunCosts { get; init; }

    public required string RunIsQuickest { get; init; }

    public required string WiresAlong { get; init; }

    public required string NoClimb { get; init; }

    public required string Ways { get; init; }

    public required string Way { get; init; }

    public required string Change { get; init; }

    public required string AsWished { get; init; }

    public required string AsQuickest { get; init; }

    public required string Tried { get; init; }

    public required string Quickest { get; init; }

    public required string Square { get; init; }

    public required string WiderSwath { get; init; }

    public required string LargerLoad { get; init; }

    public required string Racetrack { get; init; }

    public required string RacetrackNote { get; init; }

    public required string Try { get; init; }

    public required string TryKey { get; init; }

    public required string LoadsSave { get; init; }

    public required string LeastFerry { get; init; }

    public required string PartPasses { get; init; }

    public required string PartNote { get; init; }

    public required string ForFerry { get; init; }

    public required string Tested { get; init; }

    public required string NotTested { get; init; }

    public required string Figures { get; init; }

    public required string FiguresLead { get; init; }

    public required string AsTold { get; init; }

    public required string Swath { get; init; }

    public required string Speed { get; init; }

    public required string Turn { get; init; }

    public required string TurnKey { get; init; }

    public required string Load { get; init; }

    public required string StripOff { get; init; }

    public required string Wind { get; init; }

    public required string WindNone { get; init; }

    public required string WindSpeed { get; init; }

    public required string MostAcross { get; init; }

    public required string WindTooMuch { get; init; }

    public required string Aim { get; init; }

    public required string AimThrow { get; init; }

    public required string AimNote { get; init; }

    public required string Cautions { get; init; }

    public required ImmutableArray<string> CautionLines { get; init; }
}
