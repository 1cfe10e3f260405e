namespace Watersown.Hydraulics;

/// <summary>The shape of the opening that water runs through over boards or a plate.</summary>
public enum WeirKind
{
    /// <summary>A straight crest narrower than the channel, so that the stream draws in at both ends.</summary>
    Contracted,

    /// <summary>A straight crest as wide as the box, so that it does not.</summary>
    Suppressed,

    /// <summary>A straight crest with sides leaning out 1 in 4.</summary>
    Cipolletti,

    /// <summary>A right-angled notch.</summary>
    VNotch90,
}

/// <summary>
/// How much water runs over boards or through a notch. Head is measured above the crest, at least four heads upstream, where
/// the surface is still level. Good to about 5 % on real boxes with whole, level boards and the water below well under them.
/// </summary>
public static class Weir
{
    // Feet and cubic feet per second, as published; the coefficients carry units and hold in these only.
    internal const double FrancisCoefficient = 3.33;
    internal const double FrancisEndContraction = 0.1;
    internal const double CipollettiCoefficient = 3.367;
    internal const double VillemontePower = 0.385;
    private const double NotchCoefficient = 0.578;
    private const double NotchHeadCorrection = 0.0029;
    private const double Gravity = 9.80665 / 0.3048;

    /// <summary>Below this the stream clings to the boards.</summary>
    [Source(nameof(Sources.WaterMeasurementManual), "ch. 7, head of 0.2 ft or more")]
    public static WaterDepth LeastHead { get; } = WaterDepth.FromFeet(0.2);

    /// <summary>The head up to which the notch was measured.</summary>
    [Source(nameof(Sources.WaterMeasurementManual), "ch. 7, 90-degree notch up to 1.25 ft")]
    public static WaterDepth MostNotchHead { get; } = WaterDepth.FromFeet(1.25);

    /// <summary>Head over crest width up to which contracted and Cipolletti weirs were measured.</summary>
    [Source(nameof(Sources.WaterMeasurementManual), "ch. 7, head at most a third of the crest")]
    [PlainNumber("head over crest width")]
    public static double MostHeadOverWidth => 1.0 / 3;

    /// <summary>Flow with the water below under the crest.</summary>
    /// <param name="kind">Shape of the opening.</param>
    /// <param name="head">Water above the crest, not below it.</param>
    /// <param name="crest">Width of the crest; a notch has none.</param>
    /// <exception cref="ArgumentOutOfRangeException">The head is below zero, the crest is not above zero, or the ends would draw in until nothing is left.</exception>
    [Source(nameof(Sources.WaterMeasurementManual), "ch. 7, eqs 7-3, 7-4, 7-7; Francis 1883, Kindsvater and Shen")]
    public static FlowRate FreeFlow(WeirKind kind, WaterDepth head, Length crest)
    {
        double h = head.Feet, l = crest.Feet;
        ArgumentOutOfRangeException.ThrowIfNegative(h, nameof(head));
        if (kind != WeirKind.VNotch90) ArgumentOutOfRangeException.ThrowIfNegativeOrZero(l, nameof(crest));
        return FlowRate.FromCubicFeetPerSecond(kind switch
        {
            WeirKind.Contracted => Contracted(h, l),
            WeirKind.Suppressed => FrancisCoefficient * l * Math.Pow(h, 1.5),
            WeirKind.Cipolletti => CipollettiCoefficient * l * Math.Pow(h, 1.5),
            WeirKind.VNotch90 => Notch(h),
            _ => throw new System.Diagnostics.UnreachableException(),
        });
    }

    /// <summary>What is left of the free flow where the water below stands above the crest.</summary>
    /// <param name="kind">Shape of the opening.</param>
    /// <param name="head">Water above the crest upstream.</param>
    /// <param name="downstream">Water above the crest downstream; zero or less drowns nothing.</param>
    /// <exception cref="ArgumentOutOfRangeException">The water below stands as high as the water above: nothing runs, or it runs back.</exception>
    [Source(nameof(Sources.Villemonte1947), "Q/Q1 = (1 − (H2/H1)^n)^0.385; n 1.5 straight crest, 2.5 notch")]
    [return: PlainNumber("drowned flow over free flow")]
    public static double Drowning(WeirKind kind, WaterDepth head, WaterDepth downstream)
    {
        if (downstream.Meters <= 0) return 1;
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(downstream.Meters, head.Meters, nameof(downstream));
        return Math.Pow(1 - Math.Pow(downstream / head, Exponent(kind)), VillemontePower);
    }

    /// <summary>The power of the head in the free flow.</summary>
    [Source(nameof(Sources.Villemonte1947), "n is the power of the head in the free flow")]
    [return: PlainNumber("exponent")]
    public static double Exponent(WeirKind kind) => kind == WeirKind.VNotch90 ? 2.5 : 1.5;

    // Francis 1883. H head, ft; L crest, ft; Q ft³/s: Q = 3.33 (L − 0.2 H) H^1.5. Each of two ends takes 0.1 H.
    private static double Contracted(double h, double l)
    {
        var drawnIn = l - (2 * FrancisEndContraction * h);
        if (drawnIn <= 0) throw new ArgumentOutOfRangeException(nameof(l), l, "The crest must be wider than a fifth of the head.");
        return FrancisCoefficient * drawnIn * Math.Pow(h, 1.5);
    }

    // Kindsvater and Shen, 90 degrees. H head, ft; k head correction, ft; Q ft³/s: Q = (8/15) √(2g) Ce (H + k)^2.5.
    // Preferred to the short form 2.49 H^2.48, which agrees with it within 0.7 % from 0.2 to 1.25 ft.
    private static double Notch(double h) => h == 0 ? 0 : 8.0 / 15 * Math.Sqrt(2 * Gravity) * NotchCoefficient * Math.Pow(h + NotchHeadCorrection, 2.5);
}
