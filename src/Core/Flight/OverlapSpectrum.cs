namespace Watersown.Flight;

/// <summary>
/// The same evenness from the Fourier transform of one pass: one way CV² = 2 Σ |P(k/S)|² / P(0)²; back and forth, of period 2 S, the
/// transform of p(x) + p(S − x) leaves the real part at even k and the imaginary part at odd k. Joined trays are a row of triangles,
/// whose transform is that of the row times sinc². It is a check: no figure is taken from it.
/// </summary>
internal static class OverlapSpectrum
{
    // Terms fall as the fourth power: beyond these they are less than a hundredth of a point.
    private const int TermsOneWay = 300;

    public static double Cv(ReadOnlySpan<double> trays, double spacing, double shift, (double Swath, FlyingMode Mode) flown)
    {
        var period = flown.Mode == FlyingMode.OneWay ? flown.Swath : 2 * flown.Swath;
        double all = 0, power = 0;
        foreach (var tray in trays) all += tray;
        for (var k = 1; k <= (flown.Mode == FlyingMode.OneWay ? TermsOneWay : 2 * TermsOneWay); k++)
        {
            var (real, imaginary) = Transform(trays, spacing, shift, k / period);
            var width = Sinc(spacing * k / period);
            var seen = flown.Mode == FlyingMode.OneWay ? (real * real) + (imaginary * imaginary) : k % 2 == 0 ? real * real : imaginary * imaginary;
            power += seen * width * width * width * width;
        }

        return Math.Sqrt(2 * power) / all;
    }

    private static (double Real, double Imaginary) Transform(ReadOnlySpan<double> trays, double spacing, double shift, double frequency)
    {
        double real = 0, imaginary = 0;
        for (var i = 0; i < trays.Length; i++)
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * frequency * (((i - ((trays.Length - 1) / 2.0)) * spacing) + shift));
            real += trays[i] * cos;
            imaginary -= trays[i] * sin;
        }

        return (real, imaginary);
    }

    private static double Sinc(double x) => x == 0 ? 1 : Math.Sin(Math.PI * x) / (Math.PI * x);
}
