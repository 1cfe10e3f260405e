namespace Watersown.Shapes;

/// <summary>How wide a figure is across a direction.</summary>
/// <param name="Heading">The direction, 0 up to but not including 180.</param>
/// <param name="Width">Extent square to it.</param>
public sealed record WidthAcross(Bearing Heading, Length Width);

/// <summary>The convex outline of points on a plane, and how narrow it is.</summary>
public sealed class Hull
{
    // Widths closer than this share of each other are one and the same; the smaller heading is then taken.
    private const double Tie = 1e-9;
    private readonly PlanePoint[] corners;

    private Hull(PlanePoint[] corners) => this.corners = corners;

    /// <summary>Corners, counter-clockwise, none on a straight side.</summary>
    public ImmutableArray<PlanePoint> Corners => [.. corners];

    /// <summary>Land inside the outline.</summary>
    [Source(nameof(Sources.Definition))]
    public Area Area
    {
        get
        {
            var twice = 0.0;
            for (var i = 1; i + 1 < corners.Length; i++) twice += Cross(corners[0], corners[i], corners[i + 1]);
            return Area.FromSquareMeters(twice / 2);
        }
    }

    /// <summary>From corner to corner, the two farthest apart.</summary>
    [Source(nameof(Sources.Definition))]
    public Length Longest
    {
        get
        {
            var longest = 0.0;
            foreach (var a in corners)
            {
                foreach (var b in corners) longest = Math.Max(longest, Turn.Hypot(a.East - b.East, a.North - b.North));
            }

            return Length.FromMeters(longest);
        }
    }

    /// <summary>The outline of points; at least three that do not lie on one line.</summary>
    /// <exception cref="ArgumentException">All points lie on one line.</exception>
    [Source(nameof(Sources.Definition), "monotone chains, left to right and back")]
    public static Hull Of(IEnumerable<PlanePoint> points)
    {
        PlanePoint[] sorted = [.. points.Distinct().OrderBy(p => p.East).ThenBy(p => p.North)];
        List<PlanePoint> chain = [.. Chain(sorted), .. Chain([.. sorted.AsEnumerable().Reverse()])];
        if (chain.Count < 3) throw new ArgumentException("Points on one line enclose nothing.", nameof(points));
        return new Hull([.. chain]);
    }

    /// <summary>Extent square to a direction.</summary>
    [Source(nameof(Sources.Definition))]
    public Length Across(Bearing heading)
    {
        var offsets = corners.Select(c => c.RightOf(heading)).ToList();
        return Length.FromMeters(offsets.Max() - offsets.Min());
    }

    /// <summary>
    /// The direction across which the outline is narrowest. One of the two closest parallel lines that hold it lies along
    /// a side, so each side is tried once against the corner farthest from it.
    /// </summary>
    [Source(nameof(Sources.WidthTheorem))]
    public WidthAcross Narrowest()
    {
        var best = (Heading: 0.0, Width: double.PositiveInfinity);
        var far = 1;
        for (var i = 0; i < corners.Length; i++)
        {
            var (from, to) = (corners[i], corners[(i + 1) % corners.Length]);
            while (Cross(from, to, corners[(far + 1) % corners.Length]) > Cross(from, to, corners[far])) far = (far + 1) % corners.Length;
            var (east, north) = (to.East - from.East, to.North - from.North);
            var width = Cross(from, to, corners[far]) / Turn.Hypot(east, north);
            var heading = Math.Atan2(east, north) * 180 / Math.PI;
            if (heading < 0) heading += 180;
            if (heading >= 180) heading -= 180;
            if (width < best.Width * (1 - Tie) || (width <= best.Width * (1 + Tie) && heading < best.Heading)) best = (heading, width);
        }

        return new WidthAcross(Bearing.FromDegrees(best.Heading), Length.FromMeters(best.Width));
    }

    private static List<PlanePoint> Chain(PlanePoint[] sorted)
    {
        var chain = new List<PlanePoint>();
        foreach (var point in sorted)
        {
            while (chain.Count >= 2 && Cross(chain[^2], chain[^1], point) <= 0) chain.RemoveAt(chain.Count - 1);
            chain.Add(point);
        }

        // The last corner begins the other chain.
        chain.RemoveAt(chain.Count - 1);
        return chain;
    }

    // Twice the area of the triangle, positive where it turns left.
    private static double Cross(PlanePoint a, PlanePoint b, PlanePoint c) =>
        ((b.East - a.East) * (c.North - a.North)) - ((b.North - a.North) * (c.East - a.East));
}
