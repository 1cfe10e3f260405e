namespace Watersown.Wording;

/// <summary>Words of the seed sheet.</summary>
public sealed partial record SeedWords
{
    public required string Kind { get; init; }

    public required string Warehouse { get; init; }

    public required string Lead { get; init; }

    public required string HoldDrain { get; init; }

    public required string CallRule { get; init; }

    public required string Soak { get; init; }

    public required string NoSoak { get; init; }

    public required string Drain { get; init; }

    public required string NoDrain { get; init; }

    public required string Haul { get; init; }

    public required string TheStrip { get; init; }

    public required string NoHaul { get; init; }

    public required string When { get; init; }

    public required string CallBy { get; init; }

    public required string Called { get; init; }

    public required string Batch { get; init; }

    public required string BatchOpen { get; init; }

    public required string Lot { get; init; }

    public required string LotOpen { get; init; }

    public required string SeedUnknown { get; init; }

    public required string DryWeight { get; init; }

    public required string WetWeight { get; init; }

    public required string Weighed { get; init; }

    public required string ScaleSays { get; init; }

    public required string For { get; init; }

    public required string Trailers { get; init; }

    public required string TrailersNeeded { get; init; }

    public required string Planned { get; init; }

    public required string UnderWater { get; init; }

    public required string State { get; init; }

    public required string Hold { get; init; }

    public required string Leaves { get; init; }

    public required string AtStrip { get; init; }

    public required string UseBy { get; init; }

    public required string Lost { get; init; }

    public required string LostLine { get; init; }

    public required string Factor { get; init; }

    public required string OneLot { get; init; }

    public required string Disinfect { get; init; }

    public required string Bin { get; init; }

    public required string InSoakTick { get; init; }

    public required string DrainTick { get; init; }

    public required string GoneTick { get; init; }

    public required string Done { get; init; }

    public required string Beyond { get; init; }

    public required string Reading { get; init; }

    public required string ReadingHours { get; init; }

    public required string ReadBy { get; init; }
}
