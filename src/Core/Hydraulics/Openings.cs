namespace Watersown.Hydraulics;

/// <summary>
/// Water through or over what is no weir: an opening that stands under water on both sides, and the flat top of earth or of a
/// wide board.
/// </summary>
public static class Openings
{
    // Feet and cubic feet per second, as published.
    private const double Gravity = 32.174;
    private const double OrificeCoefficient = 0.61;

    /// <summary>A flat top passes this share of the ideal at the least; all of it at the most.</summary>
    [Source(nameof(Sources.Bos1989), "discharge coefficient about 0.85 to 1.0")]
    public static Fraction FlatTopLeast { get; } = Fraction.FromShare(0.85);

    /// <summary>Flow through a gate or a box that stands under water on both sides.</summary>
    /// <param name="opening">The opening.</param>
    /// <param name="difference">Water above over water below, not below zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The water below stands higher: it runs back.</exception>
    [Source(nameof(Sources.WaterMeasurementManual), "ch. 9, eq. 9-1: Q = 0.61 A √(2 g Δh)")]
    public static FlowRate Submerged(Area opening, WaterDepth difference)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(difference.Meters, nameof(difference));
        return FlowRate.FromCubicFeetPerSecond(OrificeCoefficient * opening.SquareFeet * Math.Sqrt(2 * Gravity * difference.Feet));
    }

    /// <summary>Flow over a flat top, as an ideal one passes it: the most that runs.</summary>
    /// <param name="head">Water above the top, upstream where it is still level.</param>
    /// <param name="length">Along the top.</param>
    /// <exception cref="ArgumentOutOfRangeException">The head or the length is below zero.</exception>
    [Source(nameof(Sources.Bos1989), "Q = (2/3) √(2 g / 3) L H^1.5")]
    public static FlowRate FlatTop(WaterDepth head, Length length)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(head.Meters, nameof(head));
        ArgumentOutOfRangeException.ThrowIfNegative(length.Meters, nameof(length));
        return FlowRate.FromCubicFeetPerSecond(2.0 / 3 * Math.Sqrt(2 * Gravity / 3) * length.Feet * Math.Pow(head.Feet, 1.5));
    }
}
