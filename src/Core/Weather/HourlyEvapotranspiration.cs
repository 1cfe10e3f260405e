namespace Watersown.Weather;

/// <summary>The weather of one hour at a place.</summary>
public sealed record EvapotranspirationHour
{
    [PlainNumber("day of the year, 1 to 366")]
    public required int DayOfYear { get; init; }

    /// <summary>Middle of the hour by the clock of the zone, without summer time.</summary>
    [PlainNumber("hours after midnight")]
    public required double Middle { get; init; }

    /// <summary>How long the period is.</summary>
    [PlainNumber("hours")]
    public double Hours { get; init; } = 1;

    [PlainNumber("degrees of latitude, north positive")]
    public required double Latitude { get; init; }

    [PlainNumber("degrees of longitude, east positive")]
    public required double Longitude { get; init; }

    /// <summary>Middle of the time zone: its hours from universal time × 15.</summary>
    [PlainNumber("degrees of longitude, east positive")]
    public required double ZoneLongitude { get; init; }

    public required Length Elevation { get; init; }

    public required Temperature Air { get; init; }

    public required Pressure Vapor { get; init; }

    public required Speed Wind { get; init; }

    public required Length WindHeight { get; init; }

    /// <summary>The sun's energy at the ground in the period.</summary>
    [PlainNumber("MJ per m² and hour")]
    public required double Solar { get; init; }

    /// <summary>
    /// Solar over clear-sky radiation where the sun does not tell: that of two to three hours before sunset, or 0.7 to 0.8 in dry
    /// and 0.4 to 0.6 in humid climates.
    /// </summary>
    [PlainNumber("solar over clear-sky radiation")]
    public double NightClearness { get; init; } = 0.8;
}

/// <summary>An hour's reference evapotranspiration with what leads to it.</summary>
/// <param name="Rate">Water given to the air.</param>
/// <param name="Extraterrestrial">MJ per m² and hour.</param>
/// <param name="ClearSky">MJ per m² and hour.</param>
/// <param name="NetLongwave">MJ per m² and hour.</param>
/// <param name="NetRadiation">MJ per m² and hour.</param>
/// <param name="SoilHeat">MJ per m² and hour.</param>
public sealed record ReferenceHour(
    DepthRate Rate,
    [property: PlainNumber("MJ per m² and hour")] double Extraterrestrial,
    [property: PlainNumber("MJ per m² and hour")] double ClearSky,
    [property: PlainNumber("MJ per m² and hour")] double NetLongwave,
    [property: PlainNumber("MJ per m² and hour")] double NetRadiation,
    [property: PlainNumber("MJ per m² and hour")] double SoilHeat);

/// <summary>Reference evapotranspiration of an hour or a shorter time.</summary>
public static class HourlyEvapotranspiration
{
    private const double StefanBoltzmann = 2.043e-10; // MJ K⁻⁴ m⁻² h⁻¹

    /// <summary>The hour's reference evapotranspiration by the Penman-Monteith form of FAO; never below zero.</summary>
    [Source(nameof(Sources.Fao56), "eq. 53")]
    public static ReferenceHour Of(EvapotranspirationHour hour)
    {
        var (above, angle) = (Extraterrestrial(hour), SunAngle(hour));
        var clear = SunEnergy.ClearSky(above, hour.Elevation);
        var clearness = clear > 0 && Math.Abs(angle) < SunsetAngle(hour) ? Math.Clamp(hour.Solar / clear, 0, 1) : hour.NightClearness;
        var given = StefanBoltzmann * Math.Pow(hour.Air.Celsius + SunEnergy.FaoKelvin, 4) * (0.34 - (0.14 * Math.Sqrt(hour.Vapor.Kilopascals))) * ((1.35 * clearness) - 0.35);
        var net = SunEnergy.NetShortwave(hour.Solar) - given;
        var soil = net * (hour.Solar > 0 ? 0.1 : 0.5);
        var wind = ReferenceEvapotranspiration.WindAtTwoMeters(hour.Wind, hour.WindHeight).MetersPerSecond;
        double slope = Humidity.Slope(hour.Air), gamma = ReferenceEvapotranspiration.Psychrometric(ReferenceEvapotranspiration.AirPressure(hour.Elevation));
        var millimeters = PenmanMonteith(slope, net - soil, gamma, hour.Air.Celsius, wind, (Humidity.Saturation(hour.Air) - hour.Vapor).Kilopascals);
        return new ReferenceHour(DepthRate.FromMillimetersPerDay(Math.Max(0, millimeters) * 24), above, clear, given, net, soil);
    }

    /// <summary>What reaches the top of the air in the period, for each hour of it.</summary>
    [Source(nameof(Sources.Fao56), "eq. 28")]
    [return: PlainNumber("MJ per m² and hour")]
    public static double Extraterrestrial(EvapotranspirationHour hour)
    {
        double f = Radians(hour.Latitude), d = SunEnergy.Declination(hour.DayOfYear), half = Math.PI * hour.Hours / 24, sunset = SunsetAngle(hour);
        // A period that the sun rises or sets in counts only its sunny part.
        double from = Math.Clamp(SunAngle(hour) - half, -sunset, sunset), until = Math.Clamp(SunAngle(hour) + half, -sunset, sunset);
        var turned = ((until - from) * Math.Sin(f) * Math.Sin(d)) + (Math.Cos(f) * Math.Cos(d) * (Math.Sin(until) - Math.Sin(from)));
        return 12 * 60 / Math.PI * SunEnergy.SolarConstant * SunEnergy.RelativeDistance(hour.DayOfYear) * turned / hour.Hours;
    }

    /// <summary>How far the sun stands from its noon, in the middle of the period.</summary>
    [Source(nameof(Sources.Fao56), "eqs 31 to 33")]
    [return: PlainNumber("radians")]
    public static double SunAngle(EvapotranspirationHour hour)
    {
        var b = 2 * Math.PI * (hour.DayOfYear - 81) / 364;
        var correction = (0.1645 * Math.Sin(2 * b)) - (0.1255 * Math.Cos(b)) - (0.025 * Math.Sin(b));
        var angle = Math.PI / 12 * (hour.Middle + ((hour.Longitude - hour.ZoneLongitude) / 15) + correction - 12);
        // Held between midnight and midnight.
        return angle - (2 * Math.PI * Math.Round(angle / (2 * Math.PI)));
    }

    /// <summary>How high the sun stands over the horizon in the middle of the period; below zero it is down.</summary>
    [Source(nameof(Sources.AsceEwri2005), "sin β = sin φ sin δ + cos φ cos δ cos ω")]
    [return: PlainNumber("radians")]
    public static double SunHeight(EvapotranspirationHour hour)
    {
        double f = Radians(hour.Latitude), d = SunEnergy.Declination(hour.DayOfYear);
        return Math.Asin(Math.Clamp((Math.Sin(f) * Math.Sin(d)) + (Math.Cos(f) * Math.Cos(d) * Math.Cos(SunAngle(hour))), -1, 1));
    }

    private static double SunsetAngle(EvapotranspirationHour hour) =>
        SunEnergy.SunsetHourAngle(Radians(hour.Latitude), SunEnergy.Declination(hour.DayOfYear));

    private static double Radians(double degrees) => degrees * Math.PI / 180;

    // FAO-56 eq. 53. D slope, g psychrometric constant, kPa/°C; r = Rn − G, MJ m⁻² h⁻¹; t air, °C; u wind at 2 m, m/s; v = e0 − ea, kPa;
    // ETo mm/h: ETo = [0.408 D r + g 37/(t + 273) u v] / [D + g (1 + 0.34 u)].
    private static double PenmanMonteith(double d, double r, double g, double t, double u, double v) =>
        ((0.408 * d * r) + (g * 37 / (t + 273) * u * v)) / (d + (g * (1 + (0.34 * u))));
}
