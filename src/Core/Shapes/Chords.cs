namespace Watersown.Shapes;

/// <summary>Straight ways across land.</summary>
public static class Chords
{
    // Of an edge with more corners, every so manieth is looked at: the longest way is then told a little short.
    private const int MostLines = 200;

    // A line through a corner is looked at a hair to both sides of it, so that it crosses edges and not corners.
    private const double Hair = 1e-4; // m

    /// <summary>The longest straight way inside one of the parts in a direction, from edge to edge, holes left out.</summary>
    [Source(nameof(Sources.Definition), "lines through the corners: the longest way in a direction touches one")]
    public static Length Longest(ImmutableArray<PlanePart> parts, Bearing direction)
    {
        var (sin, cos) = Math.SinCos(direction.Radians);
        var longest = 0.0;
        foreach (var part in parts)
        {
            ImmutableArray<ImmutableArray<PlanePoint>> rings = [.. part.Holes.Prepend(part.Outer).Select(r => Turned(r, sin, cos))];
            var corners = rings.SelectMany(r => r).Select(p => p.East).ToArray();
            for (var i = 0; i < corners.Length; i += 1 + (corners.Length / MostLines))
                longest = Math.Max(longest, Math.Max(Along(rings, corners[i] - Hair), Along(rings, corners[i] + Hair)));
        }

        return Length.FromMeters(longest);
    }

    // North is along the direction, east across it.
    private static ImmutableArray<PlanePoint> Turned(ImmutableArray<PlanePoint> ring, double sin, double cos) =>
        [.. ring.Select(p => new PlanePoint((p.East * cos) - (p.North * sin), (p.East * sin) + (p.North * cos)))];

    private static double Along(ImmutableArray<ImmutableArray<PlanePoint>> rings, double across)
    {
        var crossings = new List<double>();
        foreach (var ring in rings)
        {
            for (int i = 0, j = ring.Length - 1; i < ring.Length; j = i++)
            {
                var (a, b) = (ring[i], ring[j]);
                if (a.East > across != b.East > across) crossings.Add(a.North + ((b.North - a.North) * (across - a.East) / (b.East - a.East)));
            }
        }

        crossings.Sort();
        var longest = 0.0;
        for (var i = 0; i + 1 < crossings.Count; i += 2) longest = Math.Max(longest, crossings[i + 1] - crossings[i]);
        return longest;
    }
}
