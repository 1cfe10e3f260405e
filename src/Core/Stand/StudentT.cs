namespace Watersown.Stand;

/// <summary>
/// Student's t: how far a mean of a few counts may lie from the truth. Worked out, not looked up, so that any degrees of
/// freedom will do, whole or not. Quantiles agree with printed tables to all their figures, and are good to about nine
/// figures from 1 to a million degrees of freedom.
/// </summary>
public static class StudentT
{
    private const int MostSteps = 300;

    /// <summary>Chance that t is at most <paramref name="t"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Degrees of freedom not above zero.</exception>
    [Source(nameof(Sources.AbramowitzStegun1964), "26.7.1, by the incomplete beta function 26.5")]
    [return: PlainNumber("a probability")]
    public static double Below([PlainNumber("a ratio of a distance to its standard error")] double t, [PlainNumber("degrees of freedom, may be broken")] double freedom)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(freedom, 0);
        var tail = IncompleteBeta.Ratio(freedom / 2, 0.5, freedom / (freedom + (t * t))) / 2;
        return t > 0 ? 1 - tail : tail;
    }

    /// <summary>The t that is not passed with a chance of <paramref name="probability"/>: one-tailed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A probability not between 0 and 1, or degrees of freedom not above zero.</exception>
    [Source(nameof(Sources.AbramowitzStegun1964), "26.7.1 turned round by bisection")]
    [return: PlainNumber("a ratio of a distance to its standard error")]
    public static double Quantile([PlainNumber("a probability")] double probability, [PlainNumber("degrees of freedom, may be broken")] double freedom)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(probability, 0);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(probability, 1);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(freedom, 0);
        if (probability < 0.5) return -Quantile(1 - probability, freedom);
        if (probability == 0.5) return 0;
        double low = 0, high = 1;
        for (var i = 0; i < MostSteps && Below(high, freedom) < probability; i++) (low, high) = (high, high * 2);
        for (var i = 0; i < MostSteps && high - low > 1e-15 * high; i++)
        {
            var middle = (low + high) / 2;
            if (Below(middle, freedom) < probability) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }
}
