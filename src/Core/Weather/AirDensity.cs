namespace Watersown.Weather;

/// <summary>How thin the air is: hot, high and humid air lifts and pulls less.</summary>
public static class AirDensity
{
    // Vapor weighs 0.622 of dry air.
    private const double VaporLightness = 0.378;

    /// <summary>Height at which an altimeter turned to 1013.25 hPa would stand, on ground of this elevation.</summary>
    /// <param name="elevation">Of the ground.</param>
    /// <param name="setting">Altimeter setting: pressure reduced to sea level the altimeter's way.</param>
    [Source(nameof(Sources.AltimeterDefinition), "elevation + standard height of the setting")]
    public static Length PressureAltitude(Length elevation, Pressure setting) => elevation + StandardAtmosphere.HeightOf(setting);

    /// <summary>Temperature at which dry air of the same pressure would be as thin.</summary>
    [Source(nameof(Sources.HumidAir))]
    public static Temperature Virtual(Temperature air, Temperature dewPoint, Pressure station)
    {
        var vapor = Pressure.FromHectopascals(6.11 * Math.Pow(10, 7.5 * dewPoint.Celsius / (237.7 + dewPoint.Celsius)));
        return Temperature.FromKelvin(air.Kelvin / (1 - (VaporLightness * (vapor / station))));
    }

    /// <summary>Density over the standard density at sea level.</summary>
    /// <param name="station">Pressure at the place itself.</param>
    /// <param name="virtualTemperature">Of <see cref="Virtual"/>, or the air's own where it is dry.</param>
    [Source(nameof(Sources.StandardAtmosphere1976), "ρ = p / (287.053 T), over 1.225 kg/m³")]
    [return: PlainNumber("density over density at sea level")]
    public static double Ratio(Pressure station, Temperature virtualTemperature)
    {
        var seaLevel = StandardAtmosphere.SeaLevel / Pressure.FromPascals(StandardAtmosphere.DryAirConstant * StandardAtmosphere.TemperatureAt(Length.Zero).Kelvin);
        return station / Pressure.FromPascals(StandardAtmosphere.DryAirConstant * virtualTemperature.Kelvin) / seaLevel;
    }

    /// <summary>Height in the standard atmosphere at which the air is as thin as here.</summary>
    /// <param name="elevation">Of the ground.</param>
    /// <param name="setting">Altimeter setting.</param>
    /// <param name="air">Temperature of the air.</param>
    /// <param name="dewPoint">Where known; without it the air is taken as dry, which is too hopeful.</param>
    [Source(nameof(Sources.StandardAtmosphere1976), "height of the standard density")]
    public static Length DensityAltitude(Length elevation, Pressure setting, Temperature air, Temperature? dewPoint)
    {
        var station = StandardAtmosphere.PressureAt(PressureAltitude(elevation, setting));
        return StandardAtmosphere.HeightOfDensity(Ratio(station, dewPoint is { } dew ? Virtual(air, dew, station) : air));
    }
}
