namespace Watersown.Nutrition;

/// <summary>
/// The smallest linear program the desk needs, solved exactly: minimize c·x with A x ≥ b and x ≥ 0, where A, b and c are
/// not negative and there are at most three rows. The cheapest point of such a region is one of its corners, and a corner
/// has as many products as rows that hold exactly; so every corner is tried. Chosen over a simplex method because it
/// cannot cycle, and sixty products have under forty thousand corners.
/// </summary>
internal static class LeastCost
{
    // A corner may miss a target by rounding alone; relative to the target.
    private const double Rounding = 1e-9;

    /// <summary>A corner: the products in it, the rows that hold exactly, and how much of each product.</summary>
    public sealed record Corner(int[] Columns, int[] Rows, double[] X, double Cost);

    /// <summary>The cheapest corner; of equal ones that with the fewest, then the earliest products. None where no mix meets the rows.</summary>
    public static Corner? Solve(double[][] a, double[] b, double[] c)
    {
        int[] needed = [.. Enumerable.Range(0, b.Length).Where(i => b[i] > 0)];
        if (needed.Length == 0) return new Corner([], [], [], 0);
        Corner? best = null;
        for (var size = 1; size <= needed.Length; size++)
        {
            foreach (var rows in Subsets(needed, size))
            {
                foreach (var columns in Subsets([.. Enumerable.Range(0, c.Length)], size))
                {
                    if (Try(a, b, columns, rows) is not { } x || !Meets(a, b, columns, x)) continue;
                    var cost = columns.Select((j, k) => c[j] * x[k]).Sum();
                    if (best is null || cost < best.Cost - (Rounding * Math.Abs(best.Cost))) best = new Corner(columns, rows, x, cost);
                }
            }
        }

        return best;
    }

    /// <summary>Row prices that prove a corner cheapest, or nothing where this corner's own do not.</summary>
    public static double[]? Prices(double[][] a, double[] b, double[] c, Corner corner)
    {
        var n = corner.Columns.Length;
        var transposed = new double[n][];
        for (var k = 0; k < n; k++) transposed[k] = [.. corner.Rows.Select(i => a[i][corner.Columns[k]])];
        if (Elimination.Solve(transposed, [.. corner.Columns.Select(j => c[j])]) is not { } y) return null;
        var prices = new double[b.Length];
        for (var k = 0; k < n; k++) prices[corner.Rows[k]] = y[k];
        var proved = prices.All(p => p >= -Rounding)
            && Enumerable.Range(0, c.Length).All(j => Enumerable.Range(0, b.Length).Sum(i => prices[i] * a[i][j]) <= c[j] + (Rounding * Math.Max(1, c[j])));
        return proved ? [.. prices.Select(p => Math.Max(0, p))] : null;
    }

    private static double[]? Try(double[][] a, double[] b, int[] columns, int[] rows)
    {
        double[][] square = [.. rows.Select(i => columns.Select(j => a[i][j]).ToArray())];
        var x = Elimination.Solve(square, [.. rows.Select(i => b[i])]);
        // A product at nothing belongs to a smaller corner, tried before.
        return x is not null && x.All(v => v > 0) ? x : null;
    }

    private static bool Meets(double[][] a, double[] b, int[] columns, double[] x) =>
        Enumerable.Range(0, b.Length).All(i => columns.Select((j, k) => a[i][j] * x[k]).Sum() >= b[i] * (1 - Rounding));

    private static IEnumerable<int[]> Subsets(int[] of, int size)
    {
        var chosen = Enumerable.Range(0, size).ToArray();
        while (size <= of.Length)
        {
            yield return [.. chosen.Select(i => of[i])];
            var k = size - 1;
            while (k >= 0 && chosen[k] == of.Length - size + k) k--;
            if (k < 0) yield break;
            chosen[k]++;
            for (var later = k + 1; later < size; later++) chosen[later] = chosen[later - 1] + 1;
        }
    }
}
