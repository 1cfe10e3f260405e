namespace Watersown.Water.Learning;

/// <summary>Symmetric matrices of a handful of rows, by Cholesky's factors.</summary>
internal static class SmallMatrix
{
    /// <summary>x of A x = b; none where A is not positive definite.</summary>
    public static double[]? Solve(double[,] a, double[] b)
    {
        if (Factor(a) is not { } lower) return null;
        var x = (double[])b.Clone();
        for (var i = 0; i < x.Length; i++)
        {
            for (var k = 0; k < i; k++) x[i] -= lower[i, k] * x[k];
            x[i] /= lower[i, i];
        }

        for (var i = x.Length - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < x.Length; k++) x[i] -= lower[k, i] * x[k];
            x[i] /= lower[i, i];
        }

        return x;
    }

    /// <summary>The inverse of A.</summary>
    /// <exception cref="ArgumentException">It is not positive definite.</exception>
    public static double[,] Inverse(double[,] a)
    {
        var n = a.GetLength(0);
        var inverse = new double[n, n];
        for (var j = 0; j < n; j++)
        {
            var unit = new double[n];
            unit[j] = 1;
            var column = Solve(a, unit) ?? throw new ArgumentException("Not positive definite.", nameof(a));
            for (var i = 0; i < n; i++) inverse[i, j] = column[i];
        }

        return inverse;
    }

    /// <summary>A x.</summary>
    public static double[] Times(double[,] a, double[] x)
    {
        var product = new double[x.Length];
        for (var i = 0; i < x.Length; i++)
        {
            for (var k = 0; k < x.Length; k++) product[i] += a[i, k] * x[k];
        }

        return product;
    }

    /// <summary>x · y.</summary>
    public static double Dot(double[] x, double[] y)
    {
        var sum = 0.0;
        for (var i = 0; i < x.Length; i++) sum += x[i] * y[i];
        return sum;
    }

    private static double[,]? Factor(double[,] a)
    {
        var n = a.GetLength(0);
        var lower = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = a[i, j];
                for (var k = 0; k < j; k++) sum -= lower[i, k] * lower[j, k];
                if (i == j && sum <= 0) return null;
                lower[i, j] = i == j ? Math.Sqrt(sum) : sum / lower[j, j];
            }
        }

        return lower;
    }
}
