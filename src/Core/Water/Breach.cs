namespace Watersown.Water;

/// <summary>A gap in a levee.</summary>
/// <param name="Width">How wide; above zero.</param>
/// <param name="Head">Water in the check above, over the floor of the gap; above zero.</param>
public sealed record BreachGap(Length Width, WaterDepth Head);

/// <summary>How fast a check runs out through a gap. A rough range: the gap scours wider, and water standing below it slows it.</summary>
/// <param name="Flow">At the first rate.</param>
/// <param name="HalfAtFirstRate">Until half of the water is gone if it went on at the first rate.</param>
/// <param name="HalfFalling">Until half of it is gone with the head falling as it runs out, the gap as wide as it is.</param>
public sealed record BreachTime(FlowRate Flow, TimeSpan HalfAtFirstRate, TimeSpan HalfFalling);

/// <summary>Water through a gap in a levee.</summary>
public static class Breach
{
    // Broad crest, in feet and cubic feet per second; the coefficient carries the units.
    private const double Coefficient = 3.0;

    /// <summary>How wide a gap is, where nobody measured it.</summary>
    [Source(nameof(Sources.FarmDefault), "6 ft")]
    public static Length UsualWidth { get; } = Length.FromFeet(6);

    /// <summary>How deep the check above stands, where nobody read it.</summary>
    [Source(nameof(Sources.FarmDefault), "3 in")]
    public static WaterDepth UsualHead { get; } = WaterDepth.FromInches(3);

    /// <summary>Flow and time to half of a check that nothing else fills or empties.</summary>
    /// <param name="gap">The gap.</param>
    /// <param name="check">Land of the check above; above zero.</param>
    [Source(nameof(Sources.CommonPractice), "Q = 3 L h^1.5 over the floor of the gap, in feet and cfs; half gone in (2 A / 3 L) (√2 − 1) / √h with the head falling")]
    public static BreachTime Of(BreachGap gap, Area check)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(gap.Width.Meters, 0, nameof(gap));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(gap.Head.Meters, 0, nameof(gap));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(check.SquareMeters, 0, nameof(check));
        double l = gap.Width.Feet, h = gap.Head.Feet, a = check.SquareMeters / (0.3048 * 0.3048);
        var q = Coefficient * l * Math.Pow(h, 1.5);
        // dh/dt = −3 L h^1.5 / A, from h to h / 2.
        var falling = 2 * a / (Coefficient * l) * (Math.Sqrt(2) - 1) / Math.Sqrt(h);
        return new BreachTime(FlowRate.FromCubicFeetPerSecond(q), TimeSpan.FromSeconds(a * h / 2 / q), TimeSpan.FromSeconds(falling));
    }

    /// <summary>The lines behind it.</summary>
    public static Working Working(BreachGap gap, Area check, BreachTime time) => Watersown.Working.Empty
        .Given("L", "width of the gap", gap.Width.Feet, "ft", "told, else 6 ft")
        .Given("h", "water over its floor", gap.Head.Feet, "ft", "stick, else 3 in")
        .Given("A", "check above", check.Acres, "ac", "field")
        .Step("Q", "runs out at first", time.Flow.CubicFeetPerSecond, "cfs", "3 L h^1.5", Sources.CommonPractice)
        .Step("t1", "half gone if it went on so", time.HalfAtFirstRate.TotalHours, "h", "A h / 2 ÷ Q", Sources.Arithmetic)
        .Step("t2", "half gone with the head falling", time.HalfFalling.TotalHours, "h", "(2 A / 3 L) (√2 − 1) / √h", Sources.CommonPractice);
}
