using System.Diagnostics;

namespace Watersown.Growth;

/// <summary>
/// Warmth that counts for growth: degree-days of one day between a lower threshold and, where there is one, an upper.
/// </summary>
public static class Warmth
{
    /// <summary>
    /// Degree-days of one day by any of the six methods and three cutoffs. An estimate from two or three readings: the
    /// methods differ among themselves by up to a few degree-days on a day that crosses a threshold, so a count is only
    /// comparable with counts by the same rule.
    /// </summary>
    /// <param name="low">The morning's lowest.</param>
    /// <param name="high">The day's highest; not below <paramref name="low"/>.</param>
    /// <param name="nextLow">The next morning's lowest; for the double methods only.</param>
    /// <param name="rule">How it is counted.</param>
    /// <exception cref="ArgumentOutOfRangeException">High below low, upper threshold not above the lower, or no next morning for a double method.</exception>
    [Source(nameof(Sources.Zalom1983), "triangle and sine methods, horizontal cutoff")]
    [Source(nameof(Sources.McMasterWilhelm1997), "methods 1 and 2")]
    [Source(nameof(Sources.DayCourseGeometry), "vertical and intermediate cutoff")]
    public static DegreeDays OfDay(Temperature low, Temperature high, Temperature? nextLow, WarmthRule rule)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(high.Celsius, low.Celsius, nameof(high));
        if (rule.Upper is { } upper) ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(upper.Celsius, rule.Lower.Celsius, nameof(rule));
        var first = OfCourse(low.Celsius, high.Celsius, rule);
        if (!rule.NeedsNextMorning) return DegreeDays.FromCelsius(first);
        if (nextLow is not { } next) throw new ArgumentOutOfRangeException(nameof(nextLow), "A double method needs the next morning's lowest.");
        return DegreeDays.FromCelsius((first + OfCourse(Math.Min(next.Celsius, high.Celsius), Math.Max(next.Celsius, high.Celsius), rule)) / 2);
    }

    private static double OfCourse(double mn, double mx, WarmthRule rule)
    {
        var lower = rule.Lower.Celsius;
        var aboveLower = DayCourse.Above(rule.Method, mn, mx, lower);
        if (rule.Upper is not { } limit) return aboveLower;
        var upper = limit.Celsius;
        var aboveUpper = DayCourse.Above(rule.Method, mn, mx, upper);
        return rule.Cutoff switch
        {
            Cutoff.Horizontal => aboveLower - aboveUpper,
            Cutoff.Intermediate => Math.Max(0, aboveLower - (2 * aboveUpper)),
            Cutoff.Vertical => aboveLower - aboveUpper - ((upper - lower) * DayCourse.TimeAbove(rule.Method, mn, mx, upper)),
            _ => throw new UnreachableException(),
        };
    }
}
