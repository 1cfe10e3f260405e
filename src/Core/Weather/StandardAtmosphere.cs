namespace Watersown.Weather;

/// <summary>The standard atmosphere from sea level to 11 km, on geopotential height. It is a yardstick, not weather.</summary>
public static class StandardAtmosphere
{
    // After US Standard Atmosphere, 1976: T0 K, p0 Pa, lapse L K/m, g0 m/s², R of dry air J/(kg K).
    private const double SeaLevelKelvin = 288.15;
    private const double LapsePerMeter = 0.0065;
    private const double StandardGravity = 9.80665;
    private const double PressureExponent = StandardGravity / (LapsePerMeter * DryAirConstant);

    /// <summary>J/(kg K).</summary>
    internal const double DryAirConstant = 287.053;

    [Source(nameof(Sources.StandardAtmosphere1976))]
    public static Pressure SeaLevel { get; } = Pressure.FromHectopascals(1013.25);

    [Source(nameof(Sources.StandardAtmosphere1976), "288.15 K − 6.5 K/km")]
    public static Temperature TemperatureAt(Length height) => Temperature.FromKelvin(SeaLevelKelvin - (LapsePerMeter * height.Meters));

    [Source(nameof(Sources.StandardAtmosphere1976), "p0 (T / T0)^5.25588")]
    public static Pressure PressureAt(Length height) => SeaLevel * Math.Pow(Ratio(height), PressureExponent);

    [Source(nameof(Sources.StandardAtmosphere1976), "(T / T0)^4.25588")]
    [return: PlainNumber("density over density at sea level")]
    public static double DensityRatioAt(Length height) => Math.Pow(Ratio(height), PressureExponent - 1);

    /// <summary>Height at which this pressure is standard.</summary>
    [Source(nameof(Sources.StandardAtmosphere1976), "p0 (T / T0)^5.25588, turned around")]
    public static Length HeightOf(Pressure pressure) => HeightOf(Math.Pow(pressure / SeaLevel, 1 / PressureExponent));

    /// <summary>Height at which this density is standard.</summary>
    [Source(nameof(Sources.StandardAtmosphere1976), "(T / T0)^4.25588, turned around")]
    public static Length HeightOfDensity([PlainNumber("density over density at sea level")] double ratio) => HeightOf(Math.Pow(ratio, 1 / (PressureExponent - 1)));

    private static Length HeightOf(double temperatureRatio) => Length.FromMeters(SeaLevelKelvin / LapsePerMeter * (1 - temperatureRatio));

    private static double Ratio(Length height) => 1 - (LapsePerMeter * height.Meters / SeaLevelKelvin);
}
