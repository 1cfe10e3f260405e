namespace Watersown.Flight.Cover;

/// <summary>
/// The words in which receivers tell how good a position is, one in terms of another, for errors that are alike east and north,
/// independent and normal. Absolute error: from pass to pass within minutes it is much smaller.
/// </summary>
/// <param name="Sigma">Standard deviation along either axis.</param>
public sealed record PositionError(Length Sigma)
{
    private static readonly double CepFactor = Math.Sqrt(2 * Math.Log(2));
    private static readonly double R95Factor = Math.Sqrt(2 * Math.Log(20));

    /// <summary>Circle that holds half of all positions.</summary>
    [Source(nameof(Sources.CircularErrors), "√(2 ln 2) σ")]
    public Length Cep => Sigma * CepFactor;

    /// <summary>Root of the mean squared distance.</summary>
    [Source(nameof(Sources.CircularErrors), "√2 σ")]
    public Length Drms => Sigma * Math.Sqrt(2);

    /// <summary>Circle that holds 95 %.</summary>
    [Source(nameof(Sources.CircularErrors), "√(2 ln 20) σ")]
    public Length R95 => Sigma * R95Factor;

    /// <summary>Twice <see cref="Drms"/>.</summary>
    [Source(nameof(Sources.CircularErrors), "2 √2 σ")]
    public Length TwiceDrms => Drms * 2;

    public static PositionError FromCep(Length cep) => new(cep / CepFactor);

    public static PositionError FromDrms(Length drms) => new(drms / Math.Sqrt(2));

    public static PositionError FromR95(Length r95) => new(r95 / R95Factor);

    public static PositionError FromTwiceDrms(Length twice) => new(twice / (2 * Math.Sqrt(2)));

    /// <summary>Share of positions within a distance of the true place.</summary>
    [Source(nameof(Sources.CircularErrors), "1 − exp(−r² / (2 σ²))")]
    public Fraction Within(Length distance)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(Sigma.Meters, 0, nameof(distance));
        var ratio = distance / Sigma;
        return Fraction.FromShare(-double.ExpM1(-ratio * ratio / 2));
    }
}
