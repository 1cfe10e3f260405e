namespace Watersown.Flight.Cover;

/// <summary>
/// What unsteady steering alone must be expected to skip. Valid where each pass is off its line by chance of its own, normally about
/// the line, and passes lie a swath apart; a lean that all passes share skips nothing.
/// </summary>
public static class SteeringNoise
{
    /// <summary>Mean width skipped where two passes meet, averaged over the length; as much is overlapped.</summary>
    /// <param name="sigma">Standard deviation of one pass about its line.</param>
    [Source(nameof(Sources.SteeringNoise), "mean of the positive part of the difference of two passes")]
    public static Length SkippedAtSeam(Length sigma)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(sigma.Meters, 0, nameof(sigma));
        return sigma / Math.Sqrt(Math.PI);
    }

    /// <summary>Share of the land skipped, and as much overlapped.</summary>
    [Source(nameof(Sources.SteeringNoise), "width at each seam / distance from pass to pass")]
    public static Fraction SkippedShare(Length sigma, Length swath)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(swath.Meters, 0, nameof(swath));
        return Fraction.FromShare(Math.Min(1, SkippedAtSeam(sigma) / swath));
    }
}
