using Watersown.Land;

namespace Watersown.Documents.Handout;

/// <summary>Rings in the order that a format wants, closed.</summary>
internal static class HandoutRings
{
    /// <summary>Outer ring counterclockwise and holes clockwise (RFC 7946, KML); the first corner again at the end.</summary>
    public static ImmutableArray<ImmutableArray<GeoPoint>> Counterclockwise(BoundaryPart part) =>
        [Closed(part.Outer, clockwise: false), .. part.Holes.Select(h => Closed(h, clockwise: true))];

    /// <summary>Outer ring clockwise and holes counterclockwise (shapefile).</summary>
    public static ImmutableArray<ImmutableArray<GeoPoint>> Clockwise(BoundaryPart part) =>
        [Closed(part.Outer, clockwise: true), .. part.Holes.Select(h => Closed(h, clockwise: false))];

    private static ImmutableArray<GeoPoint> Closed(ImmutableArray<GeoPoint> ring, bool clockwise)
    {
        var turned = IsClockwise(ring) == clockwise ? ring : [.. ring.Reverse()];
        return turned.Add(turned[0]);
    }

    // The shoelace sum on degrees has the sign of the true area for anything as small as a field.
    private static bool IsClockwise(ImmutableArray<GeoPoint> ring)
    {
        var sum = 0.0;
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
            sum += (b.Longitude - a.Longitude) * (b.Latitude + a.Latitude);
        }

        return sum > 0;
    }
}
