namespace Watersown.Wording;

/// <summary>Words of the text messages; folded into the alphabet of a text message before they are sent.</summary>
public sealed partial record TextWords
{
    public required string SoakHead { get; init; }

    public required string SoakItem { get; init; }

    public required string SoakTail { get; init; }

    public required string DeliverHead { get; init; }

    public required string DeliverItem { get; init; }

    public required string NewSeed { get; init; }

    public required string HoldHead { get; init; }

    public required string HoldTail { get; init; }

    public required string LostHead { get; init; }

    public required string LostTail { get; init; }

    public required string ReadyHead { get; init; }

    public required string ReadyItem { get; init; }

    public required string ReadyTail { get; init; }

    public required string District { get; init; }

    public required string OpenHead { get; init; }

    public required string OpenItem { get; init; }

    public required string OpenTail { get; init; }

    public required string FillHead { get; init; }

    public required string FillItem { get; init; }

    public required string HoldAtHead { get; init; }

    public required string NoSpillHead { get; init; }

    public required string Flight { get; init; }

    public required string Stop { get; init; }

    public required string FlyOnly { get; init; }

    public required string FlyNone { get; init; }

    public required string PlantedHead { get; init; }

    public required string PlantedItem { get; init; }

    public required string WarehouseName { get; init; }

    public required string DispatcherName { get; init; }

    public required string DistrictName { get; init; }

    public required string IrrigatorName { get; init; }

    public required string PilotName { get; init; }

    public required string LandlordName { get; init; }
}
