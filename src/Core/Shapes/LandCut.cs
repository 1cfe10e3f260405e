using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.OverlayNG;

namespace Watersown.Shapes;

/// <summary>Land cut and joined by the geometry package.</summary>
public static class LandCut
{
    // What is left of land that was cut along its own edge is a thread of no width; nobody flies over it.
    private const double LeastPiece = 1; // m²

    private static readonly GeometryFactory Factory = new(new PrecisionModel(PrecisionModels.Floating));

    /// <summary>Land on either side of a straight line: left of it looking along the direction, and right of it.</summary>
    [Source(nameof(Sources.Definition), "cut with the half plane on either side")]
    public static (ImmutableArray<PlanePart> Left, ImmutableArray<PlanePart> Right) Split(ImmutableArray<PlanePart> land, PlanePoint through, Bearing along)
    {
        var shape = ToShape(land);
        var reach = 4 * (shape.EnvelopeInternal.Diameter + shape.EnvelopeInternal.Distance(new Envelope(through.East, through.East, through.North, through.North)));
        var (sin, cos) = Math.SinCos(along.Radians);
        PlanePoint At(double ahead, double right) => new(through.East + (ahead * sin) + (right * cos), through.North + (ahead * cos) - (right * sin));
        var half = ToPolygon([At(-reach, 0), At(reach, 0), At(reach, reach), At(-reach, reach)]);
        return (FromShape(OverlayNGRobust.Overlay(shape, half, NetTopologySuite.Operation.Overlay.SpatialFunction.Difference)), FromShape(OverlayNGRobust.Overlay(shape, half, NetTopologySuite.Operation.Overlay.SpatialFunction.Intersection)));
    }

    /// <summary>Everything within reach of a place or of a line, told up to a thousandth too large.</summary>
    [Source(nameof(Sources.Definition), "round ends of straight pieces drawn outside the circle")]
    public static ImmutableArray<PlanePart> Around(ImmutableArray<PlanePoint> points, Length reach)
    {
        const int pieces = 16; // to a quarter circle
        Geometry shape = points.Length == 1
            ? Factory.CreatePoint(new Coordinate(points[0].East, points[0].North))
            : Factory.CreateLineString([.. points.Select(p => new Coordinate(p.East, p.North))]);
        return FromShape(shape.Buffer(reach.Meters / Math.Cos(Math.PI / (4 * pieces)), pieces));
    }

    /// <summary>Land without other land.</summary>
    [Source(nameof(Sources.Definition))]
    public static ImmutableArray<PlanePart> Minus(ImmutableArray<PlanePart> land, ImmutableArray<PlanePart> off) =>
        land.IsEmpty || off.IsEmpty ? land : FromShape(OverlayNGRobust.Overlay(ToShape(land), ToShape(off), NetTopologySuite.Operation.Overlay.SpatialFunction.Difference));

    private static ImmutableArray<PlanePart> FromShape(Geometry shape)
    {
        var parts = ImmutableArray.CreateBuilder<PlanePart>();
        for (var i = 0; i < shape.NumGeometries; i++)
        {
            if (shape.GetGeometryN(i) is Polygon polygon && polygon.Area > LeastPiece)
                parts.Add(new PlanePart(FromRing(polygon.ExteriorRing), [.. polygon.InteriorRings.Select(FromRing)]));
        }

        return parts.ToImmutable();
    }

    private static ImmutableArray<PlanePoint> FromRing(LineString ring) => [.. ring.Coordinates.SkipLast(1).Select(c => new PlanePoint(c.X, c.Y))];

    private static Geometry ToShape(ImmutableArray<PlanePart> land) =>
        land.Length == 1 ? ToPolygon(land[0].Outer, land[0].Holes) : Factory.CreateMultiPolygon([.. land.Select(p => ToPolygon(p.Outer, p.Holes))]);

    private static Polygon ToPolygon(ImmutableArray<PlanePoint> outer, ImmutableArray<ImmutableArray<PlanePoint>>? holes = null) =>
        Factory.CreatePolygon(ToRing(outer), [.. (holes ?? []).Where(h => h.Length > 2).Select(ToRing)]);

    private static LinearRing ToRing(ImmutableArray<PlanePoint> ring) => Factory.CreateLinearRing([.. ring.Append(ring[0]).Select(p => new Coordinate(p.East, p.North))]);
}
