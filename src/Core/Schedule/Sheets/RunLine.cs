using Watersown.Flight;
using Watersown.Shapes;

namespace Watersown.Schedule.Sheets;

/// <summary>A straight run across a field, for the arrows of its map.</summary>
internal static class RunLine
{
    /// <summary>The longest stretch inside the field of a line along the run, so many meters to its right; a little shorter than the field.</summary>
    public static (PlanePoint From, PlanePoint To)? Through(ImmutableArray<PlanePart> parts, Bearing run, double rightMeters)
    {
        var (sin, cos) = Math.SinCos(run.Radians);
        double Up(PlanePoint p) => (p.East * sin) + (p.North * cos);
        double Right(PlanePoint p) => (p.East * cos) - (p.North * sin);
        var outer = parts.SelectMany(p => p.Outer).ToArray();
        var line = ((outer.Min(Right) + outer.Max(Right)) / 2) + rightMeters;
        var cuts = new List<double>();
        foreach (var ring in parts.SelectMany(MapGeometry.Rings))
        {
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
                if (Right(a) > line != Right(b) > line) cuts.Add(Up(a) + ((Up(b) - Up(a)) * (line - Right(a)) / (Right(b) - Right(a))));
            }
        }

        cuts.Sort();
        (double From, double To)? longest = null;
        for (var i = 0; i + 1 < cuts.Count; i += 2)
        {
            if (longest is not { } best || cuts[i + 1] - cuts[i] > best.To - best.From) longest = (cuts[i], cuts[i + 1]);
        }

        if (longest is not { } found) return null;
        var spare = (found.To - found.From) * 0.06;
        PlanePoint At(double up) => new((up * sin) + (line * cos), (up * cos) - (line * sin));
        return (At(found.From + spare), At(found.To - spare));
    }
}
