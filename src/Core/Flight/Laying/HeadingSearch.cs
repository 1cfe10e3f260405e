using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>Passes on one heading as flown: gaps in the land flown over with the gate shut.</summary>
/// <param name="Heading">From the plane's north, 0 up to but not including 180.</param>
/// <param name="Passes">Passes, evenly spaced.</param>
/// <param name="Flown">From the first land of each strip to the last, all together.</param>
/// <param name="Time">The passes and the turns between them.</param>
public sealed record FlownHeading(Bearing Heading, [property: PlainNumber("passes")] int Passes, Length Flown, TimeSpan Time);

/// <summary>
/// The quickest heading of a field. Every quarter of a degree is weighed by a time that flying cannot beat and worked out in
/// full only where that is below the best found, then every heading along a side of the outline and every one at which a pass
/// is added: between those the count stays the same. Of the headings looked at none is quicker.
/// </summary>
public static class HeadingSearch
{
    // Headings that differ by less than this in time are one and the same; the smaller heading is then taken.
    private const double Tie = 1e-9;

    /// <summary>The quickest of all headings looked at.</summary>
    [Source(nameof(Sources.WidthTheorem), "headings along each side of the outline, where the pass count changes, and each quarter of a degree")]
    public static FlownHeading Quickest(ImmutableArray<PlanePart> field, PassPace pace) => Quickest(FieldRings.Of(field), pace);

    /// <summary>
    /// Headings that may be worth more for the ferry than they cost: the quickest, and others well off it along sides of the
    /// outline, the least first, none slower than it by more than so much.
    /// </summary>
    internal static IEnumerable<FlownHeading> Near(ImmutableArray<PlanePart> field, PassPace pace, FlownHeading quickest, TimeSpan slower)
    {
        var rings = FieldRings.Of(field);
        return Turning(rings.Outline, pace.Swath.Meters).Append((quickest.Heading.Degrees + 90) % 180)
            .Where(degrees => pace.Wind is null || pace.Wind.Suits(Bearing.FromDegrees(degrees)))
            .Select(degrees => On(rings, pace, degrees))
            .Where(h => h.Time <= quickest.Time + slower && Math.Abs(Math.IEEERemainder(h.Heading.Degrees - quickest.Heading.Degrees, 180)) > WellOff)
            .OrderBy(h => h.Time)
            .Take(MostNear);
    }

    private const double WellOff = 5; // degrees
    private const int MostNear = 3;

    /// <summary>One heading, worked out in full.</summary>
    [Source(nameof(Sources.WholePassCount), "from first land of the strip to last / speed + (passes − 1) × turn")]
    public static FlownHeading On(ImmutableArray<PlanePart> field, PassPace pace, Bearing heading) => On(FieldRings.Of(field), pace, heading.Degrees % 180);

    internal static FlownHeading Quickest(FieldRings rings, PassPace pace)
    {
        var sweep = HeadingSweep.Of(rings, pace);
        var (seconds, order) = sweep.Ranked();
        FlownHeading? best = null;
        foreach (var degrees in Turning(rings.Outline, pace.Swath.Meters)) Try(degrees);
        foreach (var k in order)
        {
            if (best is { } found && seconds[k] > found.Time.TotalSeconds) break;
            Try(sweep.Degrees(k));
        }

        // Into the wind nothing blows across.
        return best ?? On(rings, pace, pace.Wind!.From.Degrees % 180);

        void Try(double degrees)
        {
            if (pace.Wind is null || pace.Wind.Suits(Bearing.FromDegrees(degrees))) best = Better(best, On(rings, pace, degrees));
        }
    }

    private static FlownHeading Better(FlownHeading? best, FlownHeading next)
    {
        if (best is null) return next;
        var (now, then) = (next.Time.TotalSeconds, best.Time.TotalSeconds);
        return now < then * (1 - Tie) || (now <= then * (1 + Tie) && next.Heading.Degrees < best.Heading.Degrees) ? next : best;
    }

    private static FlownHeading On(FieldRings rings, PassPace pace, double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        var reach = StripReach.Of(rings, pace.Swath.Meters, sin, cos);
        var flown = Length.FromMeters(reach.Sum);
        return new FlownHeading(Bearing.FromDegrees(degrees), reach.Passes, flown, pace.Time(flown, reach.Passes, Bearing.FromDegrees(degrees)));
    }

    // Along each side of the outline, and where the width between two far corners is a whole number of swaths.
    private static IEnumerable<double> Turning(Hull outline, double swath)
    {
        var narrowest = outline.Narrowest();
        yield return narrowest.Heading.Degrees;
        var corners = outline.Corners;
        double[] sides = [.. corners.Select((c, i) => Direction(c, corners[(i + 1) % corners.Length])).Order()];
        var least = Passes.Count(narrowest.Width, Length.FromMeters(swath));
        for (var i = 0; i < sides.Length; i++)
        {
            yield return sides[i];
            var (from, to) = (sides[i], i + 1 < sides.Length ? sides[i + 1] : sides[0] + 180);
            foreach (var whole in Whole(corners, from, to, least * swath)) yield return whole;
        }
    }

    // Between two sides the same two corners stay farthest apart; their distance across a heading is a sine of it.
    private static IEnumerable<double> Whole(ImmutableArray<PlanePoint> corners, double from, double to, double width)
    {
        if (to - from < 1e-9) yield break;
        var (sin, cos) = Math.SinCos((from + to) / 2 * Math.PI / 180);
        double Right(PlanePoint p) => (p.East * cos) - (p.North * sin);
        var (right, left) = (corners.MaxBy(Right), corners.MinBy(Right));
        double east = right.East - left.East, north = right.North - left.North, apart = double.Hypot(east, north);
        if (width >= apart) yield break;
        var (lean, reach) = (Math.Atan2(north, east) * 180 / Math.PI, Math.Acos(width / apart) * 180 / Math.PI);
        foreach (var heading in new[] { -lean + reach, -lean - reach })
        {
            var placed = from + ((((heading - from) % 180) + 180) % 180);
            if (placed < to) yield return placed % 180;
        }
    }

    private static double Direction(PlanePoint from, PlanePoint to)
    {
        var degrees = Math.Atan2(to.East - from.East, to.North - from.North) * 180 / Math.PI;
        return ((degrees % 180) + 180) % 180;
    }
}
