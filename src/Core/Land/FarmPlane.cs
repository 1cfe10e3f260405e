using Watersown.Shapes;

namespace Watersown.Land;

/// <summary>Lays the farm's places on one plane, and takes them back. One plane for a farm: never one for each field.</summary>
public static class FarmPlane
{
    /// <summary>The plane with its middle at a place, such as the strip.</summary>
    [Source(nameof(Sources.Karney2011), "section 4")]
    public static LocalPlane At(GeoPoint middle) => LocalPlane.At(middle.Latitude, middle.Longitude);

    /// <summary>The plane over the middle of everything that a boundary reaches.</summary>
    [Source(nameof(Sources.Karney2011), "section 4")]
    public static LocalPlane Over(Boundary boundary) => Over([boundary]);

    /// <summary>The plane over the middle of everything that these boundaries reach.</summary>
    /// <exception cref="ArgumentException">There is no corner.</exception>
    [Source(nameof(Sources.Karney2011), "section 4")]
    public static LocalPlane Over(IEnumerable<Boundary> boundaries)
    {
        ImmutableArray<GeoPoint> corners = [.. boundaries.SelectMany(b => b.Parts).SelectMany(p => p.Outer)];
        if (corners.IsEmpty) throw new ArgumentException("A plane lies over at least one corner.", nameof(boundaries));
        var first = corners[0].Longitude;
        var steps = corners.Select(c => Geodesic.LongitudeStep(first, c.Longitude)).ToList();
        var latitude = (corners.Min(c => c.Latitude) + corners.Max(c => c.Latitude)) / 2;
        return LocalPlane.At(latitude, first + ((steps.Min() + steps.Max()) / 2));
    }

    public static PlanePoint ToPlane(this LocalPlane plane, GeoPoint point) => plane.ToPlane(point.Latitude, point.Longitude);

    public static ImmutableArray<PlanePoint> ToPlane(this LocalPlane plane, ImmutableArray<GeoPoint> ring) => [.. ring.Select(plane.ToPlane)];

    public static PlanePart ToPlane(this LocalPlane plane, BoundaryPart part) =>
        new(plane.ToPlane(part.Outer), [.. part.Holes.Select(plane.ToPlane)]);

    public static ImmutableArray<PlanePart> ToPlane(this LocalPlane plane, Boundary boundary) => [.. boundary.Parts.Select(plane.ToPlane)];

    public static GeoPoint ToPlace(this LocalPlane plane, PlanePoint point)
    {
        var (latitude, longitude) = plane.ToEarth(point);
        return new GeoPoint(latitude, longitude);
    }
}
