using Watersown.Weather;

namespace Watersown.Water;

/// <summary>How warm a shallow flood is, and how much it gives to the air, as the mean of a day.</summary>
/// <param name="Water">Mean of the day; good to about 2 °C.</param>
/// <param name="Evaporation">From the open water.</param>
public sealed record PondWarmth(Temperature Water, DepthRate Evaporation);

/// <summary>
/// Warmth of a shallow, open, well mixed flood by its heat balance. A closing canopy shades it: water is then a little cooler than
/// this in midsummer.
/// </summary>
public static class PondTemperature
{
    private const double LatentHeat = 2.45; // MJ kg⁻¹
    private const double WaterHeat = 4.186e6; // J m⁻³ K⁻¹

    /// <summary>
    /// Share of Penman's wind function that fits both the water use measured over a bare flood (1.10 times the reference) and its
    /// warmth (2.6 °C over the air) in the Sacramento Valley.
    /// </summary>
    [Source(nameof(Sources.FarmDefault), "fitted to Montazar et al. 2017 and Sharifi et al. 2018")]
    [PlainNumber("share of Penman's wind function")]
    public static double WindShare => 0.7;

    /// <summary>Warmth of a flood in balance with a day's weather.</summary>
    /// <param name="day">The day; its soil heat is not used.</param>
    /// <param name="windShare">Share of the wind function.</param>
    [Source(nameof(Sources.HeatBalance), "0.94 Rs + 0.97 LWd − 0.97 σ Tw⁴ = c fu [(e0(Tw) − ea) + γ (Tw − Ta)], fu = 6.43 (1 + 0.536 u2)")]
    public static PondWarmth OfDay(EvapotranspirationDay day, [PlainNumber("share of Penman's wind function")] double? windShare = null)
    {
        var air = (day.High.Celsius + day.Low.Celsius) / 2;
        var fourth = (Math.Pow(day.High.Celsius + SunEnergy.FaoKelvin, 4) + Math.Pow(day.Low.Celsius + SunEnergy.FaoKelvin, 4)) / 2;
        var clear = SunEnergy.ClearSky(SunEnergy.Extraterrestrial(day.DayOfYear, day.Latitude), day.Elevation);
        var sky = (SunEnergy.StefanBoltzmann * fourth) - SunEnergy.NetLongwave(day.High, day.Low, day.Vapor, clear > 0 ? day.Solar / clear : 1);
        var wind = ReferenceEvapotranspiration.WindAtTwoMeters(day.Wind, day.WindHeight).MetersPerSecond;
        var fu = (windShare ?? WindShare) * 6.43 * (1 + (0.536 * wind));
        var gamma = ReferenceEvapotranspiration.Psychrometric(ReferenceEvapotranspiration.AirPressure(day.Elevation));
        double Given(double water) => fu * (Humidity.Saturation(Temperature.FromCelsius(water)) - day.Vapor).Kilopascals;
        double Over(double water) => (0.94 * day.Solar) + (0.97 * sky) - (0.97 * SunEnergy.StefanBoltzmann * Math.Pow(water + SunEnergy.FaoKelvin, 4)) - Given(water) - (fu * gamma * (water - air));
        // The balance falls with the water's warmth, so halving finds it.
        var (low, high) = (air - 40, air + 60);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (Over(middle) > 0) low = middle;
            else high = middle;
        }

        return new PondWarmth(Temperature.FromCelsius(low), DepthRate.FromMillimetersPerDay(Given(low) / LatentHeat));
    }

    /// <summary>Temperature that still water would come to under steady weather, and how hard it is pulled there.</summary>
    /// <param name="dewPoint">Of the air.</param>
    /// <param name="absorbed">Sun taken up, W per m².</param>
    /// <param name="wind">Over the water.</param>
    [Source(nameof(Sources.Edinger1974), "Te = Td + Hs / K; K = 4.5 + 0.05 Tw + b f + 0.47 f; f = 9.2 + 0.46 U²; b = 0.35 + 0.015 Tm + 0.0012 Tm²")]
    [return: PlainNumber("W per m² and °C, beside the temperature")]
    public static (Temperature Water, double WattsPerDegree) Equilibrium(Temperature dewPoint, [PlainNumber("W per m²")] double absorbed, Speed wind)
    {
        var f = 9.2 + (0.46 * wind.MetersPerSecond * wind.MetersPerSecond);
        var (water, pull) = (dewPoint.Celsius, 25.0);
        for (var i = 0; i < 100; i++)
        {
            var mean = (water + dewPoint.Celsius) / 2;
            pull = 4.5 + (0.05 * water) + ((0.35 + (0.015 * mean) + (0.0012 * mean * mean)) * f) + (0.47 * f);
            water = dewPoint.Celsius + (absorbed / pull);
        }

        return (Temperature.FromCelsius(water), pull);
    }

    /// <summary>Time in which the flood comes most of the way (63 %) to its balance.</summary>
    [Source(nameof(Sources.HeatBalance), "τ = ρ c h / K")]
    public static TimeSpan Response(WaterDepth depth, [PlainNumber("W per m² and °C")] double wattsPerDegree) => TimeSpan.FromSeconds(WaterHeat * depth.Meters / wattsPerDegree);

    /// <summary>Share of the air's daily swing that the water follows: the deeper, the steadier.</summary>
    [Source(nameof(Sources.HeatBalance), "1 / √(1 + (ω τ)²), ω = 2π / day")]
    [return: PlainNumber("swing of the water over that of the balance")]
    public static double DailySwing(TimeSpan response) => 1 / Math.Sqrt(1 + Math.Pow(2 * Math.PI * response.TotalDays, 2));
}
