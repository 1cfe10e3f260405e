using Watersown.Land;
using Watersown.Shapes;

namespace Watersown.Flight;

/// <summary>The farm's plane, seen from the middle of one field: meters east and north of there.</summary>
public sealed class MapPlane
{
    private readonly LocalPlane plane;
    private readonly PlanePoint origin;

    public MapPlane(LocalPlane plane, GeoPoint middle) => (this.plane, origin) = (plane, plane.ToPlane(middle));

    /// <summary>A place on the plane.</summary>
    public PlanePoint Place(GeoPoint point)
    {
        var place = plane.ToPlane(point);
        return new PlanePoint(place.East - origin.East, place.North - origin.North);
    }

    /// <summary>A place of the plane back on the ground.</summary>
    public GeoPoint OnGround(PlanePoint point) => plane.ToPlace(new PlanePoint(point.East + origin.East, point.North + origin.North));

    public ImmutableArray<PlanePoint> Place(ImmutableArray<GeoPoint> points) => [.. points.Select(Place)];

    public ImmutableArray<PlanePart> Place(Boundary boundary) =>
        [.. boundary.Parts.Select(p => new PlanePart(Place(p.Outer), [.. p.Holes.Select(Place)]))];
}
