namespace Watersown.Weather;

/// <summary>The weather of one day at a place, as reference evapotranspiration wants it.</summary>
public sealed record EvapotranspirationDay
{
    [PlainNumber("day of the year, 1 to 366")]
    public required int DayOfYear { get; init; }

    [PlainNumber("degrees of latitude, north positive")]
    public required double Latitude { get; init; }

    public required Length Elevation { get; init; }

    public required Temperature High { get; init; }

    public required Temperature Low { get; init; }

    /// <summary>Vapor in the air.</summary>
    public required Pressure Vapor { get; init; }

    public required Speed Wind { get; init; }

    /// <summary>Height over short grass at which the wind was measured.</summary>
    public required Length WindHeight { get; init; }

    /// <summary>The sun's energy at the ground.</summary>
    [PlainNumber("MJ per m² and day")]
    public required double Solar { get; init; }

    /// <summary>Warmth going into the ground: nothing over a day, something over a month.</summary>
    [PlainNumber("MJ per m² and day")]
    public double SoilHeat { get; init; }
}

/// <summary>Water a wide field of short green grass gives to the air, with every figure on the way to it.</summary>
/// <param name="Rate">Reference evapotranspiration.</param>
/// <param name="Wind">At two meters.</param>
/// <param name="Saturation">The day's mean.</param>
/// <param name="Slope">kPa per °C.</param>
/// <param name="Psychrometric">kPa per °C.</param>
/// <param name="Extraterrestrial">MJ per m² and day.</param>
/// <param name="ClearSky">MJ per m² and day.</param>
/// <param name="NetShortwave">MJ per m² and day.</param>
/// <param name="NetLongwave">MJ per m² and day.</param>
public sealed record ReferenceWater(
    DepthRate Rate,
    Speed Wind,
    Pressure Saturation,
    [property: PlainNumber("kPa per °C")] double Slope,
    [property: PlainNumber("kPa per °C")] double Psychrometric,
    [property: PlainNumber("MJ per m² and day")] double Extraterrestrial,
    [property: PlainNumber("MJ per m² and day")] double ClearSky,
    [property: PlainNumber("MJ per m² and day")] double NetShortwave,
    [property: PlainNumber("MJ per m² and day")] double NetLongwave)
{
    [PlainNumber("MJ per m² and day")]
    public double NetRadiation => NetShortwave - NetLongwave;
}

/// <summary>
/// Water that a wide field of short, well-watered grass gives to the air: the yardstick to which crops and open water are
/// set by a coefficient.
/// </summary>
public static class ReferenceEvapotranspiration
{
    /// <summary>The day's reference evapotranspiration by the Penman-Monteith form of FAO.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The wind was measured lower than the profile of eq. 47 reaches.</exception>
    [Source(nameof(Sources.Fao56), "eq. 6")]
    public static ReferenceWater Of(EvapotranspirationDay day)
    {
        var mean = Temperature.FromCelsius((day.High.Celsius + day.Low.Celsius) / 2);
        var above = SunEnergy.Extraterrestrial(day.DayOfYear, day.Latitude);
        var clear = SunEnergy.ClearSky(above, day.Elevation);
        var kept = SunEnergy.NetShortwave(day.Solar);
        var given = SunEnergy.NetLongwave(day.High, day.Low, day.Vapor, clear > 0 ? day.Solar / clear : 1);
        var wind = WindAtTwoMeters(day.Wind, day.WindHeight);
        var saturation = Humidity.MeanSaturation(day.High, day.Low);
        double slope = Humidity.Slope(mean), gamma = Psychrometric(AirPressure(day.Elevation));
        var millimeters = PenmanMonteith(slope, kept - given - day.SoilHeat, gamma, mean.Celsius, wind.MetersPerSecond, (saturation - day.Vapor).Kilopascals);
        return new ReferenceWater(DepthRate.FromMillimetersPerDay(millimeters), wind, saturation, slope, gamma, above, clear, kept, given);
    }

    /// <summary>Pressure of the air by elevation alone.</summary>
    [Source(nameof(Sources.Fao56), "eq. 7")]
    public static Pressure AirPressure(Length elevation) => Pressure.FromKilopascals(101.3 * Math.Pow((293 - (0.0065 * elevation.Meters)) / 293, 5.26));

    /// <summary>Psychrometric constant at an air pressure.</summary>
    [Source(nameof(Sources.Fao56), "eq. 8")]
    [return: PlainNumber("kPa per °C")]
    public static double Psychrometric(Pressure air) => 0.000665 * air.Kilopascals;

    /// <summary>Wind two meters over short grass, from wind at another height.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The height is below 0.1 m, where the profile ends.</exception>
    [Source(nameof(Sources.Fao56), "eq. 47")]
    public static Speed WindAtTwoMeters(Speed wind, Length height)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(height.Meters, 0.1, nameof(height));
        return wind * (4.87 / Math.Log((67.8 * height.Meters) - 5.42));
    }

    // FAO-56 eq. 6. D slope, g psychrometric constant, kPa/°C; r = Rn − G, MJ m⁻² day⁻¹; t mean air, °C; u wind at 2 m, m/s;
    // v = es − ea, kPa; ETo mm/day: ETo = [0.408 D r + g 900/(t + 273) u v] / [D + g (1 + 0.34 u)].
    private static double PenmanMonteith(double d, double r, double g, double t, double u, double v) =>
        ((0.408 * d * r) + (g * 900 / (t + 273) * u * v)) / (d + (g * (1 + (0.34 * u))));
}
