namespace Watersown;

public static partial class Sources
{
    public static Source Fao56 { get; } = new(nameof(Fao56), "Allen, Pereira, Raes and Smith, Crop Evapotranspiration, FAO Irrigation and Drainage Paper 56, FAO, Rome, 1998", SourceStanding.Read);

    public static Source AsceEwri2005 { get; } = new(nameof(AsceEwri2005), "ASCE-EWRI, The ASCE Standardized Reference Evapotranspiration Equation, American Society of Civil Engineers, 2005", SourceStanding.FromMemory);

    public static Source Montazar2017 { get; } = new(nameof(Montazar2017), "Montazar et al., Journal of Irrigation and Drainage Engineering 143(2), 2017", SourceStanding.Read);

    public static Source Meeus1998 { get; } = new(nameof(Meeus1998), "Meeus, Astronomical Algorithms, 2nd ed., Willmann-Bell, 1998, in the low-precision form of the NOAA solar calculator", SourceStanding.FromMemory);
}
