namespace Watersown.Weather;

/// <summary>
/// What can stand in where a station does not measure everything. A day made from such figures should be used as part of a sum
/// over several days, not by itself.
/// </summary>
public static class MissingWeather
{
    /// <summary>Wind to assume where nobody measured it.</summary>
    [Source(nameof(Sources.Fao56), "ch. 3, 2 m/s as the mean of many stations")]
    public static Speed UsualWind { get; } = Speed.FromMetersPerSecond(2);

    /// <summary>Evapotranspiration by high and low alone. Low in strong wind (over 3 m/s), high in humid air.</summary>
    [Source(nameof(Sources.Fao56), "eq. 52, Hargreaves: 0.0023 (Tmean + 17.8) √(Tmax − Tmin) Ra")]
    public static DepthRate Hargreaves([PlainNumber("day of the year")] int dayOfYear, [PlainNumber("degrees of latitude")] double latitude, Temperature high, Temperature low)
    {
        var mean = (high.Celsius + low.Celsius) / 2;
        return DepthRate.FromMillimetersPerDay(0.0023 * (mean + 17.8) * Math.Sqrt(Range(high, low)) * 0.408 * SunEnergy.Extraterrestrial(dayOfYear, latitude));
    }

    /// <summary>The sun's energy at the ground by the spread of the day's temperature, at most that of a clear sky.</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="latitude">Degrees, north positive.</param>
    /// <param name="elevation">Of the place.</param>
    /// <param name="high">Of the day.</param>
    /// <param name="low">Of the day.</param>
    /// <param name="coastal">By the sea, where the spread is small; else inland.</param>
    [Source(nameof(Sources.Fao56), "eq. 50, kRs 0.16 inland, 0.19 by the sea")]
    [return: PlainNumber("MJ per m² and day")]
    public static double Solar([PlainNumber("day of the year")] int dayOfYear, [PlainNumber("degrees of latitude")] double latitude, Length elevation, Temperature high, Temperature low, Shore coastal = Shore.Inland)
    {
        var above = SunEnergy.Extraterrestrial(dayOfYear, latitude);
        return Math.Min((coastal == Shore.Coast ? 0.19 : 0.16) * Math.Sqrt(Range(high, low)) * above, SunEnergy.ClearSky(above, elevation));
    }

    /// <summary>Vapor by the night's low, which comes near the dew point where the ground is wet; drier by 2 to 3 °C in dry country.</summary>
    [Source(nameof(Sources.Fao56), "eq. 48, and ch. 3 for dry country")]
    public static Pressure VaporByLow(Temperature low, [PlainNumber("°C that the dew point lies under the low")] double drier = 0) =>
        Humidity.FromDewPoint(Temperature.FromCelsius(low.Celsius - drier));

    /// <summary>Vapor by a wet and a dry thermometer.</summary>
    /// <param name="dry">Dry bulb.</param>
    /// <param name="wet">Wet bulb.</param>
    /// <param name="air">Pressure of the air.</param>
    /// <param name="coefficient">0.000662 in a draft of 5 m/s, 0.000800 in 1 m/s, 0.001200 indoors; per °C.</param>
    [Source(nameof(Sources.Fao56), "eqs 15 and 16: e0(wet) − a P (dry − wet)")]
    public static Pressure VaporByWetBulb(Temperature dry, Temperature wet, Pressure air, [PlainNumber("per °C")] double coefficient = 0.000662) =>
        Humidity.Saturation(wet) - (air * (coefficient * (dry.Celsius - wet.Celsius)));

    /// <summary>Vapor by the mean of the day's relative humidity: the last choice.</summary>
    [Source(nameof(Sources.Fao56), "eq. 19")]
    public static Pressure VaporByMean(Temperature high, Temperature low, Fraction mean) => Humidity.MeanSaturation(high, low) * mean.Share;

    private static double Range(Temperature high, Temperature low) => Math.Max(0, high.Celsius - low.Celsius);
}

/// <summary>Where a place lies.</summary>
public enum Shore
{
    Inland,
    Coast,
}
