namespace Watersown.Shapes;

/// <summary>A piece of a straight line.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends, farther along the heading.</param>
public sealed record LineSpan(PlanePoint From, PlanePoint To)
{
    public Length Length => Length.FromMeters(Turn.Hypot(To.East - From.East, To.North - From.North));
}

/// <summary>Parallel lines laid over land, cut to what lies inside.</summary>
public static class Sweep
{
    /// <summary>How far right of the plane's middle a point lies, looking along a heading.</summary>
    [PlainNumber("meters")]
    public static double RightOf(this PlanePoint point, Bearing heading)
    {
        var (sin, cos) = Math.SinCos(heading.Radians);
        return (point.East * cos) - (point.North * sin);
    }

    /// <summary>How far ahead of the plane's middle a point lies, looking along a heading.</summary>
    [PlainNumber("meters")]
    public static double AheadOf(this PlanePoint point, Bearing heading)
    {
        var (sin, cos) = Math.SinCos(heading.Radians);
        return (point.East * sin) + (point.North * cos);
    }

    /// <summary>
    /// Lines along a heading, a spacing apart, the first at <paramref name="first"/> right of the plane's middle; each as
    /// the spans inside the land in order along the heading. In and out alternate along a line (even-odd), so holes and
    /// ground between pieces are left out.
    /// </summary>
    [Source(nameof(Sources.Definition), "crossings along a line, sorted and paired")]
    public static ImmutableArray<ImmutableArray<LineSpan>> Lines(ImmutableArray<PlanePart> parts, Bearing heading, Length first, Length spacing, [PlainNumber("lines")] int count)
    {
        var crossings = new List<double>[count];
        for (var i = 0; i < count; i++) crossings[i] = [];
        var lay = new Lay(heading, first.Meters, spacing.Meters, crossings);
        foreach (var part in parts)
        {
            lay.Cross(part.Outer);
            foreach (var hole in part.Holes) lay.Cross(hole);
        }

        return [.. crossings.Select((found, i) => Pair(found, heading, first.Meters + (i * spacing.Meters)))];
    }

    private static ImmutableArray<LineSpan> Pair(List<double> ahead, Bearing heading, double right)
    {
        ahead.Sort();
        var (sin, cos) = Math.SinCos(heading.Radians);
        PlanePoint At(double a) => new((a * sin) + (right * cos), (a * cos) - (right * sin));
        var spans = ImmutableArray.CreateBuilder<LineSpan>(ahead.Count / 2);
        for (var i = 0; i + 1 < ahead.Count; i += 2)
        {
            if (ahead[i + 1] > ahead[i]) spans.Add(new LineSpan(At(ahead[i]), At(ahead[i + 1])));
        }

        return spans.ToImmutable();
    }

    // Finds for each edge only the lines that it crosses. A line through a corner counts for the edge below it alone.
    private readonly record struct Lay(Bearing Heading, double First, double Spacing, List<double>[] Crossings)
    {
        public void Cross(ImmutableArray<PlanePoint> ring)
        {
            for (var i = 0; i < ring.Length; i++) Cross(ring[i], ring[(i + 1) % ring.Length]);
        }

        private void Cross(PlanePoint from, PlanePoint to)
        {
            var (a, b) = (from.RightOf(Heading), to.RightOf(Heading));
            if (a == b) return;
            var (low, high) = (Math.Min(a, b), Math.Max(a, b));
            var (aheadA, aheadB) = (from.AheadOf(Heading), to.AheadOf(Heading));
            for (var line = (int)Math.Max(0, Math.Floor((low - First) / Spacing)); line < Crossings.Length; line++)
            {
                var right = First + (line * Spacing);
                if (right > high) return;
                if (right > low) Crossings[line].Add(aheadA + ((right - a) / (b - a) * (aheadB - aheadA)));
            }
        }
    }
}
