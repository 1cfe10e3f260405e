namespace Watersown.Water.Learning;

/// <summary>
/// NIST Statistical Reference Datasets, nonlinear regression, Misra1a (dental research, monomolecular adsorption, D. Misra 1978):
/// y = b1 (1 − exp(−b2 x)), with the certified values of the data set.
/// </summary>
public sealed class GaussNewtonReference
{
    private static readonly (double Y, double X)[] Misra1A =
    [
        (10.07, 77.6), (14.73, 114.9), (17.94, 141.1), (23.93, 190.8), (29.61, 239.9), (35.18, 289.0), (40.02, 332.8),
        (44.82, 378.4), (50.76, 434.8), (55.05, 477.3), (61.01, 536.8), (66.40, 593.1), (75.47, 689.1), (81.78, 760.0),
    ];

    // Start I and start II of the data set.
    [Theory]
    [InlineData(500, 0.0001)]
    [InlineData(250, 0.0005)]
    public void The_certified_figures_and_their_deviations_are_found(double b1, double b2)
    {
        var task = new FitTask(Rows, Misra1A.Length, 0, [1e-4, 1e-10], [0, 0], Robust: false, Enough: 1e-16);
        var fit = GaussNewton.Fit(task, [b1, b2]);
        var squares = 2 * fit.Sum;
        var deviation = Math.Sqrt(squares / (Misra1A.Length - 2));
        Assert.Equal(1.2455138894E-01, squares, 1e-9);
        Assert.Equal(1.0187876330E-01, deviation, 1e-9);
        Assert.Equal(1, fit.At[0] / 2.3894212918E+02, 1e-6);
        Assert.Equal(1, fit.At[1] / 5.5015643181E-04, 1e-6);
        Assert.Equal(1, deviation * Math.Sqrt(fit.Covariance[0, 0]) / 2.7070075241E+00, 1e-4);
        Assert.Equal(1, deviation * Math.Sqrt(fit.Covariance[1, 1]) / 7.2668688436E-06, 1e-4);
    }

    // One of the fourteen read as ten times itself: squares follow it, weights do not.
    [Fact]
    public void One_wild_row_does_not_turn_a_weighed_fit_round()
    {
        const double Deviation = 1.0187876330E-01;
        void Wild(double[] at, double[] rows)
        {
            Rows(at, rows);
            rows[5] += 9 * Misra1A[5].Y;
            for (var i = 0; i < rows.Length; i++) rows[i] /= Deviation;
        }

        double B1(bool robust) => GaussNewton.Fit(new FitTask(Wild, Misra1A.Length, 0, [1e-4, 1e-10], [0, 0], robust, 1e-12), [250, 0.0005]).At[0];
        Assert.InRange(B1(robust: true), 238.94 - 2.707, 238.94 + 2.707);
        Assert.False(Math.Abs(B1(robust: false) - 238.94) < 50);
    }

    private static void Rows(double[] at, double[] rows)
    {
        for (var i = 0; i < Misra1A.Length; i++) rows[i] = Misra1A[i].Y - (at[0] * (1 - Math.Exp(-at[1] * Misra1A[i].X)));
    }
}
