using Watersown.Shapes;

namespace Watersown.Land;

/// <summary>What a boundary encloses, measured on the ellipsoid with no map projection in between.</summary>
public static class GeodesicArea
{
    /// <summary>The land inside: every part, less its holes. Either way round of a ring gives the same.</summary>
    [Source(nameof(Sources.Karney2013), "section 6")]
    public static Area Of(Boundary boundary)
    {
        var sum = Area.Zero;
        foreach (var part in boundary.Parts)
        {
            sum += OfRing(part.Outer);
            foreach (var hole in part.Holes) sum -= OfRing(hole);
        }

        return sum;
    }

    /// <summary>The land inside one ring, whichever way it runs.</summary>
    [Source(nameof(Sources.Karney2013), "section 6")]
    public static Area OfRing(ImmutableArray<GeoPoint> ring) =>
        Area.FromSquareMeters(Math.Abs(Measure(ring).SignedArea.SquareMeters));

    /// <summary>The length of every edge, those around holes included.</summary>
    [Source(nameof(Sources.Karney2013), "section 4")]
    public static Length Perimeter(Boundary boundary)
    {
        var sum = Length.Zero;
        foreach (var part in boundary.Parts)
        {
            sum += Measure(part.Outer).Perimeter;
            foreach (var hole in part.Holes) sum += Measure(hole).Perimeter;
        }

        return sum;
    }

    /// <summary>Area and length of one ring; the area is positive where it runs counter-clockwise.</summary>
    [Source(nameof(Sources.Karney2013), "section 6")]
    public static RingMeasure Measure(ImmutableArray<GeoPoint> ring) =>
        GeodesicRing.Measure([.. ring.Select(p => p.Latitude)], [.. ring.Select(p => p.Longitude)]);

    /// <summary>The shortest way between two places: its length and its directions.</summary>
    [Source(nameof(Sources.Karney2013), "section 4")]
    public static GeodesicWay Between(GeoPoint from, GeoPoint to) =>
        Geodesic.Between(from.Latitude, from.Longitude, to.Latitude, to.Longitude);
}
