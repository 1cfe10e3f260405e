namespace Watersown.Weather;

/// <summary>The two yardsticks of the American standard.</summary>
public enum ReferenceSurface
{
    /// <summary>Short, like clipped grass of 12 cm.</summary>
    Short,

    /// <summary>Tall, like full-cover alfalfa of 50 cm.</summary>
    Tall,
}

/// <summary>Standardized reference evapotranspiration of the American Society of Civil Engineers, by day and by hour.</summary>
public static class StandardizedEvapotranspiration
{
    private const double DailyStefanBoltzmann = 4.901e-9; // MJ K⁻⁴ m⁻² day⁻¹

    private const double HourlyStefanBoltzmann = 2.042e-10; // MJ K⁻⁴ m⁻² h⁻¹

    private const double LowSun = 0.3; // radians above the horizon

    /// <summary>Solar radiation over clear-sky radiation is held in between.</summary>
    private const double ClearnessLeast = 0.3;

    /// <summary>The day's evapotranspiration. The soil heat of a day counts as nothing.</summary>
    [Source(nameof(Sources.AsceEwri2005), "eqs 1, 18, 19; Cn 900 or 1600, Cd 0.34 or 0.38")]
    public static DepthRate OfDay(EvapotranspirationDay day, ReferenceSurface surface)
    {
        var mean = (day.High.Celsius + day.Low.Celsius) / 2;
        var deficit = (Humidity.MeanSaturation(day.High, day.Low) - day.Vapor).Kilopascals;
        var wind = ReferenceEvapotranspiration.WindAtTwoMeters(day.Wind, day.WindHeight).MetersPerSecond;
        var (cn, cd) = surface == ReferenceSurface.Short ? (900, 0.34) : (1600, 0.38);
        return DepthRate.FromMillimetersPerDay(Standard(mean, NetRadiation(day), wind, deficit, Gamma(day.Elevation), cn, cd));
    }

    /// <summary>What the surface keeps of a day's radiation.</summary>
    [Source(nameof(Sources.AsceEwri2005), "eqs 15 to 18, albedo 0.23")]
    [return: PlainNumber("MJ per m² and day")]
    public static double NetRadiation(EvapotranspirationDay day)
    {
        // Its solar constant of 4.92 MJ an hour is that of FAO by the minute.
        var clear = SunEnergy.ClearSky(SunEnergy.Extraterrestrial(day.DayOfYear, day.Latitude), day.Elevation);
        var cloud = Cloud(clear > 0 ? day.Solar / clear : 1);
        var fourth = (Math.Pow(day.High.Celsius + SunEnergy.FaoKelvin, 4) + Math.Pow(day.Low.Celsius + SunEnergy.FaoKelvin, 4)) / 2;
        return SunEnergy.NetShortwave(day.Solar) - (DailyStefanBoltzmann * cloud * (0.34 - (0.14 * Math.Sqrt(day.Vapor.Kilopascals))) * fourth);
    }

    /// <summary>What the surface keeps of an hour's radiation. While the sun is low, how clear the sky is comes from the last hour in which it was not.</summary>
    [Source(nameof(Sources.AsceEwri2005), "hourly net radiation, albedo 0.23; cloud factor 1.35 Rs/Rso − 0.35 with 0.3 ≤ Rs/Rso ≤ 1, kept as it was while the sun stands below 0.3 rad")]
    [return: PlainNumber("MJ per m² and hour")]
    public static double NetRadiation(EvapotranspirationHour hour)
    {
        var clear = SunEnergy.ClearSky(HourlyEvapotranspiration.Extraterrestrial(hour), hour.Elevation);
        var clearness = clear > 0 && HourlyEvapotranspiration.SunHeight(hour) >= LowSun ? hour.Solar / clear : hour.NightClearness;
        var given = HourlyStefanBoltzmann * Cloud(clearness) * (0.34 - (0.14 * Math.Sqrt(hour.Vapor.Kilopascals))) * Math.Pow(hour.Air.Celsius + SunEnergy.FaoKelvin, 4);
        return SunEnergy.NetShortwave(hour.Solar) - given;
    }

    /// <summary>An hour's evapotranspiration from its net radiation; dew shows below zero.</summary>
    /// <param name="surface">Short or tall.</param>
    /// <param name="air">Mean of the hour.</param>
    /// <param name="vapor">In the air.</param>
    /// <param name="windAtTwoMeters">Mean of the hour.</param>
    /// <param name="elevation">Of the place.</param>
    /// <param name="netRadiation">MJ per m² and hour.</param>
    [Source(nameof(Sources.AsceEwri2005), "eq. 1; Cn 37 or 66, Cd 0.24 or 0.25 by day, 0.96 or 1.7 by night; G 0.1 or 0.04 Rn by day, 0.5 or 0.2 Rn by night")]
    public static DepthRate OfHour(ReferenceSurface surface, Temperature air, Pressure vapor, Speed windAtTwoMeters, Length elevation, [PlainNumber("MJ per m² and hour")] double netRadiation)
    {
        var day = netRadiation > 0;
        var (cn, cd, soil) = surface == ReferenceSurface.Short ? (37, day ? 0.24 : 0.96, day ? 0.1 : 0.5) : (66, day ? 0.25 : 1.7, day ? 0.04 : 0.2);
        var deficit = (Humidity.Saturation(air) - vapor).Kilopascals;
        return DepthRate.FromMillimetersPerDay(24 * Standard(air.Celsius, netRadiation * (1 - soil), windAtTwoMeters.MetersPerSecond, deficit, Gamma(elevation), cn, cd));
    }

    private static double Cloud(double clearness) => (1.35 * Math.Clamp(clearness, ClearnessLeast, 1)) - 0.35;

    private static double Gamma(Length elevation) => ReferenceEvapotranspiration.Psychrometric(ReferenceEvapotranspiration.AirPressure(elevation));

    // ASCE-EWRI eq. 1. t °C; r = Rn − G, MJ m⁻²; u m/s at 2 m; v = es − ea, kPa; g kPa/°C; slope as the standard writes it.
    private static double Standard(double t, double r, double u, double v, double g, double cn, double cd)
    {
        var slope = 2503 * Math.Exp(17.27 * t / (t + 237.3)) / Math.Pow(t + 237.3, 2);
        return ((0.408 * slope * r) + (g * cn / (t + 273) * u * v)) / (slope + (g * (1 + (cd * u))));
    }
}
