using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>Directions taken as axes: there and back is one.</summary>
internal static class Headings
{
    /// <summary>How far a step may lie off a heading of the job and still go along it, degrees.</summary>
    public const double Along = 12;

    private const int Bins = 180;
    private const int Near = 8;

    // A second heading, such as passes along the ends, must have this share of all that was flown over the field.
    private const double LeastShare = 0.12;

    public static double Of(PlanePoint from, PlanePoint to)
    {
        var degrees = Math.Atan2(to.East - from.East, to.North - from.North) * 180 / Math.PI;
        return degrees < 0 ? degrees + 360 : degrees;
    }

    /// <summary>Degrees between two axes, 0 to 90.</summary>
    public static double Apart(double one, double other)
    {
        var apart = Math.Abs(one - other) % 180;
        return Math.Min(apart, 180 - apart);
    }

    /// <summary>The axes that most of a length lies along, most first.</summary>
    /// <param name="steps">Direction and length of each step.</param>
    public static ImmutableArray<double> Axes(IEnumerable<(double Direction, double Length)> steps)
    {
        var bins = new double[Bins];
        var (sin, cos) = (new double[Bins], new double[Bins]);
        foreach (var (direction, length) in steps)
        {
            var bin = (int)(direction % 180) % Bins;
            bins[bin] += length;
            var (s, c) = Math.SinCos(direction * Math.PI / 90);
            (sin[bin], cos[bin]) = (sin[bin] + (s * length), cos[bin] + (c * length));
        }

        var all = bins.Sum();
        var axes = ImmutableArray.CreateBuilder<double>();
        while (all > 0)
        {
            var best = Enumerable.Range(0, Bins).MaxBy(b => Around(bins, b));
            if (axes.Count > 0 && Around(bins, best) < LeastShare * all) break;
            if (Around(bins, best) <= 0) break;
            axes.Add(Mean(Around(sin, best), Around(cos, best)));
            for (var b = -2 * Near; b <= 2 * Near; b++) bins[(best + b + Bins) % Bins] = 0;
        }

        return axes.ToImmutable();
    }

    /// <summary>The mean axis, each weighed by its length.</summary>
    public static double Mean(IEnumerable<(double Direction, double Length)> steps)
    {
        var (sin, cos) = (0.0, 0.0);
        foreach (var (direction, length) in steps)
        {
            var (s, c) = Math.SinCos(direction * Math.PI / 90);
            (sin, cos) = (sin + (s * length), cos + (c * length));
        }

        return Mean(sin, cos);
    }

    private static double Mean(double sin, double cos)
    {
        var axis = Math.Atan2(sin, cos) * 90 / Math.PI;
        return axis < 0 ? axis + 180 : axis;
    }

    private static double Around(double[] bins, int middle)
    {
        var sum = 0.0;
        for (var b = -Near; b <= Near; b++) sum += bins[(middle + b + Bins) % Bins];
        return sum;
    }
}
