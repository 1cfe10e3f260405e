using Watersown.Flight;
using Watersown.Shapes;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>The window of paper that a map is seen through: north up, one scale both ways, nothing outside it.</summary>
internal sealed class MapFrame
{
    /// <summary>Paper kept free inside the frame, points.</summary>
    private const double Inset = 6;

    private readonly double middleEast;
    private readonly double middleNorth;

    /// <summary>Fits land into a frame with some of its surroundings.</summary>
    /// <param name="parts">What must be seen whole.</param>
    /// <param name="width">Width of the frame, points.</param>
    /// <param name="height">Height of the frame, points.</param>
    public MapFrame(ImmutableArray<PlanePart> parts, double width, double height)
    {
        var points = parts.SelectMany(p => p.Outer).ToArray();
        double west = points.Min(p => p.East), east = points.Max(p => p.East), south = points.Min(p => p.North), north = points.Max(p => p.North);
        (Width, Height) = (width, height);
        middleEast = (west + east) / 2;
        middleNorth = (south + north) / 2;

        // A tenth of the field's size, and never less than 60 m, of what lies round it.
        var margin = Math.Max(60, 0.1 * Math.Max(east - west, north - south));
        PointsPerMeter = Math.Min((width - (2 * Inset)) / (east - west + (2 * margin)), (height - (2 * Inset)) / (north - south + (2 * margin)));
    }

    public double Width { get; }

    public double Height { get; }

    public double PointsPerMeter { get; }

    public PaperPoint Middle => new(Width / 2, Height / 2);

    public PaperPoint Place(PlanePoint point) =>
        new((Width / 2) + ((point.East - middleEast) * PointsPerMeter), (Height / 2) - ((point.North - middleNorth) * PointsPerMeter));

    /// <summary>The place that a point of the paper shows.</summary>
    public PlanePoint Under(PaperPoint point) =>
        new(middleEast + ((point.X - (Width / 2)) / PointsPerMeter), middleNorth - ((point.Y - (Height / 2)) / PointsPerMeter));

    public ImmutableArray<PaperPoint> Place(IEnumerable<PlanePoint> points) => [.. points.Select(Place)];

    public bool Holds(PaperPoint p, double inset = 0) => p.X >= inset && p.Y >= inset && p.X <= Width - inset && p.Y <= Height - inset;

    /// <summary>Rings of land cut to the frame; rings wholly outside fall away.</summary>
    public ImmutableArray<ImmutableArray<PaperPoint>> Cut(IEnumerable<PlanePart> parts) =>
        [.. parts.SelectMany(MapGeometry.Rings).Select(r => CutRing(Place(r))).Where(r => r.Length >= 3)];

    /// <summary>The pieces of a line inside the frame.</summary>
    public ImmutableArray<ImmutableArray<PaperPoint>> CutLine(IEnumerable<PlanePoint> line)
    {
        var points = Place(line);
        var pieces = ImmutableArray.CreateBuilder<ImmutableArray<PaperPoint>>();
        for (var i = 0; i + 1 < points.Length; i++)
        {
            if (CutSegment(points[i], points[i + 1]) is { } piece) pieces.Add([piece.From, piece.To]);
        }

        return pieces.ToImmutable();
    }

    /// <summary>Where a ray from the middle toward a point leaves the frame, some points inside it.</summary>
    public PaperPoint Edge(PaperPoint toward, double inset)
    {
        double x = toward.X - Middle.X, y = toward.Y - Middle.Y;
        var share = Math.Min(((Width / 2) - inset) / Math.Max(1e-9, Math.Abs(x)), ((Height / 2) - inset) / Math.Max(1e-9, Math.Abs(y)));
        return new PaperPoint(Middle.X + (x * share), Middle.Y + (y * share));
    }

    // Sutherland and Hodgman: one side of the frame after the other.
    private ImmutableArray<PaperPoint> CutRing(ImmutableArray<PaperPoint> ring)
    {
        ring = CutSide(ring, p => p.X, (p, share, q) => new PaperPoint(0, p.Y + (share * (q.Y - p.Y))), 0, keepAbove: true);
        ring = CutSide(ring, p => p.X, (p, share, q) => new PaperPoint(Width, p.Y + (share * (q.Y - p.Y))), Width, keepAbove: false);
        ring = CutSide(ring, p => p.Y, (p, share, q) => new PaperPoint(p.X + (share * (q.X - p.X)), 0), 0, keepAbove: true);
        return CutSide(ring, p => p.Y, (p, share, q) => new PaperPoint(p.X + (share * (q.X - p.X)), Height), Height, keepAbove: false);
    }

    private static ImmutableArray<PaperPoint> CutSide(
        ImmutableArray<PaperPoint> ring, Func<PaperPoint, double> along, Func<PaperPoint, double, PaperPoint, PaperPoint> meet, double limit, bool keepAbove)
    {
        var kept = ImmutableArray.CreateBuilder<PaperPoint>();
        for (var i = 0; i < ring.Length; i++)
        {
            var (p, q) = (ring[i], ring[(i + 1) % ring.Length]);
            bool here = keepAbove ? along(p) >= limit : along(p) <= limit, there = keepAbove ? along(q) >= limit : along(q) <= limit;
            if (here) kept.Add(p);
            if (here != there) kept.Add(meet(p, (limit - along(p)) / (along(q) - along(p)), q));
        }

        return kept.ToImmutable();
    }

    // Liang and Barsky.
    private (PaperPoint From, PaperPoint To)? CutSegment(PaperPoint a, PaperPoint b)
    {
        double start = 0, end = 1, x = b.X - a.X, y = b.Y - a.Y;
        foreach (var (p, q) in new[] { (-x, a.X), (x, Width - a.X), (-y, a.Y), (y, Height - a.Y) })
        {
            if (p == 0 && q < 0) return null;
            if (p < 0) start = Math.Max(start, q / p);
            if (p > 0) end = Math.Min(end, q / p);
        }

        return start < end ? (new(a.X + (start * x), a.Y + (start * y)), new(a.X + (end * x), a.Y + (end * y))) : null;
    }
}
