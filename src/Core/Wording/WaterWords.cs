namespace Watersown.Wording;

/// <summary>Words of the water sheet.</summary>
public sealed partial record WaterWords
{
    public required string Kind { get; init; }

    public required string Lead { get; init; }

    public required string Irrigator { get; init; }

    public required string NoSpill { get; init; }

    public required string NoSpillNone { get; init; }

    public required string Source { get; init; }

    public required string SourceUnknown { get; init; }

    public required string SourceDown { get; init; }

    public required string Nothing { get; init; }

    public required string Do { get; init; }

    public required string Open { get; init; }

    public required string Fill { get; init; }

    public required string HoldForSeed { get; init; }

    public required string HoldSown { get; init; }

    public required string Checks { get; init; }

    public required string OfChecks { get; init; }

    public required string Told { get; init; }

    public required string Depth { get; init; }

    public required string Aim { get; init; }

    public required string AsItStands { get; init; }

    public required string Flow { get; init; }

    public required string FullAbout { get; init; }

    public required string Write { get; init; }

    public required string FullNow { get; init; }

    public required string Notes { get; init; }

    public required string Inlet { get; init; }

    public required string Between { get; init; }

    public required string DrainBox { get; init; }

    public required string PublicDrain { get; init; }

    public required string OwnReturn { get; init; }

    public required string Recirculation { get; init; }

    public required string DrainsTo { get; init; }

    public required string Boards { get; init; }

    public required string LeaksLoud { get; init; }

    public required string Orders { get; init; }

    public required string OrdersNone { get; init; }

    public required string SendBy { get; init; }

    public required string From { get; init; }

    public required string Change { get; init; }

    public required string At { get; init; }

    public required string OrderNo { get; init; }

    public required string Asked { get; init; }

    public required string Agreed { get; init; }

    public required string TellBack { get; init; }

    public required string TellBackMetric { get; init; }

    public required string Alone { get; init; }

    public required string TargetNote { get; init; }

    public required string NoSource { get; init; }

    public required string NoSpillShort { get; init; }

    public required string FromTo { get; init; }

    public required string FullBy { get; init; }

    public required string NextCheck { get; init; }

    public required string RunningNow { get; init; }

    public required string Down { get; init; }
}
