namespace Watersown.Wording;

/// <summary>Words of a morning at the strip.</summary>
public sealed partial record StripWords
{
    public required string Title { get; init; }

    public required string Lead { get; init; }

    public required string Nothing { get; init; }

    public required string Day { get; init; }

    public required string Aeroplanes { get; init; }

    public required string Loaders { get; init; }

    public required string AeroplanesKey { get; init; }

    public required string LoadersKey { get; init; }

    public required string Alike { get; init; }

    public required string Sum { get; init; }

    public required string Hours { get; init; }

    public required string Band { get; init; }

    public required string Slot { get; init; }

    public required string SlotOver { get; init; }

    public required string LoadsHour { get; init; }

    public required string LandHour { get; init; }

    public required string Busy { get; init; }

    public required string BusyNote { get; init; }

    public required string ByHour { get; init; }

    public required string ByLand { get; init; }

    public required string NoPrice { get; init; }

    public required string Changes { get; init; }

    public required string What { get; init; }

    public required string Loads { get; init; }

    public required string Saves { get; init; }

    public required string MoreAeroplane { get; init; }

    public required string MoreLoader { get; init; }

    public required string MorePounds { get; init; }

    public required string MoreSwath { get; init; }

    public required string OverTop { get; init; }

    public required string TopUnknown { get; init; }

    public required string SwathTest { get; init; }

    public required string NoGain { get; init; }

    public required string Shared { get; init; }

    public required string SharedLine { get; init; }

    public required string SharedRule { get; init; }

    public required string SharedNone { get; init; }

    public required string Open { get; init; }

    public required string Haste { get; init; }
}
