namespace Watersown.Weather;

/// <summary>
/// The sun's energy over a day, in MJ per square meter, as reference evapotranspiration wants it. Its day ignores the bending
/// of light and the width of the sun, so it is 10 to 15 minutes shorter than <see cref="Sun"/> tells: each in its own place.
/// </summary>
public static class SunEnergy
{
    // FAO-56 symbols: J day of the year; f latitude, d declination, ws sunset hour angle, all radians; dr relative distance.
    internal const double SolarConstant = 0.0820; // MJ m⁻² min⁻¹
    internal const double StefanBoltzmann = 4.903e-9; // MJ K⁻⁴ m⁻² day⁻¹
    internal const double FaoKelvin = 273.16;
    private const double CropAlbedo = 0.23;

    /// <summary>What reaches the top of the air.</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="latitude">Degrees, north positive.</param>
    [Source(nameof(Sources.Fao56), "eq. 21")]
    [return: PlainNumber("MJ per m² and day")]
    public static double Extraterrestrial([PlainNumber("day of the year")] int dayOfYear, [PlainNumber("degrees of latitude")] double latitude)
    {
        double f = latitude * Math.PI / 180, d = Declination(dayOfYear), ws = SunsetHourAngle(f, d);
        return 24 * 60 / Math.PI * SolarConstant * RelativeDistance(dayOfYear)
            * ((ws * Math.Sin(f) * Math.Sin(d)) + (Math.Cos(f) * Math.Cos(d) * Math.Sin(ws)));
    }

    /// <summary>Hours that the sun's middle is above a flat horizon.</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="latitude">Degrees, north positive.</param>
    [Source(nameof(Sources.Fao56), "eq. 34")]
    [return: PlainNumber("hours")]
    public static double DaylightHours([PlainNumber("day of the year")] int dayOfYear, [PlainNumber("degrees of latitude")] double latitude) =>
        24 / Math.PI * SunsetHourAngle(latitude * Math.PI / 180, Declination(dayOfYear));

    /// <summary>What reaches the ground, by the hours of bright sunshine; more sunshine than day counts as all of the day.</summary>
    [Source(nameof(Sources.Fao56), "eq. 35, a = 0.25, b = 0.50")]
    [return: PlainNumber("MJ per m² and day")]
    public static double FromSunshine([PlainNumber("hours")] double sunshine, [PlainNumber("hours")] double daylight, [PlainNumber("MJ per m² and day")] double extraterrestrial) =>
        (0.25 + (0.50 * (daylight <= 0 ? 0 : Math.Min(1, sunshine / daylight)))) * extraterrestrial;

    /// <summary>What would reach the ground from a clear sky.</summary>
    [Source(nameof(Sources.Fao56), "eq. 37")]
    [return: PlainNumber("MJ per m² and day")]
    public static double ClearSky([PlainNumber("MJ per m² and day")] double extraterrestrial, Length elevation) => (0.75 + (2e-5 * elevation.Meters)) * extraterrestrial;

    /// <summary>What a grass reference keeps of it.</summary>
    [Source(nameof(Sources.Fao56), "eq. 38, albedo 0.23")]
    [return: PlainNumber("MJ per m² and day")]
    public static double NetShortwave([PlainNumber("MJ per m² and day")] double solar) => (1 - CropAlbedo) * solar;

    /// <summary>What the ground gives back to the sky. The sky is never taken as clearer than clear, and without any sun as clear.</summary>
    /// <param name="high">The day's high.</param>
    /// <param name="low">The day's low.</param>
    /// <param name="vapor">In the air.</param>
    /// <param name="clearness">Solar over clear-sky radiation.</param>
    [Source(nameof(Sources.Fao56), "eq. 39")]
    [return: PlainNumber("MJ per m² and day")]
    public static double NetLongwave(Temperature high, Temperature low, Pressure vapor, [PlainNumber("solar over clear-sky radiation")] double clearness)
    {
        var fourth = (Math.Pow(high.Celsius + FaoKelvin, 4) + Math.Pow(low.Celsius + FaoKelvin, 4)) / 2;
        return StefanBoltzmann * fourth * (0.34 - (0.14 * Math.Sqrt(vapor.Kilopascals))) * ((1.35 * Math.Min(1, clearness)) - 0.35);
    }

    /// <summary>How far north of the equator the sun stands, in radians.</summary>
    [Source(nameof(Sources.Fao56), "eq. 24")]
    [return: PlainNumber("radians")]
    public static double Declination([PlainNumber("day of the year")] int dayOfYear) => 0.409 * Math.Sin((2 * Math.PI * dayOfYear / 365) - 1.39);

    /// <summary>Nearness of the sun, inverse and squared.</summary>
    [Source(nameof(Sources.Fao56), "eq. 23")]
    [return: PlainNumber("ratio")]
    public static double RelativeDistance([PlainNumber("day of the year")] int dayOfYear) => 1 + (0.033 * Math.Cos(2 * Math.PI * dayOfYear / 365));

    // Eq. 25, held within what an arc cosine knows: beyond, the sun does not set (π) or does not rise (0).
    internal static double SunsetHourAngle(double f, double d) => Math.Acos(Math.Clamp(-Math.Tan(f) * Math.Tan(d), -1, 1));
}
