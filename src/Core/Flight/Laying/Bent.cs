using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>
/// A bay or hole that is bent, as a ditch is, in straight pieces: strips over the pieces are together narrower than one strip
/// over it all. Pieces are told as figures without bays, which hold them.
/// </summary>
internal static class Bent
{
    private const int Deepest = 4;

    /// <summary>Left between two pieces, m: a strip more of this width for each piece covers all of it.</summary>
    public const double Thread = 2 * Hair;

    private const double Hair = 1e-6;

    public static IEnumerable<PlanePoint[]> Pieces(PlanePoint[] ring) => Pieces(ring, Deepest);

    private static IEnumerable<PlanePoint[]> Pieces(PlanePoint[] ring, int deepest)
    {
        var whole = BaylessFigure.Around(ring);
        var (least, best) = (BaylessFigure.Width(whole) * 0.98, (One: Array.Empty<PlanePoint>(), Other: Array.Empty<PlanePoint>()));
        if (deepest > 0 && ring.Length > 3)
        {
            foreach (var (corner, east, north) in Cuts(ring))
            {
                var (one, other) = (Side(ring, corner, east, north), Side(ring, corner, -east, -north));
                var width = BaylessFigure.Width(BaylessFigure.Around(one)) + BaylessFigure.Width(BaylessFigure.Around(other));
                if (width < least) (least, best) = (width, (one, other));
            }
        }

        return best.One.Length == 0 ? [whole] : Pieces(best.One, deepest - 1).Concat(Pieces(best.Other, deepest - 1));
    }

    // Along and across each side, through its far end.
    private static IEnumerable<(PlanePoint Corner, double East, double North)> Cuts(PlanePoint[] ring)
    {
        for (var i = 0; i < ring.Length; i++)
        {
            var (p, q) = (ring[i], ring[(i + 1) % ring.Length]);
            double east = q.East - p.East, north = q.North - p.North;
            if ((east * east) + (north * north) < 1) continue;
            yield return (q, east, north);
            yield return (q, -north, east);
            yield return (p, east, north);
            yield return (p, -north, east);
        }
    }

    // Corners to the left of the line, and where edges cross it; a hair off, so that an edge along it is no part of the side beyond it.
    private static PlanePoint[] Side(PlanePoint[] ring, PlanePoint on, double east, double north)
    {
        var length = double.Hypot(east, north);
        var through = new PlanePoint(on.East - (Hair * north / length), on.North + (Hair * east / length));
        var side = new List<PlanePoint>(ring.Length + 2);
        for (var i = 0; i < ring.Length; i++)
        {
            var (p, q) = (ring[i], ring[(i + 1) % ring.Length]);
            double a = (east * (p.North - through.North)) - (north * (p.East - through.East)), b = (east * (q.North - through.North)) - (north * (q.East - through.East));
            if (a >= 0) side.Add(p);
            if ((a > 0 && b < 0) || (a < 0 && b > 0)) side.Add(new PlanePoint(p.East + (a / (a - b) * (q.East - p.East)), p.North + (a / (a - b) * (q.North - p.North))));
        }

        return [.. side];
    }
}
