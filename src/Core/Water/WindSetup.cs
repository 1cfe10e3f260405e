namespace Watersown.Water;

/// <summary>How wind leans a shallow check: its water piles up at the downwind levee.</summary>
/// <param name="Upwind">Depth at the upwind end; zero where it is bare.</param>
/// <param name="Downwind">Depth at the downwind levee.</param>
/// <param name="Bare">Length of bare soil from the upwind levee.</param>
public sealed record LeaningWater(WaterDepth Upwind, WaterDepth Downwind, Length Bare)
{
    /// <summary>Difference from end to end.</summary>
    public WaterDepth Tilt => Downwind - Upwind;
}

/// <summary>
/// Steady lean of a closed, level check under wind. Fitted for deeper and longer water than a check: good to rank and to warn,
/// not to measure. Waves are left out.
/// </summary>
public static class WindSetup
{
    private const double AirDensity = 1.2; // kg/m³
    private const double WaterDensity = 998.2; // kg/m³
    private const double Gravity = 9.81; // m/s²

    /// <summary>The lean of a check.</summary>
    /// <param name="wind">Steady wind, ten meters up; not below zero.</param>
    /// <param name="fetch">Water from levee to levee along the wind; above zero.</param>
    /// <param name="depth">Mean depth at rest; above zero.</param>
    [Source(nameof(Sources.CoastalEngineeringManual), "part II-2: stress ρa CD U², CD = 0.001 (1.1 + 0.035 U); steady balance dh/dx = τ / (ρ g h) with the water conserved")]
    public static LeaningWater Of(Speed wind, Length fetch, WaterDepth depth)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(wind.MetersPerSecond, nameof(wind));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(fetch.Meters, 0, nameof(fetch));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(depth.Meters, 0, nameof(depth));
        double u = wind.MetersPerSecond, f = fetch.Meters, h = depth.Meters;
        var m = AirDensity * 0.001 * (1.1 + (0.035 * u)) * u * u / (WaterDensity * Gravity);
        // A breath of wind leans the water evenly about its middle; the full form would lose its digits there.
        if (2 * m * f < 1e-6 * h * h) return new LeaningWater(WaterDepth.FromMeters(h - (m * f / (2 * h))), WaterDepth.FromMeters(h + (m * f / (2 * h))), Length.Zero);
        if (h < 2.0 / 3 * Math.Sqrt(2 * m * f))
        {
            // The water that is left stands as √(2 m x) over a shorter stretch: (2/3) √(2m) x^1.5 = h F.
            var wet = Math.Pow(3 * h * f / (2 * Math.Sqrt(2 * m)), 2.0 / 3);
            return new LeaningWater(WaterDepth.Zero, WaterDepth.FromMeters(Math.Sqrt(2 * m * wet)), Length.FromMeters(f - wet));
        }

        var up = UpwindDepth(m, f, h);
        return new LeaningWater(WaterDepth.FromMeters(up), WaterDepth.FromMeters(Math.Sqrt((up * up) + (2 * m * f))), Length.Zero);
    }

    // h0 with ((h0² + 2 m F)^1.5 − h0³) / (3 m F) = h, which only rises with h0.
    private static double UpwindDepth(double m, double f, double h)
    {
        double low = 0, high = h;
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            var mean = (Math.Pow((middle * middle) + (2 * m * f), 1.5) - Math.Pow(middle, 3)) / (3 * m * f);
            if (mean > h) high = middle;
            else low = middle;
        }

        return (low + high) / 2;
    }
}
