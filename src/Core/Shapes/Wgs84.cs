namespace Watersown.Shapes;

/// <summary>The ellipsoid that all places are given on, and what follows from its two defining numbers.</summary>
[Source(nameof(Sources.Wgs84), "table 3.1")]
internal static class Wgs84
{
    /// <summary>Equatorial radius a, m.</summary>
    public const double Equatorial = 6378137;

    /// <summary>Flattening f.</summary>
    public const double Flattening = 1 / 298.257223563;

    /// <summary>Polar semi-axis b, m.</summary>
    public const double Polar = Equatorial * (1 - Flattening);

    /// <summary>Eccentricity squared, e².</summary>
    public const double E2 = Flattening * (2 - Flattening);

    /// <summary>Second eccentricity squared, e′².</summary>
    public const double SecondE2 = E2 / (1 - E2);

    /// <summary>Third flattening, n.</summary>
    public const double N = Flattening / (2 - Flattening);

    /// <summary>Eccentricity e.</summary>
    public static readonly double E = Math.Sqrt(E2);

    /// <summary>Square of the radius of the sphere of the same area, c², m².</summary>
    public static readonly double AuthalicSquared =
        ((Equatorial * Equatorial) + (Polar * Polar * Math.Atanh(E) / E)) / 2;
}
