namespace Watersown.Flight;

/// <summary>What a hopper holds. A planning figure: aeroplane, strip, heat and pilot decide the load.</summary>
public static class Hopper
{
    /// <summary>Soaked seed that fits in by volume.</summary>
    /// <param name="hopper">Volume of the hopper; above zero.</param>
    /// <param name="fill">Share of it that is filled.</param>
    /// <param name="weight">A weighed piece of the soaked seed: what <paramref name="measure"/> of it weighs.</param>
    /// <param name="measure">Volume of the weighed piece; above zero.</param>
    [Source(nameof(Sources.Arithmetic), "volume × fill × bulk density")]
    public static SoakedSeed ByVolume(Volume hopper, Fraction fill, SoakedSeed weight, Volume measure)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(measure.CubicMeters, 0, nameof(measure));
        return weight * (fill.Share * (hopper / measure));
    }
}
