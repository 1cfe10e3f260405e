namespace Watersown.Shapes;

/// <summary>
/// A first azimuth good enough for Newton's way to follow: on a sphere for most ways, by the astroid of the paper's figure 4
/// where the places are nearly opposite. For ways under a foot the sphere's answer is already exact.
/// </summary>
/// <param name="Alpha1">The azimuth at the first place.</param>
/// <param name="Finished">The whole answer, for a very short way.</param>
internal readonly record struct GeodesicStart(Turn Alpha1, GeodesicStart.Whole? Finished)
{
    // On a way this short (σ12 < 3.6e-8, 0.2 m) the ellipsoid is its own sphere to every digit kept.
    private const double ShortArc = 3.6e-8;

    [Source(nameof(Sources.Karney2013), "section 5, eqs. 48-56")]
    public static GeodesicStart For(Turn beta1, Turn beta2, Turn lambda, double lambda12)
    {
        // β12 as sines, each without loss: of the difference, and of the sum.
        var difference = (beta2.Sin * beta1.Cos) - (beta2.Cos * beta1.Sin);
        var sum = (beta2.Sin * beta1.Cos) + (beta2.Cos * beta1.Sin);
        var isShort = (beta2.Cos * beta1.Cos) + (beta2.Sin * beta1.Sin) >= 0 && difference < 0.5 && beta2.Cos * lambda12 < 0.5;
        var scale = isShort ? MiddleScale(beta1, beta2) : 1;
        var omega12 = isShort ? lambda12 / ((1 - Wgs84.Flattening) * scale) : lambda12;
        var omega = isShort ? Turn.FromRadians(omega12) : lambda;

        var sine = beta2.Cos * omega.Sin;
        var cosine = omega.Cos >= 0
            ? difference + (beta2.Cos * beta1.Sin * omega.Sin * omega.Sin / (1 + omega.Cos))
            : sum - (beta2.Cos * beta1.Sin * omega.Sin * omega.Sin / (1 - omega.Cos));
        var sineSigma = Turn.Hypot(sine, cosine);
        var cosineSigma = (beta1.Sin * beta2.Sin) + (beta1.Cos * beta2.Cos * omega.Cos);
        if (isShort && sineSigma < ShortArc)
        {
            if (sineSigma == 0) return new GeodesicStart(new Turn(0, 1), new Whole(new Turn(0, 1), 0, 0, scale));
            var bend = omega.Cos >= 0 ? omega.Sin * omega.Sin / (1 + omega.Cos) : 1 - omega.Cos;
            var alpha2 = Turn.Toward(beta1.Cos * omega.Sin, difference - (beta1.Cos * beta2.Sin * bend));
            return new GeodesicStart(Turn.Toward(sine, cosine), new Whole(alpha2, Math.Atan2(sineSigma, cosineSigma), omega12, scale));
        }

        return cosineSigma >= 0 || sineSigma >= 6 * Wgs84.N * Math.PI * beta1.Cos * beta1.Cos
            ? new GeodesicStart(Turn.Toward(sine, cosine), Finished: null)
            : new GeodesicStart(NearlyOpposite(beta1, beta2, sum, lambda), Finished: null);
    }

    // √(1 + e′² sin²β) at the mean latitude: arc on the sphere over arc on the ellipsoid there.
    private static double MiddleScale(Turn beta1, Turn beta2)
    {
        var s = (beta1.Sin + beta2.Sin) * (beta1.Sin + beta2.Sin);
        var c = (beta1.Cos + beta2.Cos) * (beta1.Cos + beta2.Cos);
        return Math.Sqrt(1 + (Wgs84.SecondE2 * s / (s + c)));
    }

    private static Turn NearlyOpposite(Turn beta1, Turn beta2, double sum, Turn lambda)
    {
        var series = GeodesicSeries.For(beta1.Sin * beta1.Sin * Wgs84.SecondE2);
        var lambdaScale = Wgs84.Flattening * beta1.Cos * series.LongitudeScale * Math.PI;
        var x = Math.Atan2(-lambda.Sin, -lambda.Cos) / lambdaScale;
        var y = sum / (lambdaScale * beta1.Cos);
        if (y > -1e-14 && x > -1.00001)
        {
            var sine = Math.Min(1, -x);
            return new Turn(sine, -Math.Sqrt(1 - (sine * sine)));
        }

        var k = Astroid(x, y);
        var omega = Turn.FromRadians(lambdaScale * -x * k / (1 + k));
        return Turn.Toward(beta2.Cos * omega.Sin, sum - (beta2.Cos * beta1.Sin * omega.Sin * omega.Sin / (1 + omega.Cos)));
    }

    // Positive root of x²/(1+k)² + y²/k² = 1. The left side falls and is convex, so Newton's way from below never overshoots.
    private static double Astroid(double x, double y)
    {
        var k = Math.Max(Math.Abs(y), Math.Abs(x) - 1);
        for (var i = 0; i < 60; i++)
        {
            var (p, q) = (x / (1 + k), y / k);
            var above = (p * p) + (q * q) - 1;
            var next = k + (above / (2 * ((p * p / (1 + k)) + (q * q / k))));
            if (!(next > k)) break;
            k = next;
        }

        return k;
    }

    /// <summary>The answer for a very short way.</summary>
    /// <param name="Alpha2">Azimuth at the second place.</param>
    /// <param name="Sigma12">Arc on the auxiliary sphere.</param>
    /// <param name="Omega12">Longitude on it.</param>
    /// <param name="Scale">Length over σ12 b.</param>
    internal readonly record struct Whole(Turn Alpha2, double Sigma12, double Omega12, double Scale);
}
