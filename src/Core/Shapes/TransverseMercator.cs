namespace Watersown.Shapes;

/// <summary>
/// The transverse Mercator projection of the ellipsoid with scale 1 on its middle meridian, by Krüger's series to order 6 in
/// the third flattening: within nanometers up to 3,900 km from that meridian. Notation of the paper: τ tangent of latitude,
/// τ′ of conformal latitude, ξ′ and η′ on the sphere, ξ and η on the ellipsoid.
/// </summary>
internal static class TransverseMercator
{
    private static readonly double[] Alpha = AlphaOf(Wgs84.N);
    private static readonly double[] Beta = BetaOf(Wgs84.N);
    private const double Radius = Wgs84.Equatorial / (1 + Wgs84.N)
        * (1 + (Wgs84.N * Wgs84.N * ((1.0 / 4) + (Wgs84.N * Wgs84.N * ((1.0 / 64) + (Wgs84.N * Wgs84.N / 256))))));

    /// <summary>Meters east of the middle meridian and north of the equator, and the scale there.</summary>
    public static (double East, double North, double Scale) Forward(double latitude, double longitudeStep)
    {
        var phi = Turn.FromDegrees(latitude);
        var lambda = Turn.FromDegrees(longitudeStep);
        var tau = phi.Sin / phi.Cos;
        var conformal = Conformal(tau);
        var around = Turn.Hypot(conformal, lambda.Cos);
        var xi = Math.Atan2(conformal, lambda.Cos);
        var eta = Math.Asinh(lambda.Sin / around);
        var (xiSum, etaSum, p, q) = (xi, eta, 1.0, 0.0);
        for (var j = 1; j <= Alpha.Length; j++)
        {
            var (sin, cos) = Math.SinCos(2 * j * xi);
            var (sinh, cosh) = (Math.Sinh(2 * j * eta), Math.Cosh(2 * j * eta));
            var a = Alpha[j - 1];
            xiSum += a * sin * cosh;
            etaSum += a * cos * sinh;
            p += 2 * j * a * cos * cosh;
            q += 2 * j * a * sin * sinh;
        }

        var sphere = Math.Sqrt(1 - (Wgs84.E2 * phi.Sin * phi.Sin)) * Math.Sqrt(1 + (tau * tau)) / around;
        return (Radius * etaSum, Radius * xiSum, Radius / Wgs84.Equatorial * sphere * Turn.Hypot(p, q));
    }

    /// <summary>Latitude, and longitude from the middle meridian, in degrees.</summary>
    public static (double Latitude, double LongitudeStep) Inverse(double east, double north)
    {
        var (xi, eta) = (north / Radius, east / Radius);
        var (xiSum, etaSum) = (xi, eta);
        for (var j = 1; j <= Beta.Length; j++)
        {
            var (sin, cos) = Math.SinCos(2 * j * xi);
            xiSum -= Beta[j - 1] * sin * Math.Cosh(2 * j * eta);
            etaSum -= Beta[j - 1] * cos * Math.Sinh(2 * j * eta);
        }

        var (sinXi, cosXi) = Math.SinCos(xiSum);
        var sinhEta = Math.Sinh(etaSum);
        var conformal = sinXi / Turn.Hypot(sinhEta, cosXi);
        var tau = Geographic(conformal);
        return (Math.Atan(tau) * 180 / Math.PI, Math.Atan2(sinhEta, cosXi) * 180 / Math.PI);
    }

    // τ′ of τ, eqs. 7-9.
    private static double Conformal(double tau)
    {
        var root = Math.Sqrt(1 + (tau * tau));
        var sigma = Math.Sinh(Wgs84.E * Math.Atanh(Wgs84.E * tau / root));
        return (tau * Math.Sqrt(1 + (sigma * sigma))) - (sigma * root);
    }

    // τ of τ′ by Newton's way, eqs. 19-21.
    private static double Geographic(double conformal)
    {
        var tau = conformal / (1 - Wgs84.E2);
        for (var i = 0; i < 6; i++)
        {
            var now = Conformal(tau);
            var step = (conformal - now) / Math.Sqrt(1 + (now * now))
                * (1 + ((1 - Wgs84.E2) * tau * tau)) / ((1 - Wgs84.E2) * Math.Sqrt(1 + (tau * tau)));
            tau += step;
            if (Math.Abs(step) <= 1e-16 * Math.Max(1, Math.Abs(tau))) break;
        }

        return tau;
    }

    // Eq. 35.
    private static double[] AlphaOf(double n) =>
    [
        n * ((1.0 / 2) + (n * (-(2.0 / 3) + (n * ((5.0 / 16) + (n * ((41.0 / 180) + (n * (-(127.0 / 288) + (n * 7891 / 37800)))))))))),
        n * n * ((13.0 / 48) + (n * (-(3.0 / 5) + (n * ((557.0 / 1440) + (n * ((281.0 / 630) - (n * 1983433 / 1935360)))))))),
        n * n * n * ((61.0 / 240) + (n * (-(103.0 / 140) + (n * ((15061.0 / 26880) + (n * 167603 / 181440)))))),
        n * n * n * n * ((49561.0 / 161280) + (n * (-(179.0 / 168) + (n * 6601661 / 7257600)))),
        n * n * n * n * n * ((34729.0 / 80640) - (n * 3418889 / 1995840)),
        n * n * n * n * n * n * 212378941 / 319334400,
    ];

    // Eq. 36.
    private static double[] BetaOf(double n) =>
    [
        n * ((1.0 / 2) + (n * (-(2.0 / 3) + (n * ((37.0 / 96) + (n * (-(1.0 / 360) + (n * (-(81.0 / 512) + (n * 96199 / 604800)))))))))),
        n * n * ((1.0 / 48) + (n * ((1.0 / 15) + (n * (-(437.0 / 1440) + (n * ((46.0 / 105) - (n * 1118711 / 3870720)))))))),
        n * n * n * ((17.0 / 480) + (n * (-(37.0 / 840) + (n * (-(209.0 / 4480) + (n * 5569 / 90720)))))),
        n * n * n * n * ((4397.0 / 161280) + (n * (-(11.0 / 504) - (n * 830251 / 7257600)))),
        n * n * n * n * n * ((4583.0 / 161280) - (n * 108847 / 3991680)),
        n * n * n * n * n * n * 20648693 / 638668800,
    ];
}
