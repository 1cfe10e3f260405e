using Watersown.Land;

namespace Watersown.Documents.Handout;

/// <summary>Rings in the order that formats on the map want: outer counterclockwise, holes clockwise (RFC 7946, KML).</summary>
internal static class HandoutRings
{
    /// <summary>The same land, its rings turned.</summary>
    public static Boundary Turned(Boundary land) =>
        new([.. land.Parts.Select(p => new BoundaryPart(Turned(p.Outer, clockwise: false), [.. p.Holes.Select(h => Turned(h, clockwise: true))]))]);

    /// <summary>Rings of a piece, turned; the first corner again at the end of each.</summary>
    public static ImmutableArray<ImmutableArray<GeoPoint>> Closed(BoundaryPart part) =>
        [Closed(Turned(part.Outer, clockwise: false)), .. part.Holes.Select(h => Closed(Turned(h, clockwise: true)))];

    private static ImmutableArray<GeoPoint> Closed(ImmutableArray<GeoPoint> ring) => ring.Add(ring[0]);

    private static ImmutableArray<GeoPoint> Turned(ImmutableArray<GeoPoint> ring, bool clockwise) => IsClockwise(ring) == clockwise ? ring : [.. ring.Reverse()];

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
