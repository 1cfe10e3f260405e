using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Index.Strtree;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using NetTopologySuite.Operation.Union;

namespace Watersown.Shapes;

/// <summary>Land under shapes laid over one another: under none, one, or several. Exact, but slower than cells by a thousand times.</summary>
/// <param name="None">Under none.</param>
/// <param name="Once">Under exactly one.</param>
/// <param name="More">Under two or more; ground that one shape alone covers twice counts once.</param>
public sealed record LayerAreas(Area None, Area Once, Area More)
{
    private static readonly GeometryFactory Factory = new(new PrecisionModel(PrecisionModels.Floating));

    /// <summary>The areas, by the geometry package: all shapes joined, and every two of them that meet cut with each other.</summary>
    /// <param name="land">The land.</param>
    /// <param name="shapes">Rings, not closed; one that crosses itself covers all that it runs round.</param>
    [Source(nameof(Sources.Definition), "land less the union of all; union of what every two have in common")]
    public static LayerAreas Of(ImmutableArray<PlanePart> land, ImmutableArray<ImmutableArray<PlanePoint>> shapes)
    {
        var ground = Joined([.. land.Select(p => Whole(p.Outer, p.Holes))]);
        Geometry[] laid = [.. shapes.Where(s => s.Length > 2).Select(s => Whole(s, [])).Where(g => !g.IsEmpty)];
        var tree = new STRtree<int>();
        for (var i = 0; i < laid.Length; i++) tree.Insert(laid[i].EnvelopeInternal, i);
        var common = new List<Geometry>();
        for (var i = 0; i < laid.Length; i++)
        {
            foreach (var other in tree.Query(laid[i].EnvelopeInternal).Where(o => o > i).Order())
            {
                var both = OverlayNGRobust.Overlay(laid[i], laid[other], SpatialFunction.Intersection);
                if (both.Area > 0) common.Add(both);
            }
        }

        var (covered, more) = (On(ground, laid), On(ground, [.. common]));
        return new LayerAreas(Meters(ground.Area - covered), Meters(covered - more), Meters(more));
    }

    private static double On(Geometry ground, Geometry[] shapes) => shapes.Length == 0 ? 0 : OverlayNGRobust.Overlay(Joined(shapes), ground, SpatialFunction.Intersection).Area;

    private static Geometry Joined(Geometry[] shapes) => CascadedPolygonUnion.Union(shapes) ?? Factory.CreatePolygon();

    private static Geometry Whole(ImmutableArray<PlanePoint> outer, ImmutableArray<ImmutableArray<PlanePoint>> holes)
    {
        var shape = Factory.CreatePolygon(Ring(outer), [.. holes.Where(h => h.Length > 2).Select(Ring)]);
        return shape.IsValid ? shape : GeometryFixer.Fix(shape);
    }

    private static LinearRing Ring(ImmutableArray<PlanePoint> ring) => Factory.CreateLinearRing([.. ring.Append(ring[0]).Select(p => new Coordinate(p.East, p.North))]);

    private static Area Meters(double squareMeters) => Area.FromSquareMeters(Math.Max(0, squareMeters));
}
