namespace Watersown;

public static partial class Sources
{
    public static Source WaterBalance { get; } = new(nameof(WaterBalance), "volume balance of water: what comes in is stored or lost", SourceStanding.Derived);

    public static Source WaterMeasurementManual { get; } = new(nameof(WaterMeasurementManual), "US Bureau of Reclamation, Water Measurement Manual, 3rd ed. 1997, revised reprint 2001", SourceStanding.Read);

    public static Source Villemonte1947 { get; } = new(nameof(Villemonte1947), "Villemonte, Submerged-weir discharge studies, Engineering News-Record, 25 December 1947", SourceStanding.Read);

    public static Source EnergyToLift { get; } = new(nameof(EnergyToLift), "University of California Cooperative Extension, Tulare County, Energy and Cost Required to Lift or Pressurize Water, Pub. IG6-96", SourceStanding.Read);
}
