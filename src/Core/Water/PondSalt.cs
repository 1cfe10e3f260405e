namespace Watersown.Water;

/// <summary>Salt in a pond as its electrical conductivity, dS/m: the air takes water and leaves the salt.</summary>
public static class PondSalt
{
    /// <summary>Season mean in field water above which rice yields less.</summary>
    [Source(nameof(Sources.Grattan2002), "1.9 dS/m")]
    [PlainNumber("dS/m")]
    public static double Threshold => 1.9;

    /// <summary>A pond that nothing is let into or out of, gone down from one depth to another.</summary>
    /// <param name="start">At the start, dS/m.</param>
    /// <param name="from">Depth at the start.</param>
    /// <param name="to">Depth now, above zero.</param>
    /// <param name="evaporation">To the air: leaves its salt.</param>
    /// <param name="percolation">Into the ground: takes its salt along.</param>
    [Source(nameof(Sources.WaterBalance), "EC0 (h0 / h)^(ET / (ET + p)), salt kept in a mixed pond")]
    [return: PlainNumber("dS/m")]
    public static double Held([PlainNumber("dS/m")] double start, WaterDepth from, WaterDepth to, DepthRate evaporation, DepthRate percolation)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(to.Meters, nameof(to));
        return start * Math.Pow(from / to, evaporation / (evaporation + percolation));
    }

    /// <summary>A pond kept level by water that makes up for what is lost.</summary>
    /// <param name="start">At the start, dS/m.</param>
    /// <param name="inflow">Of the water let in, dS/m.</param>
    /// <param name="depth">As kept.</param>
    /// <param name="evaporation">To the air.</param>
    /// <param name="percolation">Into the ground.</param>
    /// <param name="span">Since the start.</param>
    [Source(nameof(Sources.WaterBalance), "ECss + (EC0 − ECss) e^(−p t / h), ECss = ECi (ET + p) / p, salt kept in a mixed pond")]
    [return: PlainNumber("dS/m")]
    public static double KeptLevel([PlainNumber("dS/m")] double start, [PlainNumber("dS/m")] double inflow, WaterDepth depth, DepthRate evaporation, DepthRate percolation, TimeSpan span)
    {
        double p = percolation.MetersPerSecond, t = span.TotalSeconds, h = depth.Meters;
        // Where nothing percolates the salt of all that is let in stays.
        if (p <= 0) return start + (inflow * evaporation.MetersPerSecond * t / h);
        var end = SteadyState(inflow, evaporation, percolation);
        return end + ((start - end) * Math.Exp(-p * t / h));
    }

    /// <summary>What a pond kept level comes to in the end.</summary>
    [Source(nameof(Sources.WaterBalance), "ECi (ET + p) / p")]
    [return: PlainNumber("dS/m")]
    public static double SteadyState([PlainNumber("dS/m")] double inflow, DepthRate evaporation, DepthRate percolation) => inflow * ((evaporation + percolation) / percolation);

    /// <summary>Yield left, by salt over a threshold; from nothing to all.</summary>
    [Source(nameof(Sources.Fao29), "100 − 12 (EC − 3.0) %, soil salt, rice; the lower threshold of 1.9 in field water has no published slope")]
    public static Fraction YieldLeft([PlainNumber("dS/m")] double soil) => Fraction.FromPercent(Math.Clamp(100 - (12 * (soil - 3.0)), 0, 100));
}
