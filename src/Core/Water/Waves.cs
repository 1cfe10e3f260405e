namespace Watersown.Water;

/// <summary>Waves at the downwind levee of a check.</summary>
/// <param name="Height">Significant height, crest to trough.</param>
/// <param name="Period">Of the peak of their energy.</param>
/// <param name="Length">Crest to crest.</param>
/// <param name="AtBed">Greatest speed of the water to and fro over the soil.</param>
public sealed record WaterWaves(Length Height, TimeSpan Period, Length Length, Speed AtBed);

/// <summary>
/// Waves that a steady wind raises over shallow water with levees round it. The laws were fitted to water a meter deep and more and
/// to kilometers of fetch; in inches of flood they are stretched far beyond that: good to rank checks, not to measure them.
/// </summary>
public static class Waves
{
    private const double Gravity = 9.81; // m/s²

    // A breath in which no wave is a millimeter high, m/s.
    private const double Breath = 0.1;

    // Beyond this depth, in wave numbers, hardly a billionth of the motion reaches the soil.
    private const double OutOfReach = 30;

    /// <summary>Waves break before they grow higher than this share of the depth.</summary>
    [Source(nameof(Sources.CoastalEngineeringManual), "part II-2: 0.6, of 0.5 to 0.78 in the literature")]
    [PlainNumber("height over depth")]
    public static double MostHeight => 0.6;

    /// <summary>The waves of a check.</summary>
    /// <param name="wind">Steady wind, ten meters up; not below zero.</param>
    /// <param name="fetch">Water from levee to levee along the wind; above zero.</param>
    /// <param name="depth">Mean depth; above zero.</param>
    [Source(nameof(Sources.YoungVerhagen1996), "eqs 25 to 27, height held to 0.6 of the depth")]
    [Source(nameof(Sources.Soulsby1997), "eq. 54 and the dispersion of linear waves")]
    public static WaterWaves Of(Speed wind, Length fetch, WaterDepth depth)
    {
        Require(wind, fetch, depth);
        double u = wind.MetersPerSecond, d = depth.Meters;
        if (u < Breath) return new WaterWaves(Length.Zero, TimeSpan.Zero, Length.Zero, Speed.Zero);
        var (deep, far) = (Gravity * d / (u * u), Gravity * fetch.Meters / (u * u));
        var height = Math.Min(MostHeight * d, 4 * Math.Sqrt(Energy(deep, far)) * u * u / Gravity);
        var period = u / (Gravity * Frequency(deep, far));
        return Moving(Length.FromMeters(height), TimeSpan.FromSeconds(period), depth);
    }

    /// <summary>Their height by another law: how far the two lie apart says how little is known at such depths.</summary>
    /// <param name="wind">Steady wind, ten meters up; not below zero.</param>
    /// <param name="fetch">Water from levee to levee along the wind; above zero.</param>
    /// <param name="depth">Mean depth; above zero.</param>
    [Source(nameof(Sources.ShoreProtectionManual), "eq. 3-39, UA = 0.71 U^1.23")]
    public static Length HeightByShoreManual(Speed wind, Length fetch, WaterDepth depth)
    {
        Require(wind, fetch, depth);
        if (wind.MetersPerSecond < Breath) return Length.Zero;
        var ua = 0.71 * Math.Pow(wind.MetersPerSecond, 1.23);
        var a = Math.Tanh(0.530 * Math.Pow(Gravity * depth.Meters / (ua * ua), 0.75));
        return Length.FromMeters(a <= 0 ? 0 : ua * ua / Gravity * 0.283 * a * Math.Tanh(0.00565 * Math.Sqrt(Gravity * fetch.Meters / (ua * ua)) / a));
    }

    /// <summary>Length and motion of waves whose height and period are known.</summary>
    /// <param name="height">Crest to trough.</param>
    /// <param name="period">Above zero.</param>
    /// <param name="depth">Above zero.</param>
    [Source(nameof(Sources.Soulsby1997), "eq. 54: π H / (T sinh k d), with (2π / T)² = g k tanh k d")]
    public static WaterWaves Moving(Length height, TimeSpan period, WaterDepth depth)
    {
        double t = period.TotalSeconds, d = depth.Meters;
        var kd = WaveNumber(4 * Math.PI * Math.PI * d / (Gravity * t * t));
        var atBed = kd > OutOfReach ? 0 : Math.PI * height.Meters / (t * Math.Sinh(kd));
        return new WaterWaves(height, period, Length.FromMeters(2 * Math.PI * d / kd), Speed.FromMetersPerSecond(atBed));
    }

    // Young and Verhagen's e = g² E / U⁴ by d' = g d / U² and c = g F / U².
    private static double Energy(double d, double c)
    {
        var a = Math.Tanh(0.493 * Math.Pow(d, 0.75));
        return a <= 0 ? 0 : 3.64e-3 * Math.Pow(a * Math.Tanh(3.13e-3 * Math.Pow(c, 0.57) / a), 1.74);
    }

    // The same authors' v = fp U / g.
    private static double Frequency(double d, double c)
    {
        var a = Math.Tanh(0.331 * Math.Pow(d, 1.01));
        return 0.133 * Math.Pow(a * Math.Tanh(5.215e-4 * Math.Pow(c, 0.73) / a), -0.37);
    }

    // x with x tanh x = y: both sides rise, so halving finds it between y (deep) and 1 + √y + y (shallow).
    private static double WaveNumber(double y)
    {
        double low = 0, high = 1 + y + Math.Sqrt(y);
        for (var i = 0; i < 100; i++)
        {
            var middle = (low + high) / 2;
            if (middle * Math.Tanh(middle) < y) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    private static void Require(Speed wind, Length fetch, WaterDepth depth)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(wind.MetersPerSecond, nameof(wind));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(fetch.Meters, 0, nameof(fetch));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(depth.Meters, 0, nameof(depth));
    }
}
