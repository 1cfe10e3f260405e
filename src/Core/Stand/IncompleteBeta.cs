namespace Watersown.Stand;

/// <summary>The incomplete beta function ratio I_x(a, b), and the logarithm of the gamma function it needs.</summary>
internal static class IncompleteBeta
{
    private const int MostTerms = 10_000;

    // Keeps a term of the continued fraction from being zero, where the next step would divide by it.
    private const double Tiny = 1e-300;

    // Series of A&S 6.1.40: Bernoulli numbers over 2k (2k - 1).
    private static readonly double[] Stirling =
        [1.0 / 12, -1.0 / 360, 1.0 / 1260, -1.0 / 1680, 1.0 / 1188, -691.0 / 360360];

    /// <summary>I_x(a, b) for a and b above zero and x from 0 to 1.</summary>
    public static double Ratio(double a, double b, double x)
    {
        if (x <= 0) return 0;
        if (x >= 1) return 1;
        var front = Math.Exp(LogGamma(a + b) - LogGamma(a) - LogGamma(b) + (a * Math.Log(x)) + (b * Math.Log(1 - x)));
        // The fraction converges fast on this side only; the other side is its mirror (A&S 26.5.2).
        return x < (a + 1) / (a + b + 2) ? front * Fraction(a, b, x) / a : 1 - (front * Fraction(b, a, 1 - x) / b);
    }

    public static double LogGamma(double x)
    {
        var shift = 0.0;
        for (; x < 12; x++) shift -= Math.Log(x);
        var sum = 0.0;
        var power = 1 / x;
        foreach (var coefficient in Stirling)
        {
            sum += coefficient * power;
            power /= x * x;
        }

        return ((x - 0.5) * Math.Log(x)) - x + (Math.Log(2 * Math.PI) / 2) + sum + shift;
    }

    // A&S 26.5.8, summed from the front by keeping numerator and denominator ratios apart (the modified Lentz scheme).
    private static double Fraction(double a, double b, double x)
    {
        double c = 1, d = 1 / NotZero(1 - ((a + b) * x / (a + 1)));
        var value = d;
        for (var m = 1; m <= MostTerms; m++)
        {
            var even = m * (b - m) * x / ((a + (2 * m) - 1) * (a + (2 * m)));
            d = 1 / NotZero(1 + (even * d));
            c = NotZero(1 + (even / c));
            value *= d * c;
            var odd = -(a + m) * (a + b + m) * x / ((a + (2 * m)) * (a + (2 * m) + 1));
            d = 1 / NotZero(1 + (odd * d));
            c = NotZero(1 + (odd / c));
            var step = d * c;
            value *= step;
            if (Math.Abs(step - 1) < 1e-16) break;
        }

        return value;
    }

    private static double NotZero(double value) => Math.Abs(value) < Tiny ? Tiny : value;
}
