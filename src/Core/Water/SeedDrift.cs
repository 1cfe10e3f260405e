namespace Watersown.Water;

/// <summary>How near the water's motion over the soil comes to what moves loose seed.</summary>
public enum DriftBand
{
    /// <summary>Well below.</summary>
    Calm,

    /// <summary>Near it.</summary>
    Watch,

    /// <summary>Above it.</summary>
    Likely,

    /// <summary>Far above it.</summary>
    Severe,
}

/// <summary>
/// Whether waves move seed that has not rooted: speed of the water over the soil against the speed that just moves a grain of its size
/// and weight. The law was measured on sand and lignite; seed and bands are assumptions of this program. It ranks, it does not measure.
/// </summary>
public static class SeedDrift
{
    private const double Gravity = 9.81; // m/s²

    /// <summary>Sphere of the same volume as a soaked seed.</summary>
    [Source(nameof(Sources.FarmDefault), "3.5 mm")]
    public static Length Grain { get; } = Length.FromMeters(0.0035);

    /// <summary>Weight of a soaked seed over that of as much water. Weigh a hundred in air and under water to set your own.</summary>
    [Source(nameof(Sources.FarmDefault), "1.15, of 1.05 to 1.20")]
    [PlainNumber("weight over that of as much water")]
    public static double Heaviness => 1.15;

    /// <summary>Speed of the water over the soil that just moves a grain lying on it.</summary>
    /// <param name="grain">Its size; half a millimeter or more.</param>
    /// <param name="heaviness">Its weight over that of as much water; above 1.</param>
    /// <param name="period">Of the waves; above zero.</param>
    [Source(nameof(Sources.KomarMiller1974), "[1.09 g (s − 1)]^(4/7) d^(3/7) T^(1/7), as in Soulsby 1997, eq. 73b")]
    public static Speed Threshold(Length grain, [PlainNumber("weight over that of as much water")] double heaviness, TimeSpan period)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(grain.Meters, 0.0005, nameof(grain));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(heaviness, 1, nameof(heaviness));
        return Speed.FromMetersPerSecond(
            Math.Pow(1.09 * Gravity * (heaviness - 1), 4.0 / 7) * Math.Pow(grain.Meters, 3.0 / 7) * Math.Pow(period.TotalSeconds, 1.0 / 7));
    }

    /// <summary>Speed over the soil for that which moves the usual seed; nothing where there are no waves.</summary>
    [Source(nameof(Sources.FarmDefault), "M = Uw / Ucr of the usual seed")]
    [return: PlainNumber("speed over the speed that moves seed")]
    public static double Pull(WaterWaves waves) => waves.Period <= TimeSpan.Zero ? 0 : waves.AtBed / Threshold(Grain, Heaviness, waves.Period);

    /// <summary>A word for it.</summary>
    [Source(nameof(Sources.FarmDefault), "watch from 0.7, likely from 1.0, severe from 1.3")]
    public static DriftBand BandOf([PlainNumber("speed over the speed that moves seed")] double pull) => pull switch
    {
        < 0.7 => DriftBand.Calm,
        < 1.0 => DriftBand.Watch,
        < 1.3 => DriftBand.Likely,
        _ => DriftBand.Severe,
    };
}
