namespace Watersown.Flight;

/// <summary>Which propeller an aeroplane has; a fixed one loses more in thin air.</summary>
public enum Propeller
{
    ConstantSpeed,
    Fixed,
}

/// <summary>
/// A rule of thumb for thin air, for planning how many loads a hot day may take. The manual, the strip and the pilot decide; the rule was
/// made for light piston aeroplanes.
/// </summary>
public static class HotDay
{
    private const double Knee = 8000;

    /// <summary>Take-off distance over that at sea level on a standard day.</summary>
    [Source(nameof(Sources.MountainFlyingRules), "each 1,000 ft of density altitude: 10 % to 8,000 ft and 15 % above, fixed propeller 12 % and 20 %")]
    [return: PlainNumber("distance over distance")]
    public static double DistanceFactor(Length densityAltitude, Propeller propeller)
    {
        var (below, above) = propeller == Propeller.Fixed ? (0.12, 0.20) : (0.10, 0.15);
        var feet = Math.Max(0, densityAltitude.Feet);
        return 1 + (((below * Math.Min(feet, Knee)) + (above * Math.Max(0, feet - Knee))) / 1000);
    }

    /// <summary>Weight that needs no more distance than another weight needed at sea level: distance goes with the square of the weight.</summary>
    [Source(nameof(Sources.MountainFlyingRules), "distance with weight squared")]
    public static Mass SameDistance(Mass weight, [PlainNumber("distance over distance")] double factor)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(factor, 0);
        return weight * (1 / Math.Sqrt(factor));
    }
}
