using Watersown.Shapes;

namespace Watersown.Flight;

/// <summary>Plane geometry of a map: extents, distances, directions, and cutting to a frame.</summary>
public static class MapGeometry
{
    /// <summary>Distance from the origin.</summary>
    [Source(nameof(Sources.Definition))]
    public static Length Distance(PlanePoint point) => Length.FromMeters(double.Hypot(point.East, point.North));

    /// <summary>Direction from the origin, clockwise from north.</summary>
    [Source(nameof(Sources.Definition))]
    public static Bearing Direction(PlanePoint point) => Bearing.FromDegrees(Math.Atan2(point.East, point.North) * 180 / Math.PI);

    /// <summary>From the nearest edge of any part; nothing inside it.</summary>
    [Source(nameof(Sources.Definition))]
    public static Length ToEdge(ImmutableArray<PlanePart> parts, ImmutableArray<PlanePoint> points)
    {
        if (points.Any(p => Contains(parts, p))) return Length.Zero;
        var nearest = double.PositiveInfinity;
        foreach (var ring in parts.SelectMany(Rings))
        {
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
                for (var j = 0; j < Math.Max(1, points.Length - 1); j++)
                    nearest = Math.Min(nearest, Apart(a, b, points[j], points[Math.Min(j + 1, points.Length - 1)]));
            }
        }

        return Length.FromMeters(nearest);
    }

    /// <summary>Least distance between two pieces of land; nothing where they overlap or touch.</summary>
    [Source(nameof(Sources.Definition))]
    public static Length Between(ImmutableArray<PlanePart> parts, ImmutableArray<PlanePart> others)
    {
        var least = double.PositiveInfinity;
        foreach (var ring in others.Select(o => o.Outer).Where(r => r.Length > 0))
            least = Math.Min(least, ToEdge(parts, ring.Add(ring[0])).Meters);
        return Length.FromMeters(least);
    }

    /// <summary>The point of a line that lies nearest to the origin.</summary>
    [Source(nameof(Sources.Definition))]
    public static PlanePoint Nearest(ImmutableArray<PlanePoint> line)
    {
        var nearest = line[0];
        for (var i = 0; i + 1 < line.Length; i++)
        {
            var candidate = Foot(new PlanePoint(0, 0), line[i], line[i + 1]);
            if (Distance(candidate) < Distance(nearest)) nearest = candidate;
        }

        return nearest;
    }

    /// <summary>Inside a part and not inside one of its holes.</summary>
    [Source(nameof(Sources.Definition), "even-odd rule")]
    public static bool Contains(ImmutableArray<PlanePart> parts, PlanePoint point) =>
        parts.Any(p => Rings(p).Count(r => InRing(r, point)) % 2 == 1);

    /// <summary>Extent along a direction and across it.</summary>
    [Source(nameof(Sources.Definition))]
    public static (Length Along, Length Across) Extent(ImmutableArray<PlanePart> parts, Bearing direction)
    {
        var (sin, cos) = Math.SinCos(direction.Radians);
        var points = parts.SelectMany(p => p.Outer).ToArray();
        double[] along = [.. points.Select(p => (p.East * sin) + (p.North * cos))];
        double[] across = [.. points.Select(p => (p.East * cos) - (p.North * sin))];
        return (Length.FromMeters(along.Max() - along.Min()), Length.FromMeters(across.Max() - across.Min()));
    }

    /// <summary>A rectangle about the origin.</summary>
    [Source(nameof(Sources.Definition))]
    public static PlanePart Rectangle(Length along, Length across, Bearing direction)
    {
        var (sin, cos) = Math.SinCos(direction.Radians);
        PlanePoint Corner(double up, double right) =>
            new((up * along.Meters / 2 * sin) + (right * across.Meters / 2 * cos), (up * along.Meters / 2 * cos) - (right * across.Meters / 2 * sin));
        return new PlanePart([Corner(1, -1), Corner(1, 1), Corner(-1, 1), Corner(-1, -1)], []);
    }

    /// <summary>A disc about a point, as a ring of straight lines that leaves no part of it out.</summary>
    [Source(nameof(Sources.Definition))]
    public static PlanePart Disc(PlanePoint middle, Length radius)
    {
        const int Corners = 48;
        var corner = radius.Meters / Math.Cos(Math.PI / Corners);
        return new PlanePart([.. Enumerable.Range(0, Corners).Select(i => Math.SinCos(i * 2 * Math.PI / Corners)).Select(a => new PlanePoint(middle.East + (corner * a.Sin), middle.North + (corner * a.Cos)))], []);
    }

    internal static IEnumerable<ImmutableArray<PlanePoint>> Rings(PlanePart part) => part.Holes.Prepend(part.Outer).Where(r => r.Length > 0);

    private static bool InRing(ImmutableArray<PlanePoint> ring, PlanePoint p)
    {
        var inside = false;
        for (int i = 0, j = ring.Length - 1; i < ring.Length; j = i++)
        {
            var (a, b) = (ring[i], ring[j]);
            if (a.North > p.North != b.North > p.North && p.East < ((b.East - a.East) * (p.North - a.North) / (b.North - a.North)) + a.East) inside = !inside;
        }

        return inside;
    }

    // Least distance of two straight lines between points; a point is a line of no length.
    private static double Apart(PlanePoint a, PlanePoint b, PlanePoint c, PlanePoint d)
    {
        if (Cross(a, b, c) * Cross(a, b, d) < 0 && Cross(c, d, a) * Cross(c, d, b) < 0) return 0;
        return Math.Min(Math.Min(ToLine(a, c, d), ToLine(b, c, d)), Math.Min(ToLine(c, a, b), ToLine(d, a, b)));
    }

    private static double ToLine(PlanePoint p, PlanePoint a, PlanePoint b)
    {
        var foot = Foot(p, a, b);
        return double.Hypot(p.East - foot.East, p.North - foot.North);
    }

    // The point of the straight line from a to b that lies nearest to p.
    private static PlanePoint Foot(PlanePoint p, PlanePoint a, PlanePoint b)
    {
        double x = b.East - a.East, y = b.North - a.North, square = (x * x) + (y * y);
        var share = square <= 0 ? 0 : Math.Clamp((((p.East - a.East) * x) + ((p.North - a.North) * y)) / square, 0, 1);
        return new PlanePoint(a.East + (share * x), a.North + (share * y));
    }

    private static double Cross(PlanePoint a, PlanePoint b, PlanePoint p) =>
        ((b.East - a.East) * (p.North - a.North)) - ((b.North - a.North) * (p.East - a.East));
}
