using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>A corner at which the land bends back.</summary>
/// <param name="Ring">That it belongs to.</param>
/// <param name="Place">In the ring.</param>
/// <param name="Depth">How far a cut there could reach into what the bay takes, m.</param>
internal readonly record struct BayCorner(ImmutableArray<PlanePoint> Ring, int Place, double Depth);

/// <summary>A bay of an edge: where the land falls back from its outline.</summary>
/// <param name="Depth">From the straight way over its mouth, m.</param>
/// <param name="Corners">Where the land stands out into it.</param>
internal sealed record Bay(double Depth, ImmutableArray<BayCorner> Corners);

/// <summary>The bays of a ring.</summary>
internal static class Bays
{
    /// <summary>Deepest first.</summary>
    public static ImmutableArray<Bay> Of(ImmutableArray<PlanePoint> ring)
    {
        var corners = Hull.Of(ring).Corners.ToHashSet();
        var bays = ImmutableArray.CreateBuilder<Bay>();
        var start = Enumerable.Range(0, ring.Length).First(i => corners.Contains(ring[i]));
        for (var from = start; from < start + ring.Length;)
        {
            var to = from + 1;
            while (!corners.Contains(ring[to % ring.Length])) to++;
            if (to > from + 1) bays.Add(Between(ring, from, to));
            from = to;
        }

        return [.. bays.OrderByDescending(b => b.Depth)];
    }

    /// <summary>The corners of a hole, by how wide the hole is.</summary>
    public static IEnumerable<BayCorner> Round(ImmutableArray<PlanePoint> hole)
    {
        var around = BaylessFigure.Around(hole);
        var (width, corners) = (BaylessFigure.Width(around), around.ToHashSet());
        return Enumerable.Range(0, hole.Length).Where(i => corners.Contains(hole[i])).Select(i => new BayCorner(hole, i, width));
    }

    /// <summary>Which way the edge runs before a corner and after it, over a stretch that a swath can tell.</summary>
    public static ImmutableArray<Bearing> Ways(ImmutableArray<PlanePoint> ring, int place, double stretch) => [Way(ring, place, -1, stretch), Way(ring, place, 1, stretch)];

    private static Bay Between(ImmutableArray<PlanePoint> ring, int from, int to)
    {
        var (a, b) = (ring[from % ring.Length], ring[to % ring.Length]);
        double east = b.East - a.East, north = b.North - a.North, mouth = double.Hypot(east, north);
        double Depth(PlanePoint p) => mouth > 0 ? Math.Abs((east * (p.North - a.North)) - (north * (p.East - a.East))) / mouth : double.Hypot(p.East - a.East, p.North - a.North);

        // Where the bay itself has corners of its outline, the land has the corners that a cut goes through.
        var standing = BaylessFigure.Around(Enumerable.Range(from, to - from + 1).Select(i => ring[i % ring.Length])).ToHashSet();
        ImmutableArray<BayCorner> corners = [.. Enumerable.Range(from + 1, to - from - 1).Select(i => i % ring.Length).Where(i => standing.Contains(ring[i])).Select(i => new BayCorner(ring, i, Depth(ring[i])))];
        return new Bay(corners.IsEmpty ? 0 : corners.Max(c => c.Depth), corners);
    }

    private static Bearing Way(ImmutableArray<PlanePoint> ring, int place, int step, double stretch)
    {
        var (corner, at) = (ring[place], ring[place]);
        for (var i = 1; i < ring.Length; i++)
        {
            at = ring[(((place + (i * step)) % ring.Length) + ring.Length) % ring.Length];
            if (double.Hypot(at.East - corner.East, at.North - corner.North) >= stretch) break;
        }

        return Bearing.FromDegrees(Math.Atan2(at.East - corner.East, at.North - corner.North) * 180 / Math.PI);
    }
}
