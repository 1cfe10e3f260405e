using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>
/// Figures without bays that lie in a field: from a place well inside, what an outline keeps when it is cut at the nearest edge
/// of a bay or hole, again and again, until none is left in it.
/// </summary>
internal static class InnerFigure
{
    private const int Steps = 14;
    private const int MostCuts = 60;
    private const int MostSeeds = 3;

    // A cut closer than this to where an edge ends is that end, m.
    private const double Hair = 1e-6;

    /// <summary>Place and direction of each cut, what is kept to the left, in the order they are made; and whether nothing but land is left then.</summary>
    public static (ImmutableArray<(PlanePoint Through, double East, double North)> Cuts, bool Bare) Grow(PlanePart part, PlanePoint[] outline, PlanePoint from)
    {
        var (figure, cuts) = (outline, ImmutableArray.CreateBuilder<(PlanePoint Through, double East, double North)>());
        while (cuts.Count < MostCuts && figure.Length > 0)
        {
            if (Nearest(part, figure, from) is not { } at) return (cuts.ToImmutable(), true);
            cuts.Add((at, from.North - at.North, at.East - from.East));
            figure = BaylessFigure.LeftOf(figure, cuts[^1].Through, cuts[^1].East, cuts[^1].North);
        }

        return (cuts.ToImmutable(), false);
    }

    /// <summary>Places far inside, the deepest first and the others well off it, found on a lattice that lies with the outline.</summary>
    public static ImmutableArray<PlanePoint> Seeds(PlanePart part, Bearing heading)
    {
        var (sin, cos) = Math.SinCos(heading.Radians);
        double low = part.Outer.Min(p => p.AheadOf(heading)), left = part.Outer.Min(p => p.RightOf(heading));
        double along = (part.Outer.Max(p => p.AheadOf(heading)) - low) / Steps, across = (part.Outer.Max(p => p.RightOf(heading)) - left) / Steps;
        Seed At(double ahead, double right) => new(ahead, right, Inside(part, new PlanePoint((ahead * sin) + (right * cos), (ahead * cos) - (right * sin))));
        var lattice = Enumerable.Range(0, Steps * Steps).Select(k => At(low + (((k / Steps) + 0.5) * along), left + (((k % Steps) + 0.5) * across))).Where(s => s.Reach > 0).OrderByDescending(s => s.Reach).ToList();
        var seeds = new List<Seed>();
        while (seeds.Count < MostSeeds && lattice.Count > 0)
        {
            var best = lattice[0];
            for (double a = along / 2, c = across / 2; c > across * Finest; a /= 2, c /= 2)
            {
                for (var k = 0; k < 9; k++)
                {
                    var near = At(best.Ahead + (((k / 3) - 1) * a), best.Right + (((k % 3) - 1) * c));
                    if (near.Reach > best.Reach) best = near;
                }
            }

            seeds.Add(best);
            lattice.RemoveAll(s => double.Hypot(s.Ahead - best.Ahead, s.Right - best.Right) <= Math.Max(best.Reach, across));
        }

        return [.. seeds.Select(s => new PlanePoint((s.Ahead * sin) + (s.Right * cos), (s.Ahead * cos) - (s.Right * sin)))];
    }

    private const double Finest = 1.0 / 256; // of a step of the lattice

    private readonly record struct Seed(double Ahead, double Right, double Reach);

    // To the nearest edge; below zero outside.
    private static double Inside(PlanePart part, PlanePoint place)
    {
        var (inside, nearest) = (false, double.PositiveInfinity);
        foreach (var ring in part.Holes.Prepend(part.Outer))
        {
            for (int i = 0, j = ring.Length - 1; i < ring.Length; j = i++)
            {
                var (a, b) = (ring[i], ring[j]);
                if ((a.North > place.North) != (b.North > place.North) && place.East < ((b.East - a.East) * (place.North - a.North) / (b.North - a.North)) + a.East) inside = !inside;
                var at = NearestOn(a, b, 0, 1, place);
                nearest = Math.Min(nearest, Squared(at, place));
            }
        }

        return inside ? Math.Sqrt(nearest) : -Math.Sqrt(nearest);
    }

    // Of all edges within the figure the place nearest to where it grew from.
    private static PlanePoint? Nearest(PlanePart part, PlanePoint[] figure, PlanePoint from)
    {
        PlanePoint? found = null;
        var nearest = double.PositiveInfinity;
        foreach (var ring in part.Holes.Prepend(part.Outer))
        {
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
                if (Within(figure, a, b) is not { } within) continue;
                var at = NearestOn(a, b, within.From, within.To, from);
                var squared = Squared(at, from);
                if (squared < nearest) (found, nearest) = (at, squared);
            }
        }

        return found;
    }

    // The share of an edge that lies inside, a hair off every side of the figure; none where it only touches.
    private static (double From, double To)? Within(PlanePoint[] figure, PlanePoint a, PlanePoint b)
    {
        var (from, to) = (0.0, 1.0);
        for (var i = 0; i < figure.Length; i++)
        {
            var (p, q) = (figure[i], figure[(i + 1) % figure.Length]);
            double east = q.East - p.East, north = q.North - p.North, side = Math.Sqrt((east * east) + (north * north));
            if (side <= Hair) continue;
            var (atA, atB) = (Left(a) - Hair, Left(b) - Hair);
            if (atA <= 0 && atB <= 0) return null;
            if (atA < 0) from = Math.Max(from, atA / (atA - atB));
            else if (atB < 0) to = Math.Min(to, atA / (atA - atB));
            if (from >= to) return null;
            double Left(PlanePoint c) => ((east * (c.North - p.North)) - (north * (c.East - p.East))) / side;
        }

        return (from, to);
    }

    private static PlanePoint NearestOn(PlanePoint a, PlanePoint b, double from, double to, PlanePoint place)
    {
        double east = b.East - a.East, north = b.North - a.North, length = (east * east) + (north * north);
        var share = length > 0 ? Math.Clamp((((place.East - a.East) * east) + ((place.North - a.North) * north)) / length, from, to) : 0;
        return new PlanePoint(a.East + (share * east), a.North + (share * north));
    }

    private static double Squared(PlanePoint a, PlanePoint b) => ((a.East - b.East) * (a.East - b.East)) + ((a.North - b.North) * (a.North - b.North));
}
