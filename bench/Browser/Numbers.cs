using System.Globalization;

namespace Watersown.Bench;

/// <summary>How measurements are told.</summary>
internal static class Numbers
{
    /// <summary>Median and worst of several runs, in whole milliseconds.</summary>
    public static string Milliseconds(IReadOnlyCollection<double> runs)
    {
        var sorted = runs.Order().ToList();
        return string.Create(CultureInfo.InvariantCulture, $"{sorted[sorted.Count / 2]:0} ms (worst of {sorted.Count}: {sorted[^1]:0})");
    }

    public static string Megabytes(long bytes) => string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e6:0.00} MB");
}
