namespace Watersown;

public static partial class Sources
{
    public static Source Fao56 { get; } = new(nameof(Fao56), "Allen, Pereira, Raes and Smith, Crop Evapotranspiration, FAO Irrigation and Drainage Paper 56, FAO, Rome, 1998", SourceStanding.Read);

    public static Source Meeus1998 { get; } = new(nameof(Meeus1998), "Meeus, Astronomical Algorithms, 2nd ed., Willmann-Bell, 1998, in the low-precision form of the NOAA solar calculator", SourceStanding.FromMemory);
}
