namespace Watersown.Stand;

/// <summary>How many rings are enough.</summary>
public static class SampleSize
{
    /// <summary>
    /// Rings needed for the mean to be known to a share of itself, before rounding up: n = (t s / (E m))². Holds as far
    /// as the pilot rings show the field's true spread; patchy stands need more than this says.
    /// </summary>
    /// <param name="mean">Mean of the pilot counts; above zero.</param>
    /// <param name="deviation">Their standard deviation, in the same counts.</param>
    /// <param name="precision">How near the mean is wanted, as a share of it; above zero.</param>
    /// <param name="t">Student's t: one-tailed or two-tailed is the caller's choice.</param>
    [Source(nameof(Sources.MissouriSampleSize), "n = (t CV / E)^2")]
    [Source(nameof(Sources.MississippiAdequacy), "n = t^2 s^2 / (0.1 m)^2")]
    [Source(nameof(Sources.ColoradoAdequacy), "one-tailed t at 90 %")]
    [return: PlainNumber("rings, in parts")]
    public static double Exact(
        [PlainNumber("plants in a ring")] double mean,
        [PlainNumber("plants in a ring")] double deviation,
        Fraction precision,
        [PlainNumber("a ratio of a distance to its standard error")] double t)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(mean, 0);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(precision.Share, 0, nameof(precision));
        var root = t * deviation / (precision.Share * mean);
        return root * root;
    }

    /// <summary>The same as whole rings: the next whole number, and never below two, the fewest that show any spread.</summary>
    [Source(nameof(Sources.MississippiAdequacy), "rounded up")]
    public static long Whole([PlainNumber("rings, in parts")] double exact) =>
        // Floating-point dust on a whole number must not cost a ring.
        Math.Max(2, (long)Math.Ceiling(exact - 1e-9));
}
