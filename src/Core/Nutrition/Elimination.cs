namespace Watersown.Nutrition;

/// <summary>A few equations in as many unknowns, by elimination with the largest pivot of the column.</summary>
internal static class Elimination
{
    // Below this share of the largest entry a pivot is rounding, and the equations do not decide the unknowns.
    private const double Singular = 1e-12;

    /// <summary>The unknowns, or nothing where the equations do not decide them.</summary>
    public static double[]? Solve(double[][] a, double[] b)
    {
        var n = b.Length;
        double[][] m = [.. a.Select((row, i) => (double[])[.. row, b[i]])];
        var scale = a.SelectMany(row => row).Select(Math.Abs).DefaultIfEmpty(0).Max();
        for (var column = 0; column < n; column++)
        {
            var pivot = column;
            for (var row = column + 1; row < n; row++)
            {
                if (Math.Abs(m[row][column]) > Math.Abs(m[pivot][column])) pivot = row;
            }

            if (Math.Abs(m[pivot][column]) <= Singular * scale) return null;
            (m[column], m[pivot]) = (m[pivot], m[column]);
            for (var row = 0; row < n; row++)
            {
                if (row == column) continue;
                var factor = m[row][column] / m[column][column];
                for (var k = column; k <= n; k++) m[row][k] -= factor * m[column][k];
            }
        }

        return [.. m.Select((row, i) => row[n] / row[i])];
    }
}
