using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using NetTopologySuite.Operation.Union;
using Watersown.Shapes;

namespace Watersown.Flight.Cover;

/// <summary>Areas of cells against the areas of the same swaths as shapes, buffered and joined by a geometry library.</summary>
public sealed class CoverageReference
{
    private static readonly GeometryFactory Factory = GeometryFactory.Default;

    private static readonly ImmutableArray<PlanePart> Land =
        [new PlanePart([new(0, 0), new(310, 20), new(380, 260), new(120, 330), new(-40, 180)], [[new(100, 100), new(150, 110), new(140, 160), new(90, 150)]])];

    [Theory]
    [InlineData(0, 0.4)]
    [InlineData(33, 0.4)]
    [InlineData(90, 0.6)]
    [InlineData(118, 0.8)]
    public void Cells_agree_with_buffered_and_joined_shapes_within_their_error(double heading, double noise)
    {
        const double Swath = 17;
        var runs = SomeFlight.Logged(Land, Swath, heading, noise);
        var shares = SomeFlight.Cover(Land, runs, Swath).Shares;
        Geometry[] swaths = [.. runs.Select(r => Line(r).Buffer(Swath / 2, new BufferParameters(8, EndCapStyle.Flat, JoinStyle.Mitre, 5)))];
        var field = Factory.CreatePolygon(Ring(Land[0].Outer), [.. Land[0].Holes.Select(Ring)]);
        var union = CascadedPolygonUnion.Union(swaths);
        var twice = CascadedPolygonUnion.Union([.. swaths.SelectMany((a, i) => swaths[(i + 1)..].Select(b => Both(a, b))).Where(g => !g.IsEmpty)]);
        var (covered, overlapped) = (Both(union, field).Area, Both(twice, field).Area);

        // The error told is the worst that edges can do; what they do is a small part of it, of either sign.
        Assert.Equal(field.Area, shares.Field.SquareMeters, 5e-4 * field.Area);
        Assert.Equal(field.Area - covered, shares.Skipped.Area.SquareMeters, shares.Skipped.Error.SquareMeters / 5);
        Assert.Equal(overlapped, shares.Overlapped.Area.SquareMeters, shares.Overlapped.Error.SquareMeters / 5);
        Assert.Equal(covered - overlapped, shares.Single.Area.SquareMeters, shares.Single.Error.SquareMeters / 5);
        Assert.Equal(swaths.Sum(s => s.Area), shares.Swept.SquareMeters, 1e-3 * shares.Swept.SquareMeters);
    }

    private static LineString Line(ImmutableArray<PlanePoint> run) => Factory.CreateLineString([.. run.Select(p => new Coordinate(p.East, p.North))]);

    private static LinearRing Ring(ImmutableArray<PlanePoint> ring) => Factory.CreateLinearRing([.. ring.Append(ring[0]).Select(p => new Coordinate(p.East, p.North))]);

    private static Geometry Both(Geometry a, Geometry b) => OverlayNGRobust.Overlay(a, b, SpatialFunction.Intersection);
}
