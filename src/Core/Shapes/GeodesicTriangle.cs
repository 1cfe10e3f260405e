namespace Watersown.Shapes;

/// <summary>
/// The inverse problem in its canonical place: φ1 ≤ 0, |φ2| ≤ −φ1, 0 ≤ λ12 ≤ 180°. Notation of the paper: φ latitude,
/// β reduced latitude, λ longitude, ω longitude on the auxiliary sphere, σ arc length on it, α azimuth.
/// </summary>
[Source(nameof(Sources.Karney2013), "sections 4 to 6")]
internal sealed class GeodesicTriangle
{
    private const double F1 = 1 - Wgs84.Flattening;
    private const double Tiny = 1e-150;

    private readonly Turn beta1;
    private readonly Turn beta2;
    private readonly double dn1;
    private readonly double dn2;
    private double sigma1;
    private double sigma2;
    private double sigma12;
    private double omega12;
    private double longitudeSlope;
    private GeodesicSeries series;

    private GeodesicTriangle(double phi1, double phi2)
    {
        beta1 = Reduce(phi1);
        beta2 = Reduce(phi2);

        // Rounding must not make two equal latitudes differ: the square root of eq. 45 would magnify it.
        if (beta1.Cos < -beta1.Sin)
        {
            if (beta2.Cos == beta1.Cos) beta2 = beta2 with { Sin = Math.CopySign(beta1.Sin, beta2.Sin) };
        }
        else if (Math.Abs(beta2.Sin) == -beta1.Sin)
        {
            beta2 = beta2 with { Cos = beta1.Cos };
        }

        dn1 = Math.Sqrt(1 + (Wgs84.SecondE2 * beta1.Sin * beta1.Sin));
        dn2 = Math.Sqrt(1 + (Wgs84.SecondE2 * beta2.Sin * beta2.Sin));
    }

    public Turn Alpha1 { get; private set; }

    public Turn Alpha2 { get; private set; }

    /// <summary>Length, m.</summary>
    public double Meters { get; private set; }

    /// <summary>Area between the way and the equator, m².</summary>
    public double Under { get; private set; }

    private double SineAlpha0 => Alpha1.Sin * beta1.Cos;

    private double CosineAlpha0 => Turn.Hypot(Alpha1.Cos, Alpha1.Sin * beta1.Sin);

    public static GeodesicTriangle Solve(double phi1, double phi2, double lambda12Degrees)
    {
        var triangle = new GeodesicTriangle(phi1, phi2);
        var lambda = Turn.FromDegrees(lambda12Degrees);
        var lambda12 = lambda12Degrees * Math.PI / 180;
        var meridian = phi1 == -90 || lambda.Sin == 0;
        if (meridian) meridian = triangle.AlongMeridian(lambda);
        if (!meridian && phi1 == 0 && 180 - lambda12Degrees >= Wgs84.Flattening * 180)
            triangle.AlongEquator(lambda12);
        else if (!meridian)
            triangle.Search(lambda, lambda12);
        triangle.Under = triangle.AreaUnder(meridian);
        return triangle;
    }

    private static Turn Reduce(double phi)
    {
        var turn = Turn.FromDegrees(phi);
        var beta = Turn.Toward(turn.Sin * F1, turn.Cos);
        return beta with { Cos = Math.Max(Tiny, beta.Cos) };
    }

    // Straight north or south, over a pole where need be; false where a shorter way goes round the side.
    private bool AlongMeridian(Turn lambda)
    {
        Alpha1 = lambda;
        Alpha2 = new Turn(0, 1);
        var (sin1, cos1) = (beta1.Sin, lambda.Cos * beta1.Cos);
        var (sin2, cos2) = (beta2.Sin, beta2.Cos);
        sigma1 = Math.Atan2(sin1, cos1);
        sigma2 = Math.Atan2(sin2, cos2);
        sigma12 = Math.Atan2(Math.Max(0, (cos1 * sin2) - (sin1 * cos2)), (cos1 * cos2) + (sin1 * sin2));
        series = GeodesicSeries.For(Wgs84.SecondE2);
        var reduced = ReducedLength(Turn.Toward(sin1, cos1), Turn.Toward(sin2, cos2));
        if (sigma12 >= 1 && reduced < 0) return false;
        Meters = Wgs84.Polar * Distance;
        omega12 = lambda.Radians;
        return true;
    }

    private void AlongEquator(double lambda12)
    {
        Alpha1 = Alpha2 = new Turn(1, 0);
        Meters = Wgs84.Equatorial * lambda12;
        sigma1 = 0;
        sigma2 = sigma12 = omega12 = lambda12 / F1;
        series = GeodesicSeries.For(0);
    }

    private void Search(Turn lambda, double lambda12)
    {
        var start = GeodesicStart.For(beta1, beta2, lambda, lambda12);
        Alpha1 = start.Alpha1;
        if (start.Finished is { } finished)
        {
            Alpha2 = finished.Alpha2;
            SetArcs();
            (sigma12, omega12) = (finished.Sigma12, finished.Omega12);
            Meters = Wgs84.Polar * finished.Sigma12 * finished.Scale;
            return;
        }

        Refine(lambda, lambda12);
        Meters = Wgs84.Polar * Distance;
    }

    // Newton's way to the azimuth that arrives at the right longitude (eqs. 45 and 46), kept between a low and a high azimuth.
    private void Refine(Turn lambda, double lambda12)
    {
        Turn low = new(Tiny, 1), high = new(Tiny, -1);
        var closing = false;
        for (var i = 0; i < 80; i++)
        {
            var miss = LongitudeMiss(lambda, lambda12);
            if (closing || Math.Abs(miss) < 1e-16) return;
            if (miss > 0) high = Alpha1;
            else low = Alpha1;
            var step = -miss / longitudeSlope;
            var next = Turn.FromRadians(step);
            var sine = (Alpha1.Sin * next.Cos) + (Alpha1.Cos * next.Sin);
            if (i < 20 && longitudeSlope > 0 && Math.Abs(step) < Math.PI && sine > 0)
            {
                Alpha1 = Turn.Toward(sine, (Alpha1.Cos * next.Cos) - (Alpha1.Sin * next.Sin));
                // Newton doubles the digits: once a step is this small the next answer is full.
                closing = Math.Abs(miss) <= 4e-15;
                continue;
            }

            Alpha1 = Turn.Toward((low.Sin + high.Sin) / 2, (low.Cos + high.Cos) / 2);
            closing = Math.Abs(low.Sin - Alpha1.Sin) + (low.Cos - Alpha1.Cos) < 1e-15
                || Math.Abs(Alpha1.Sin - high.Sin) + (Alpha1.Cos - high.Cos) < 1e-15;
        }
    }

    // How far beyond the wanted longitude the geodesic starting at Alpha1 reaches the second latitude.
    private double LongitudeMiss(Turn lambda, double lambda12)
    {
        if (beta1.Sin == 0 && Alpha1.Cos == 0) Alpha1 = Alpha1 with { Cos = -Tiny };
        var sine0 = SineAlpha0;
        var sine2 = beta2.Cos == beta1.Cos ? Alpha1.Sin : sine0 / beta2.Cos;
        var gap = beta1.Cos < -beta1.Sin
            ? (beta2.Cos - beta1.Cos) * (beta1.Cos + beta2.Cos)
            : (beta1.Sin - beta2.Sin) * (beta1.Sin + beta2.Sin);
        var cosine2 = beta2.Cos != beta1.Cos || Math.Abs(beta2.Sin) != -beta1.Sin
            ? Math.Sqrt((Alpha1.Cos * beta1.Cos * Alpha1.Cos * beta1.Cos) + gap) / beta2.Cos
            : Math.Abs(Alpha1.Cos);
        Alpha2 = new Turn(sine2, cosine2);
        var (arc1, arc2) = SetArcs();
        sigma12 = Math.Atan2(Math.Max(0, (arc1.Cos * arc2.Sin) - (arc1.Sin * arc2.Cos)), (arc1.Cos * arc2.Cos) + (arc1.Sin * arc2.Sin));

        var omega1 = Turn.Toward(sine0 * beta1.Sin, Alpha1.Cos * beta1.Cos);
        var omega2 = Turn.Toward(sine0 * beta2.Sin, cosine2 * beta2.Cos);
        var sine = Math.Max(0, (omega1.Cos * omega2.Sin) - (omega1.Sin * omega2.Cos));
        var cosine = (omega1.Cos * omega2.Cos) + (omega1.Sin * omega2.Sin);
        var ahead = Math.Atan2((sine * lambda.Cos) - (cosine * lambda.Sin), (cosine * lambda.Cos) + (sine * lambda.Sin));
        var lag = -Wgs84.Flattening * series.LongitudeScale * sine0 * (sigma12 + series.LongitudeSwing(sigma1, sigma2, sigma12));
        omega12 = lambda12 - lag;
        longitudeSlope = cosine2 == 0
            ? -2 * F1 * dn1 / beta1.Sin
            : ReducedLength(arc1, arc2) * F1 / (cosine2 * beta2.Cos);
        return ahead + lag;
    }

    private double Distance => series.A1 * (sigma12 + series.DistanceSwing(sigma1, sigma2, sigma12));

    // Eq. 38: how fast neighboring geodesics part, over b.
    private double ReducedLength(Turn arc1, Turn arc2)
    {
        var spread = ((series.A1 - series.A2) * sigma12)
            + (series.A1 * series.DistanceSwing(sigma1, sigma2, sigma12))
            - (series.A2 * series.SecondSwing(sigma1, sigma2, sigma12));
        return (dn2 * arc1.Cos * arc2.Sin) - (dn1 * arc1.Sin * arc2.Cos) - (arc1.Cos * arc2.Cos * spread);
    }

    private (Turn Arc1, Turn Arc2) SetArcs()
    {
        var arc1 = Turn.Toward(beta1.Sin, Alpha1.Cos * beta1.Cos);
        var arc2 = Turn.Toward(beta2.Sin, Alpha2.Cos * beta2.Cos);
        (sigma1, sigma2) = (arc1.Radians, arc2.Radians);
        var cosine0 = CosineAlpha0;
        series = GeodesicSeries.For(cosine0 * cosine0 * Wgs84.SecondE2);
        return (arc1, arc2);
    }

    // Eqs. 58 to 60; the turn of azimuth by half angles where the way is short enough for them.
    private double AreaUnder(bool meridian)
    {
        var factor = Wgs84.E2 * Wgs84.Equatorial * Wgs84.Equatorial * SineAlpha0 * CosineAlpha0;
        var swing = factor == 0 ? 0 : factor * series.AreaSwing(sigma1, sigma2, sigma12);
        return (Wgs84.AuthalicSquared * AzimuthTurn(meridian)) + swing;
    }

    private double AzimuthTurn(bool meridian)
    {
        var omega = Turn.FromRadians(omega12);
        if (!meridian && omega.Cos > -0.7 && beta2.Sin - beta1.Sin < 1.75)
        {
            return 2 * Math.Atan2(
                omega.Sin * ((beta1.Sin * (1 + beta2.Cos)) + (beta2.Sin * (1 + beta1.Cos))),
                (1 + omega.Cos) * ((beta1.Sin * beta2.Sin) + ((1 + beta1.Cos) * (1 + beta2.Cos))));
        }

        var sine = (Alpha2.Sin * Alpha1.Cos) - (Alpha2.Cos * Alpha1.Sin);
        var cosine = (Alpha2.Cos * Alpha1.Cos) + (Alpha2.Sin * Alpha1.Sin);

        // Over a pole the half turn is counted westward, as for a way that passes just east of it.
        return sine == 0 && cosine < 0 ? -Math.PI : Math.Atan2(sine, cosine);
    }
}
