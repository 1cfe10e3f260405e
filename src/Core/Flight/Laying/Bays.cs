using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>A bay of an edge: where the land falls back from its outline.</summary>
/// <param name="Place">Of its deepest corner in the ring.</param>
/// <param name="Corner">That corner.</param>
/// <param name="Depth">From the straight way over its mouth, m.</param>
internal readonly record struct Bay(int Place, PlanePoint Corner, double Depth);

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

    /// <summary>Which way the edge runs before the deepest corner of a bay and after it, over a stretch that a swath can tell.</summary>
    public static ImmutableArray<Bearing> Ways(ImmutableArray<PlanePoint> ring, Bay bay, double stretch) =>
        [Way(ring, bay, -1, stretch), Way(ring, bay, 1, stretch)];

    private static Bay Between(ImmutableArray<PlanePoint> ring, int from, int to)
    {
        var (a, b) = (ring[from % ring.Length], ring[to % ring.Length]);
        double east = b.East - a.East, north = b.North - a.North, mouth = double.Hypot(east, north);
        var deepest = new Bay(from, a, -1);
        for (var i = from + 1; i < to; i++)
        {
            var p = ring[i % ring.Length];
            var depth = mouth > 0 ? Math.Abs((east * (p.North - a.North)) - (north * (p.East - a.East))) / mouth : double.Hypot(p.East - a.East, p.North - a.North);
            if (depth > deepest.Depth) deepest = new Bay(i % ring.Length, p, depth);
        }

        return deepest;
    }

    private static Bearing Way(ImmutableArray<PlanePoint> ring, Bay bay, int step, double stretch)
    {
        var at = bay.Corner;
        for (var i = 1; i < ring.Length; i++)
        {
            at = ring[(((bay.Place + (i * step)) % ring.Length) + ring.Length) % ring.Length];
            if (double.Hypot(at.East - bay.Corner.East, at.North - bay.Corner.North) >= stretch) break;
        }

        return Bearing.FromDegrees(Math.Atan2(at.East - bay.Corner.East, at.North - bay.Corner.North) * 180 / Math.PI);
    }
}
