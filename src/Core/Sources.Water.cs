namespace Watersown;

public static partial class Sources
{
    public static Source WaterBalance { get; } = new(nameof(WaterBalance), "volume balance of water: what comes in is stored or lost", SourceStanding.Derived);

    public static Source WaterMeasurementManual { get; } = new(nameof(WaterMeasurementManual), "US Bureau of Reclamation, Water Measurement Manual, 3rd ed. 1997, revised reprint 2001", SourceStanding.Read);

    public static Source Villemonte1947 { get; } = new(nameof(Villemonte1947), "Villemonte, Submerged-weir discharge studies, Engineering News-Record, 25 December 1947", SourceStanding.Read);

    public static Source Bos1989 { get; } = new(nameof(Bos1989), "Bos (ed.), Discharge Measurement Structures, ILRI Publication 20, 3rd ed. 1989", SourceStanding.FromMemory);

    public static Source HeatBalance { get; } = new(nameof(HeatBalance), "heat balance of a mixed layer of water, with the wind function of Penman 1948", SourceStanding.Derived);

    public static Source Edinger1974 { get; } = new(nameof(Edinger1974), "Brady, Graves and Geyer, 1969, in Edinger, Brady and Geyer, Heat Exchange and Transport in the Environment, 1974", SourceStanding.FromMemory);

    public static Source Grattan2002 { get; } = new(nameof(Grattan2002), "Grattan, Zeng, Shannon and Roberts, California Agriculture 56(6):189-195, 2002", SourceStanding.Read);

    public static Source Fao29 { get; } = new(nameof(Fao29), "Ayers and Westcot, Water Quality for Agriculture, FAO Irrigation and Drainage Paper 29, 1985, Table 4", SourceStanding.FromMemory);

    public static Source Rawls1983 { get; } = new(nameof(Rawls1983), "Rawls, Brakensiek and Miller, Journal of Hydraulic Engineering 109(1):62-70, 1983", SourceStanding.Read);

    public static Source Chow1988 { get; } = new(nameof(Chow1988), "Chow, Maidment and Mays, Applied Hydrology, McGraw-Hill, 1988", SourceStanding.FromMemory);

    public static Source EnergyToLift { get; } = new(nameof(EnergyToLift), "University of California Cooperative Extension, Tulare County, Energy and Cost Required to Lift or Pressurize Water, Pub. IG6-96", SourceStanding.Read);

    public static Source CoastalEngineeringManual { get; } = new(nameof(CoastalEngineeringManual), "US Army Corps of Engineers, Coastal Engineering Manual, EM 1110-2-1100, part II, 2003", SourceStanding.FromMemory);

    public static Source YoungVerhagen1996 { get; } = new(nameof(YoungVerhagen1996), "Young and Verhagen, The growth of fetch limited waves in water of finite depth, Coastal Engineering 29:47-78, 1996", SourceStanding.FromMemory);

    public static Source ShoreProtectionManual { get; } = new(nameof(ShoreProtectionManual), "US Army Corps of Engineers, Shore Protection Manual, 1984", SourceStanding.Read);

    public static Source Soulsby1997 { get; } = new(nameof(Soulsby1997), "Soulsby, Dynamics of Marine Sands, Thomas Telford, 1997", SourceStanding.Read);

    public static Source KomarMiller1974 { get; } = new(nameof(KomarMiller1974), "Komar and Miller, 1974, threshold of motion under waves, in Soulsby, Dynamics of Marine Sands, 1997", SourceStanding.Read);

    public static Source SeberWild1989 { get; } = new(nameof(SeberWild1989), "Seber and Wild, Nonlinear Regression, Wiley, 1989", SourceStanding.FromMemory);

    public static Source LangeLittleTaylor1989 { get; } = new(nameof(LangeLittleTaylor1989), "Lange, Little and Taylor, Robust statistical modeling using the t distribution, Journal of the American Statistical Association 84:881-896, 1989", SourceStanding.FromMemory);

    public static Source Sandu1997 { get; } = new(nameof(Sandu1997), "Sandu, Verwer, Blom, Spee, Carmichael and Potra, Benchmarking stiff ODE solvers for atmospheric chemistry problems II: Rosenbrock solvers, Atmospheric Environment 31:3459-3472, 1997", SourceStanding.FromMemory);
}
