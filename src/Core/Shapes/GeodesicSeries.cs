namespace Watersown.Shapes;

/// <summary>
/// The series of a geodesic on the ellipsoid, to order 6 in the expansion parameter ε and the third flattening n: on the
/// earth what is left out is below 1e-15 of the whole. Notation of the paper: σ arc length on the auxiliary sphere from the
/// equator crossing, α0 azimuth there, k² = e′² cos²α0.
/// </summary>
internal readonly struct GeodesicSeries
{
    private const int Order = 6;

    // Constant over the ellipsoid: coefficients of ε in A3, C3 and C4, their n already put in.
    private static readonly double[] A3 = A3Of(Wgs84.N);
    private static readonly double[][] C3 = C3Of(Wgs84.N);
    private static readonly double[][] C4 = C4Of(Wgs84.N);

    private readonly double e;

    private GeodesicSeries(double epsilon) => e = epsilon;

    /// <summary>Scale of distance, eq. 17.</summary>
    public double A1 => (1 + (e * e * ((1.0 / 4) + (e * e * ((1.0 / 64) + (e * e / 256)))))) / (1 - e);

    /// <summary>Scale of the second distance integral, eq. 42.</summary>
    public double A2 => (1 - e) * (1 + (e * e * ((1.0 / 4) + (e * e * ((9.0 / 64) + (e * e * 25 / 256))))));

    /// <summary>Scale of longitude, eq. 24.</summary>
    public double LongitudeScale => Polynomial(A3, e);

    /// <summary>The series of a geodesic with this second-eccentricity parameter, eq. 16.</summary>
    [Source(nameof(Sources.Karney2013), "eqs. 15-25, 40-43, 58-63")]
    public static GeodesicSeries For(double k2)
    {
        var root = Math.Sqrt(1 + k2);
        return new GeodesicSeries(k2 / ((2 * (1 + root)) + k2));
    }

    /// <summary>B1(σ2) − B1(σ1), eqs. 15 and 18.</summary>
    public double DistanceSwing(double sigma1, double sigma2, double sigma12)
    {
        var e2 = e * e;
        Span<double> c =
        [
            e * (-(1.0 / 2) + (e2 * ((3.0 / 16) - (e2 / 32)))),
            e2 * (-(1.0 / 16) + (e2 * ((1.0 / 32) - (e2 * 9 / 2048)))),
            e2 * e * (-(1.0 / 48) + (e2 * 3 / 256)),
            e2 * e2 * (-(5.0 / 512) + (e2 * 3 / 512)),
            e2 * e2 * e * -7 / 1280,
            e2 * e2 * e2 * -7 / 2048,
        ];
        return SineDifference(c, sigma1 + sigma2, sigma12);
    }

    /// <summary>B2(σ2) − B2(σ1), eqs. 41 and 43.</summary>
    public double SecondSwing(double sigma1, double sigma2, double sigma12)
    {
        var e2 = e * e;
        Span<double> c =
        [
            e * ((1.0 / 2) + (e2 * ((1.0 / 16) + (e2 / 32)))),
            e2 * ((3.0 / 16) + (e2 * ((1.0 / 32) + (e2 * 35 / 2048)))),
            e2 * e * ((5.0 / 48) + (e2 * 5 / 256)),
            e2 * e2 * ((35.0 / 512) + (e2 * 7 / 512)),
            e2 * e2 * e * 63 / 1280,
            e2 * e2 * e2 * 77 / 2048,
        ];
        return SineDifference(c, sigma1 + sigma2, sigma12);
    }

    /// <summary>B3(σ2) − B3(σ1), eqs. 23 and 25.</summary>
    public double LongitudeSwing(double sigma1, double sigma2, double sigma12)
    {
        Span<double> c = stackalloc double[Order - 1];
        var power = 1.0;
        for (var l = 0; l < c.Length; l++)
        {
            power *= e;
            c[l] = power * Polynomial(C3[l], e);
        }

        return SineDifference(c, sigma1 + sigma2, sigma12);
    }

    /// <summary>I4(σ2) − I4(σ1), eqs. 60-63: what the ellipsoid adds to the area under the geodesic.</summary>
    public double AreaSwing(double sigma1, double sigma2, double sigma12)
    {
        var sum = 0.0;
        var power = 1.0;
        for (var l = 0; l < Order; l++)
        {
            // cos kσ2 − cos kσ1 as a product, so that a short side keeps every digit.
            var k = (2 * l) + 1;
            sum -= 2 * power * Polynomial(C4[l], e) * Math.Sin(k * (sigma1 + sigma2) / 2) * Math.Sin(k * sigma12 / 2);
            power *= e;
        }

        return sum;
    }

    // Σ c(l) (sin 2lσ2 − sin 2lσ1) as products, for the same reason.
    private static double SineDifference(ReadOnlySpan<double> c, double sigmaSum, double sigma12)
    {
        var sum = 0.0;
        for (var l = c.Length; l >= 1; l--) sum += 2 * c[l - 1] * Math.Cos(l * sigmaSum) * Math.Sin(l * sigma12);
        return sum;
    }

    private static double Polynomial(double[] coefficients, double x)
    {
        var sum = 0.0;
        for (var i = coefficients.Length - 1; i >= 0; i--) sum = (sum * x) + coefficients[i];
        return sum;
    }

    private static double[] A3Of(double n) =>
    [
        1,
        -(1.0 / 2) + (n / 2),
        -(1.0 / 4) - (n / 8) + (n * n * 3 / 8),
        -(1.0 / 16) - (n * 3 / 16) - (n * n / 16),
        -(3.0 / 64) - (n / 32),
        -(3.0 / 128),
    ];

    // Row l, less its leading ε^l.
    private static double[][] C3Of(double n) =>
    [
        [(1.0 / 4) - (n / 4), (1.0 / 8) - (n * n / 8), (3.0 / 64) + (n * 3 / 64) - (n * n / 64), (5.0 / 128) + (n / 64), 3.0 / 128],
        [(1.0 / 16) - (n * 3 / 32) + (n * n / 32), (3.0 / 64) - (n / 32) - (n * n * 3 / 64), (3.0 / 128) + (n / 128), 5.0 / 256],
        [(5.0 / 192) - (n * 3 / 64) + (n * n * 5 / 192), (3.0 / 128) - (n * 5 / 192), 7.0 / 512],
        [(7.0 / 512) - (n * 7 / 256), 7.0 / 512],
        [21.0 / 2560],
    ];

    // Row l, less its leading ε^l.
    private static double[][] C4Of(double n)
    {
        var (n2, n3, n4, n5) = (n * n, n * n * n, n * n * n * n, n * n * n * n * n);
        return
        [
            [
                (2.0 / 3) - (n * 4 / 15) + (n2 * 8 / 105) + (n3 * 4 / 315) + (n4 * 16 / 3465) + (n5 * 20 / 9009),
                -(1.0 / 5) + (n * 16 / 35) - (n2 * 32 / 105) + (n3 * 16 / 385) + (n4 * 64 / 15015),
                -(2.0 / 105) - (n * 32 / 315) + (n2 * 1088 / 3465) - (n3 * 1184 / 5005),
                (11.0 / 315) - (n * 368 / 3465) - (n2 * 32 / 6435),
                (4.0 / 1155) + (n * 1088 / 45045),
                97.0 / 15015,
            ],
            [
                (1.0 / 45) - (n * 16 / 315) + (n2 * 32 / 945) - (n3 * 16 / 3465) - (n4 * 64 / 135135),
                -(2.0 / 105) + (n * 64 / 945) - (n2 * 128 / 1485) + (n3 * 1984 / 45045),
                -(1.0 / 105) + (n * 16 / 2079) + (n2 * 5792 / 135135),
                (4.0 / 1155) - (n * 2944 / 135135),
                1.0 / 9009,
            ],
            [
                (4.0 / 525) - (n * 32 / 1575) + (n2 * 64 / 3465) - (n3 * 32 / 5005),
                -(8.0 / 1575) + (n * 128 / 5775) - (n2 * 256 / 6825),
                -(8.0 / 1925) + (n * 1856 / 225225),
                8.0 / 10725,
            ],
            [(8.0 / 2205) - (n * 256 / 24255) + (n2 * 512 / 45045), -(16.0 / 8085) + (n * 1024 / 105105), -(136.0 / 63063)],
            [(64.0 / 31185) - (n * 512 / 81081), -(128.0 / 135135)],
            [128.0 / 99099],
        ];
    }
}
