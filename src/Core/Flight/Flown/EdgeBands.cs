using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>The edge of a field sorted into bands from south to north, so that few edges are looked at for each place.</summary>
internal sealed class EdgeBands
{
    private const int Bands = 256;

    private readonly List<(PlanePoint From, PlanePoint To)>[] bands = new List<(PlanePoint, PlanePoint)>[Bands];
    private readonly List<double> cuts = [];
    private readonly double south;
    private readonly double north;
    private readonly double west;
    private readonly double east;
    private readonly double height;

    public EdgeBands(ImmutableArray<PlanePart> field)
    {
        ImmutableArray<PlanePoint> corners = [.. field.SelectMany(p => p.Outer)];
        (south, north) = (corners.Min(c => c.North), corners.Max(c => c.North));
        (west, east) = (corners.Min(c => c.East), corners.Max(c => c.East));
        height = Math.Max((north - south) / Bands, 1e-9);
        for (var i = 0; i < Bands; i++) bands[i] = [];
        foreach (var ring in field.SelectMany(p => p.Holes.Prepend(p.Outer)))
        {
            for (var i = 0; i < ring.Length; i++) Lay(ring[i], ring[(i + 1) % ring.Length]);
        }
    }

    /// <summary>Inside the field and in none of its holes.</summary>
    public bool Holds(PlanePoint at)
    {
        if (!(at.North >= south && at.North <= north && at.East >= west && at.East <= east)) return false;
        var inside = false;
        foreach (var (from, to) in bands[BandOf(at.North)])
        {
            if (from.North > at.North == to.North > at.North) continue;
            if (at.East < from.East + ((at.North - from.North) / (to.North - from.North) * (to.East - from.East))) inside = !inside;
        }

        return inside;
    }

    /// <summary>The stretches of a straight step that lie inside, as shares of it from its beginning, in order.</summary>
    public void Inside(PlanePoint from, PlanePoint to, List<(double From, double To)> into)
    {
        if (Math.Max(from.North, to.North) < south || Math.Min(from.North, to.North) > north || Math.Max(from.East, to.East) < west || Math.Min(from.East, to.East) > east) return;
        cuts.Clear();
        cuts.Add(0);
        cuts.Add(1);
        var (low, high) = (BandOf(Math.Min(from.North, to.North)), BandOf(Math.Max(from.North, to.North)));
        for (var band = low; band <= high; band++)
        {
            foreach (var edge in bands[band])
            {
                if (Cross(from, to, edge.From, edge.To) is { } share) cuts.Add(share);
            }
        }

        cuts.Sort();
        for (var i = 1; i < cuts.Count; i++)
        {
            if (cuts[i] > cuts[i - 1] && Holds(Between(from, to, (cuts[i - 1] + cuts[i]) / 2))) into.Add((cuts[i - 1], cuts[i]));
        }
    }

    public static PlanePoint Between(PlanePoint from, PlanePoint to, double share) =>
        new(from.East + (share * (to.East - from.East)), from.North + (share * (to.North - from.North)));

    private static double? Cross(PlanePoint from, PlanePoint to, PlanePoint a, PlanePoint b)
    {
        var (ux, uy, vx, vy) = (to.East - from.East, to.North - from.North, b.East - a.East, b.North - a.North);
        var across = (ux * vy) - (uy * vx);
        if (across == 0) return null;
        var (wx, wy) = (a.East - from.East, a.North - from.North);
        var (along, on) = (((wx * vy) - (wy * vx)) / across, ((wx * uy) - (wy * ux)) / across);
        return along is > 0 and < 1 && on is >= 0 and <= 1 ? along : null;
    }

    private int BandOf(double at) => (int)Math.Clamp((at - south) / height, 0, Bands - 1);

    private void Lay(PlanePoint from, PlanePoint to)
    {
        var (low, high) = (BandOf(Math.Min(from.North, to.North)), BandOf(Math.Max(from.North, to.North)));
        for (var band = low; band <= high; band++) bands[band].Add((from, to));
    }
}
