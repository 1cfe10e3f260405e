namespace Watersown.Stand;

/// <summary>Mean and spread of counts, in counts.</summary>
/// <param name="Count">How many rings.</param>
/// <param name="Mean">Their mean.</param>
/// <param name="Variance">Sum of squared differences over one less than the rings; none for one ring.</param>
internal sealed record RingStatistics(int Count, double Mean, double? Variance)
{
    public static RingStatistics Of(ImmutableArray<double> counts)
    {
        var mean = counts.Sum() / counts.Length;
        return new RingStatistics(counts.Length, mean, counts.Length > 1 ? counts.Sum(c => (c - mean) * (c - mean)) / (counts.Length - 1) : null);
    }
}
