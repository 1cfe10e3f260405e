namespace Watersown.Water.Learning;

/// <summary>What is to be fitted.</summary>
/// <param name="Residuals">Puts (seen − worked out) / spread of every row for the figures it is given.</param>
/// <param name="Rows">How many rows; the last <paramref name="Silent"/> of them only have their slopes told.</param>
/// <param name="Silent">Rows at the end that pull at nothing.</param>
/// <param name="Steps">Step of each figure for its slope.</param>
/// <param name="Prior">1 / spread² of each figure round zero before anything was seen; zero where nothing was known.</param>
/// <param name="Robust">A row far off counts less; without it every row counts whole.</param>
/// <param name="Enough">Stop where a step promises to better the sum by less.</param>
internal sealed record FitTask(Action<double[], double[]> Residuals, int Rows, int Silent, double[] Steps, double[] Prior, bool Robust, double Enough);

/// <summary>Where a fit came to rest.</summary>
/// <param name="At">The figures.</param>
/// <param name="Sum">Half the weighted squares, those of the prior with them.</param>
/// <param name="Rows">Rows at these figures.</param>
/// <param name="Slopes">Of each row by each figure.</param>
/// <param name="Weights">How much each row counts, at most 1.</param>
/// <param name="Covariance">Of the figures: the inverse of the sum's curvature there.</param>
internal sealed record FitResult(double[] At, double Sum, double[] Rows, double[,] Slopes, double[] Weights, double[,] Covariance);

/// <summary>
/// Least squares of figures that do not go in straight lines: Gauss and Newton's step, held back as Levenberg and Marquardt do
/// where it would make things worse. Rows that lie far off are weighed down as under Student's t, so that none of them can
/// turn the fit round.
/// </summary>
internal static class GaussNewton
{
    /// <summary>Freedom of Student's t: the fewer, the less a row far off counts.</summary>
    public const double Freedom = 4;

    private const int Most = 100;

    public static FitResult Fit(FitTask task, double[] start)
    {
        var at = (double[])start.Clone();
        var rows = new double[task.Rows];
        task.Residuals(at, rows);
        var sum = Sum(task, at, rows);
        var (slopes, damping) = (Slopes(task, at, rows), 1e-3);
        for (var round = 0; round < Most; round++)
        {
            var (curve, pull) = Normal(task, at, rows, slopes);
            if (Step(task, curve, pull, damping) is not { } step) break;
            var promised = 0.0;
            for (var j = 0; j < step.Length; j++) promised -= step[j] * pull[j];
            if (promised < task.Enough) break;
            var (next, nextRows) = (new double[at.Length], new double[rows.Length]);
            for (var j = 0; j < next.Length; j++) next[j] = at[j] + step[j];
            task.Residuals(next, nextRows);
            if (Sum(task, next, nextRows) is var nextSum && nextSum < sum)
            {
                (at, rows, sum, damping) = (next, nextRows, nextSum, damping / 5);
                slopes = Slopes(task, at, rows);
            }
            else if ((damping *= 3) > 1e12)
            {
                break;
            }
        }

        var end = Normal(task, at, rows, slopes).Curve;
        return new FitResult(at, sum, rows, slopes, [.. rows.Select(r => Weight(task, r))], SmallMatrix.Inverse(end));
    }

    /// <summary>The sum that is made least, at figures not fitted.</summary>
    public static double SumAt(FitTask task, double[] at)
    {
        var rows = new double[task.Rows];
        task.Residuals(at, rows);
        return Sum(task, at, rows);
    }

    private static double Weight(FitTask task, double row) => !task.Robust || Math.Abs(row) <= 1 ? 1 : (Freedom + 1) / (Freedom + (row * row));

    // What the weights are the slope of: squares up to one spread, then the logarithm of Student's t.
    private static double Cost(FitTask task, double row) => !task.Robust || Math.Abs(row) <= 1
        ? row * row / 2
        : 0.5 + ((Freedom + 1) / 2 * Math.Log((Freedom + (row * row)) / (Freedom + 1)));

    private static double Sum(FitTask task, double[] at, double[] rows)
    {
        var sum = 0.0;
        for (var i = 0; i < task.Rows - task.Silent; i++) sum += Cost(task, rows[i]);
        for (var j = 0; j < at.Length; j++) sum += task.Prior[j] * at[j] * at[j] / 2;
        return double.IsFinite(sum) ? sum : double.MaxValue;
    }

    private static double[,] Slopes(FitTask task, double[] at, double[] rows)
    {
        var (slopes, moved, point) = (new double[task.Rows, at.Length], new double[task.Rows], (double[])at.Clone());
        for (var j = 0; j < at.Length; j++)
        {
            point[j] = at[j] + task.Steps[j];
            task.Residuals(point, moved);
            for (var i = 0; i < task.Rows; i++) slopes[i, j] = (moved[i] - rows[i]) / task.Steps[j];
            point[j] = at[j];
        }

        return slopes;
    }

    private static (double[,] Curve, double[] Pull) Normal(FitTask task, double[] at, double[] rows, double[,] slopes)
    {
        var (curve, pull) = (new double[at.Length, at.Length], new double[at.Length]);
        for (var j = 0; j < at.Length; j++)
        {
            pull[j] = task.Prior[j] * at[j];
            curve[j, j] = task.Prior[j];
        }

        for (var i = 0; i < task.Rows - task.Silent; i++)
        {
            var weight = Weight(task, rows[i]);
            for (var j = 0; j < at.Length; j++)
            {
                pull[j] += weight * slopes[i, j] * rows[i];
                for (var k = 0; k < at.Length; k++) curve[j, k] += weight * slopes[i, j] * slopes[i, k];
            }
        }

        return (curve, pull);
    }

    private static double[]? Step(FitTask task, double[,] curve, double[] pull, double damping)
    {
        var (held, wish) = ((double[,])curve.Clone(), new double[pull.Length]);
        for (var j = 0; j < pull.Length; j++)
        {
            held[j, j] += damping * Math.Max(curve[j, j], task.Prior[j]);
            wish[j] = -pull[j];
        }

        return SmallMatrix.Solve(held, wish);
    }
}
