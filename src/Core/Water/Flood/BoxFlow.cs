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
    private const double Coefficient = Weir.FrancisCoefficient * 0.5520869496736904;
    private const double Contraction = 2 * Weir.FrancisEndContraction;
    private const double Still = 0.001;
    private readonly double width;
    private readonly double contraction;

    /// <summary>A box.</summary>
    /// <param name="width">Of the opening, m, above zero.</param>
    /// <param name="kind">Straight crests only.</param>
    public BoxFlow(double width, WeirKind kind)
    {
        if (kind == WeirKind.VNotch90) throw new ArgumentOutOfRangeException(nameof(kind), kind, "A box has a straight crest.");
        this.width = kind == WeirKind.Cipolletti ? width * (Weir.CipollettiCoefficient / Weir.FrancisCoefficient) : width;
        contraction = kind == WeirKind.Contracted ? Contraction : 0;
    }

    /// <summary>Flow from above to below, m³/s; below zero where it runs back.</summary>
    /// <param name="above">Water over the crest above, m; none at or below zero.</param>
    /// <param name="below">Water over the crest below, m.</param>
    public double At(double above, double below)
    {
        if (above <= 0 && below <= 0) return 0;
        if (below > above) return -At(below, above);
        var free = Free(above);
        if (below <= 0) return free;
        var apart = above - below;
        var still = Math.Min(Still, above);
        return apart >= still ? free * Drowned(below / above) : free * Drowned((above - still) / above) * (apart / still);
    }

    // The ends draw in by a tenth of the head each; from three widths of head on (never on a farm) no further.
    private double Free(double head) => Coefficient * (width - (contraction * Math.Min(head, 3 * width))) * head * Math.Sqrt(head);

    private static double Drowned(double ratio) => Math.Pow(1 - (ratio * Math.Sqrt(ratio)), Weir.VillemontePower);
}
