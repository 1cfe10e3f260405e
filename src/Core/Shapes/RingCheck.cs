using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using NetTopologySuite.Operation.Valid;

namespace Watersown.Shapes;

/// <summary>What can be wrong with how rings lie.</summary>
public enum RingFaultKind
{
    /// <summary>The edge runs through itself.</summary>
    CrossesItself,

    /// <summary>The edge comes back to one of its own corners, as in a figure of eight.</summary>
    TouchesItself,

    /// <summary>A hole reaches out of the outer ring, or lies outside it.</summary>
    HoleOutside,

    /// <summary>Two holes cross, or one lies in the other, or together they cut the land in two.</summary>
    HolesOverlap,

    /// <summary>Two pieces of one boundary cover the same ground.</summary>
    PartsOverlap,
}

/// <summary>One thing wrong, and where.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="At">Where it shows.</param>
/// <param name="Part">Which piece, from 0.</param>
/// <param name="Hole">Which hole of it, from 0; none for the outer ring.</param>
public sealed record RingFault(RingFaultKind Kind, PlanePoint At, int Part, int? Hole);

/// <summary>Whether rings enclose land at all: no edge through itself, holes inside, pieces apart.</summary>
public static class RingCheck
{
    // Pieces drawn along one shared line overlap by what rounding leaves between the two drawings.
    private const double OverlapShare = 1e-4;

    private static readonly GeometryFactory Factory = new(new PrecisionModel(PrecisionModels.Floating));

    /// <summary>Everything wrong, ring by ring; how rings lie to each other is only looked at once each is sound.</summary>
    [Source(nameof(Sources.Definition), "simple features: a valid polygon")]
    public static ImmutableArray<RingFault> Find(ImmutableArray<PlanePart> parts)
    {
        var faults = ImmutableArray.CreateBuilder<RingFault>();
        for (var i = 0; i < parts.Length; i++)
        {
            AddRingFault(faults, parts[i].Outer, i, null);
            for (var h = 0; h < parts[i].Holes.Length; h++) AddRingFault(faults, parts[i].Holes[h], i, h);
        }

        if (faults.Count > 0) return faults.ToImmutable();
        var polygons = parts.Select(ToPolygon).ToList();
        for (var i = 0; i < polygons.Count; i++) AddHoleFaults(faults, parts[i], polygons[i], i);
        if (faults.Count > 0) return faults.ToImmutable();
        for (var i = 1; i < polygons.Count; i++) AddOverlap(faults, polygons, i);
        return faults.ToImmutable();
    }

    private static void AddRingFault(ImmutableArray<RingFault>.Builder faults, ImmutableArray<PlanePoint> ring, int part, int? hole)
    {
        var valid = new IsValidOp(Factory.CreatePolygon(ToRing(ring)));
        if (valid.ValidationError is not { } error) return;
        var kind = error.ErrorType == TopologyValidationErrors.RingSelfIntersection ? RingFaultKind.TouchesItself : RingFaultKind.CrossesItself;
        faults.Add(new RingFault(kind, ToPoint(error.Coordinate), part, hole));
    }

    private static void AddHoleFaults(ImmutableArray<RingFault>.Builder faults, PlanePart part, Polygon polygon, int index)
    {
        if (part.Holes.IsEmpty) return;
        var outer = Factory.CreatePolygon(ToRing(part.Outer));
        for (var h = 0; h < part.Holes.Length; h++)
        {
            var alone = new IsValidOp(Factory.CreatePolygon(ToRing(part.Outer), [ToRing(part.Holes[h])]));
            if (alone.ValidationError is { } error)
                faults.Add(new RingFault(RingFaultKind.HoleOutside, Place(outer, part.Holes[h], error.Coordinate), index, h));
        }

        if (faults.Count == 0 && new IsValidOp(polygon).ValidationError is { } together)
            faults.Add(new RingFault(RingFaultKind.HolesOverlap, ToPoint(together.Coordinate), index, null));
    }

    // A corner of the hole that really lies outside says more than where the edges cross.
    private static PlanePoint Place(Polygon outer, ImmutableArray<PlanePoint> hole, Coordinate found)
    {
        foreach (var corner in hole)
        {
            if (!outer.Covers(Factory.CreatePoint(new Coordinate(corner.East, corner.North)))) return corner;
        }

        return ToPoint(found);
    }

    private static void AddOverlap(ImmutableArray<RingFault>.Builder faults, List<Polygon> polygons, int index)
    {
        for (var before = 0; before < index; before++)
        {
            var (a, b) = (polygons[before], polygons[index]);
            if (!a.EnvelopeInternal.Intersects(b.EnvelopeInternal)) continue;
            var common = OverlayNGRobust.Overlay(a, b, SpatialFunction.Intersection);
            if (common.Area <= OverlapShare * Math.Min(a.Area, b.Area)) continue;
            faults.Add(new RingFault(RingFaultKind.PartsOverlap, ToPoint(common.InteriorPoint.Coordinate), index, null));
            return;
        }
    }

    private static Polygon ToPolygon(PlanePart part) => Factory.CreatePolygon(ToRing(part.Outer), [.. part.Holes.Select(ToRing)]);

    private static LinearRing ToRing(ImmutableArray<PlanePoint> ring) =>
        Factory.CreateLinearRing([.. ring.Append(ring[0]).Select(p => new Coordinate(p.East, p.North))]);

    private static PlanePoint ToPoint(Coordinate coordinate) => new(coordinate.X, coordinate.Y);
}
