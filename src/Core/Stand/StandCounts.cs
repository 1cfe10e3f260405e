namespace Watersown.Stand;

/// <summary>Rings counted in one part of a field that stands alike: the upwind side, the middle, the lee.</summary>
/// <param name="Name">The farm's name for the part.</param>
/// <param name="Land">How much land it is; above zero.</param>
/// <param name="Counts">Plants in each ring; at least one ring.</param>
public sealed record StandZone(string Name, Area Land, [property: PlainNumber("plants in each ring")] ImmutableArray<double> Counts);

/// <summary>A stand as far as the rings tell it.</summary>
/// <param name="Mean">The middle of it.</param>
/// <param name="Low">The truth lies above this and below <paramref name="High"/> 95 times in 100; none where the rings cannot say.</param>
/// <param name="High">See <paramref name="Low"/>.</param>
public sealed record StandEstimate(PlantDensity Mean, PlantDensity? Low, PlantDensity? High)
{
    /// <summary>Degrees of freedom behind the range; broken numbers are usual for a whole field.</summary>
    [PlainNumber("degrees of freedom")]
    public double? Freedom { get; init; }

    /// <summary>Standard error of the mean.</summary>
    public PlantDensity? StandardError { get; init; }
}

/// <summary>The stand of a field: the whole, weighted by the land of its zones, and each zone by itself.</summary>
public sealed record StandReport(StandEstimate Whole, ImmutableArray<StandEstimate> Zones);

/// <summary>Turns ring counts into a stand with its uncertainty.</summary>
public static class StandCounts
{
    /// <summary>The stated chance that the truth lies in the range.</summary>
    [PlainNumber("a probability")]
    public const double Confidence = 0.95;

    /// <summary>
    /// The stand of a field from rings counted zone by zone. The mean is weighted by the land of each zone, never by
    /// the number of rings. Degrees of freedom for the whole field are Satterthwaite's, because zones seldom vary alike:
    /// at least the smallest zone's, at most all of them together. A zone with one ring has no range, and then neither
    /// has the whole field. The lower end is not let below zero.
    /// </summary>
    /// <param name="zones">At least one.</param>
    /// <param name="ring">Land inside the ring; above zero.</param>
    [Source(nameof(Sources.Cochran1977), "stratified mean and its variance, sections 5.3 to 5.6")]
    [Source(nameof(Sources.Satterthwaite1946), "degrees of freedom")]
    [Source(nameof(Sources.MissouriSampleSize), "mean ± t s / √n")]
    public static StandReport Assess(ImmutableArray<StandZone> zones, Area ring)
    {
        ArgumentOutOfRangeException.ThrowIfZero(zones.Length, nameof(zones));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(ring.SquareMeters, 0, nameof(ring));
        var land = zones.Sum(z => z.Land.SquareMeters);
        double mean = 0, variance = 0, squares = 0;
        var known = true;
        foreach (var zone in zones)
        {
            var rings = RingStatistics.Of(zone.Counts);
            var weight = zone.Land.SquareMeters / land;
            mean += weight * rings.Mean;
            known &= rings.Variance is not null;
            var share = weight * weight * (rings.Variance ?? 0) / rings.Count;
            variance += share;
            if (rings.Count > 1) squares += share * share / (rings.Count - 1);
        }

        // Without spread the ratio is empty, and with hardly any it is rounding: it is kept between what it can be.
        double all = zones.Sum(z => z.Counts.Length - 1);
        var freedom = squares > 0 ? Math.Clamp(variance * variance / squares, Math.Min(1, all), all) : all;
        return new StandReport(
            known ? Range(mean, Math.Sqrt(variance), freedom, ring) : new StandEstimate(Density(mean, ring), Low: null, High: null),
            [.. zones.Select(z => OfZone(z, ring))]);
    }

    private static StandEstimate OfZone(StandZone zone, Area ring)
    {
        var rings = RingStatistics.Of(zone.Counts);
        return rings.Variance is { } variance
            ? Range(rings.Mean, Math.Sqrt(variance / rings.Count), rings.Count - 1, ring)
            : new StandEstimate(Density(rings.Mean, ring), Low: null, High: null);
    }

    private static StandEstimate Range(double mean, double error, double freedom, Area ring)
    {
        var half = StudentT.Quantile((1 + Confidence) / 2, freedom) * error;
        return new StandEstimate(Density(mean, ring), Density(Math.Max(0, mean - half), ring), Density(mean + half, ring))
        {
            Freedom = freedom,
            StandardError = Density(error, ring),
        };
    }

    private static PlantDensity Density(double count, Area ring) => PlantDensity.FromPerSquareMeter(count / ring.SquareMeters);
}
