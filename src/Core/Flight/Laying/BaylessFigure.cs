using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>Figures without bays, as rows of corners, counter-clockwise. A figure of no land has no corners.</summary>
internal static class BaylessFigure
{
    /// <summary>What points span; no corners where they lie on one line.</summary>
    public static PlanePoint[] Around(IEnumerable<PlanePoint> points)
    {
        PlanePoint[] sorted = [.. points.OrderBy(p => p.East).ThenBy(p => p.North)];
        if (sorted.Length < 3) return [];
        var chain = new PlanePoint[(2 * sorted.Length) + 1];
        var count = Chain(sorted, chain, 0);
        Array.Reverse(sorted);
        count = Chain(sorted, chain, count - 1) - 1;
        return count < 3 ? [] : chain[..count];
    }

    /// <summary>The part to the left of a line through a place.</summary>
    public static PlanePoint[] LeftOf(PlanePoint[] figure, PlanePoint through, double east, double north)
    {
        var left = new List<PlanePoint>(figure.Length + 1);
        for (var i = 0; i < figure.Length; i++)
        {
            var (p, q) = (figure[i], figure[(i + 1) % figure.Length]);
            double a = (east * (p.North - through.North)) - (north * (p.East - through.East)), b = (east * (q.North - through.North)) - (north * (q.East - through.East));
            if (a >= 0) left.Add(p);
            if ((a > 0 && b < 0) || (a < 0 && b > 0)) left.Add(new PlanePoint(p.East + (a / (a - b) * (q.East - p.East)), p.North + (a / (a - b) * (q.North - p.North))));
        }

        return left.Count < 3 ? [] : [.. left];
    }

    /// <summary>Least width, m: one of the two closest parallel lines that hold a figure lies along a side.</summary>
    public static double Width(PlanePoint[] figure)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < figure.Length; i++)
        {
            var (from, to) = (figure[i], figure[(i + 1) % figure.Length]);
            double east = to.East - from.East, north = to.North - from.North, side = Math.Sqrt((east * east) + (north * north));
            if (side <= Hair) continue;
            var (most, limit) = (0.0, least * side);
            for (var j = 0; j < figure.Length && most < limit; j++) most = Math.Max(most, (east * (figure[j].North - from.North)) - (north * (figure[j].East - from.East)));
            least = Math.Min(least, most / side);
        }

        return double.IsPositiveInfinity(least) ? 0 : least;
    }

    // Shorter sides point nowhere, m.
    private const double Hair = 1e-7;

    private static int Chain(PlanePoint[] sorted, PlanePoint[] chain, int from)
    {
        var count = from;
        foreach (var point in sorted)
        {
            while (count >= from + 2 && Cross(chain[count - 2], chain[count - 1], point) <= 0) count--;
            chain[count++] = point;
        }

        return count;
    }

    private static double Cross(PlanePoint a, PlanePoint b, PlanePoint c) =>
        ((b.East - a.East) * (c.North - a.North)) - ((b.North - a.North) * (c.East - a.East));
}
