using Watersown.Hydraulics;

namespace Watersown.Water.Flood;

/// <summary>
/// Flow over boards for two water levels, fast enough to be asked millions of times. The laws are those of <see cref="Weir"/>:
/// free flow by the crest, less what the water below holds back. Two levels that differ by less than a millimeter are joined
/// by a straight line, because the law's slope has no end there and water on a field is never that still.
/// </summary>
internal readonly struct BoxFlow
{
    // Francis's coefficient is per ft^0.5/s: times the root of a foot it is per m^0.5/s. Each of two ends draws in.
    public const double Coefficient = Weir.FrancisCoefficient * 0.5520869496736904;

    /// <summary>Levels nearer to each other than this, m, are joined by a straight line.</summary>
    public const double Still = 0.001;

    private const double BothEnds = 2 * Weir.FrancisEndContraction;

    // Water needs longer than this, s, to come to the box from all over a check.
    private const double Coming = 30;

    /// <summary>A box.</summary>
    /// <param name="width">Of the opening, m, above zero.</param>
    /// <param name="kind">Straight crests only.</param>
    /// <param name="ground">The smaller of the two checks that it joins, m²; without end where nobody asks how fast they level.</param>
    public BoxFlow(double width, WeirKind kind, double ground = double.MaxValue)
    {
        if (kind == WeirKind.VNotch90) throw new ArgumentOutOfRangeException(nameof(kind), kind, "A box has a straight crest.");
        Width = kind == WeirKind.Cipolletti ? width * (Weir.CipollettiCoefficient / Weir.FrancisCoefficient) : width;
        Contraction = kind == WeirKind.Contracted ? BothEnds : 0;
        Leveling = ground / Coming;
    }

    /// <summary>Width of a plain crest that passes as much, m.</summary>
    public double Width { get; }

    /// <summary>Share of the head by which the ends draw in, together.</summary>
    public double Contraction { get; }

    /// <summary>
    /// Most that runs for each meter by which the levels differ, m²/s: what would level the smaller check in half a minute. No box on
    /// a farm comes near it, but boards as wide as a field, which let a thin sheet over, would pass a lake in a second.
    /// </summary>
    public double Leveling { get; }

    /// <summary>Head from which the ends draw in no further, m: three widths, never on a farm.</summary>
    public double Most => 3 * Width;

    /// <summary>Flow from above to below, m³/s; below zero where it runs back.</summary>
    /// <param name="above">Water over the crest above, m; none at or below zero.</param>
    /// <param name="below">Water over the crest below, m.</param>
    public double At(double above, double below)
    {
        if (above <= 0 && below <= 0) return 0;
        if (below > above) return -At(below, above);
        var free = Free(above);
        if (below <= 0) return Math.Min(free, above * Leveling);
        var apart = above - below;
        var still = Math.Min(Still, above);
        var drowned = apart >= still ? free * Drowned(below / above) : free * Drowned((above - still) / above) * (apart / still);
        return Math.Min(drowned, apart * Leveling);
    }

    /// <summary>Head at which a crest as wide passes a flow, m, the ends not drawn in and no water below.</summary>
    public double Head(double flow) => Math.Cbrt(Math.Pow(flow / (Coefficient * Width), 2));

    /// <summary>How much more runs for each meter that the water above stands higher, and that below, m²/s.</summary>
    /// <param name="above">Water over the crest above, m.</param>
    /// <param name="below">Water over the crest below, m.</param>
    public (double Above, double Below) Slopes(double above, double below)
    {
        if (above <= 0 && below <= 0) return (0, 0);
        if (below > above)
        {
            var (high, low) = Slopes(below, above);
            return (-low, -high);
        }

        var (free, slope) = (Free(above), FreeSlope(above));
        if (below <= 0) return free < above * Leveling ? (slope, 0) : (Leveling, 0);
        var apart = above - below;
        var still = Math.Min(Still, above);
        // The lower level over the higher one, no nearer to it than still water is.
        var (ratio, share) = apart >= still ? (below / above, 1.0) : (1 - (still / above), apart / still);
        var passed = Drowned(ratio);
        if (free * passed * share >= apart * Leveling) return (Leveling, -Leveling);
        var root = Math.Sqrt(Math.Max(0, ratio));
        var fall = -1.5 * Weir.VillemontePower * root * passed / (1 - (ratio * root));
        if (apart >= still) return ((slope * passed) - (free * fall * ratio / above), free * fall / above);
        var held = still < Still ? 0 : fall * still / (above * above);
        var line = free * passed / still;
        return ((((slope * passed) + (free * held)) * share) + line - (still < Still ? free * passed * share / still : 0), -line);
    }

    private double Free(double head) => Coefficient * (Width - (Contraction * Math.Min(head, Most))) * head * Math.Sqrt(head);

    private double FreeSlope(double head) => head < Most
        ? Coefficient * ((1.5 * Width) - (2.5 * Contraction * head)) * Math.Sqrt(head)
        : 1.5 * Coefficient * (Width - (Contraction * Most)) * Math.Sqrt(head);

    private static double Drowned(double ratio) => Math.Pow(1 - (ratio * Math.Sqrt(ratio)), Weir.VillemontePower);
}
