namespace Watersown.Weather;

/// <summary>Water vapor in the air, as its own pressure.</summary>
public static class Humidity
{
    /// <summary>Pressure of vapor over water at a temperature, as much as air can hold. Good to 0.1 % from 0 to 50 °C.</summary>
    [Source(nameof(Sources.Fao56), "eq. 11")]
    public static Pressure Saturation(Temperature air) => Pressure.FromKilopascals(Held(air.Celsius));

    /// <summary>The day's mean of it: never that at the mean temperature, which is too low.</summary>
    [Source(nameof(Sources.Fao56), "eq. 12")]
    public static Pressure MeanSaturation(Temperature high, Temperature low) => (Saturation(high) + Saturation(low)) / 2;

    /// <summary>Vapor in the air by its dew point.</summary>
    [Source(nameof(Sources.Fao56), "eq. 14")]
    public static Pressure FromDewPoint(Temperature dewPoint) => Saturation(dewPoint);

    /// <summary>Vapor in the air by the day's highest and lowest relative humidity, which come with the low and the high.</summary>
    [Source(nameof(Sources.Fao56), "eq. 17")]
    public static Pressure FromRelative(Temperature high, Temperature low, Fraction highest, Fraction lowest) =>
        ((Saturation(low) * highest.Share) + (Saturation(high) * lowest.Share)) / 2;

    /// <summary>Rise of saturation with temperature, kPa per °C.</summary>
    [Source(nameof(Sources.Fao56), "eq. 13")]
    [return: PlainNumber("kPa per °C")]
    public static double Slope(Temperature air) => 4098 * Held(air.Celsius) / Math.Pow(air.Celsius + 237.3, 2);

    // FAO-56 eq. 11. T °C; e0 kPa: e0 = 0.6108 exp(17.27 T / (T + 237.3)).
    private static double Held(double t) => 0.6108 * Math.Exp(17.27 * t / (t + 237.3));
}
