using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>
/// Cuts a field with bays into pieces flown on headings of their own. Cuts go through the deepest corner of each bay, along the
/// edge on either side of it and along and across the heading of the whole; each is first judged by the outlines of its two
/// sides, and the few best are worked out. A cut stands only if both pieces, the turn between them and a pass flown along the
/// cut together still take less time.
/// </summary>
internal static class CellSplitting
{
    private const int MostBays = 4;
    private const int MostWorkedOut = 2;
    private const int Deepest = 3;

    public static ImmutableArray<(ImmutableArray<PlanePart> Land, FlownHeading Best)> Split(ImmutableArray<PlanePart> field, PassPace pace)
    {
        if (field.Length == 1) return [.. Split(field, HeadingSearch.Quickest(field, pace), pace, Deepest)];

        // Pieces that lie apart are flown together where that saves turns, else one after another.
        var together = HeadingSearch.Quickest(field, pace);
        ImmutableArray<(ImmutableArray<PlanePart> Land, FlownHeading Best)> each =
            [.. field.SelectMany(part => Split([part], HeadingSearch.Quickest([part], pace), pace, Deepest))];
        return Seconds(each, pace) < together.Time.TotalSeconds ? each : [(field, together)];
    }

    private static IEnumerable<(ImmutableArray<PlanePart> Land, FlownHeading Best)> Split(ImmutableArray<PlanePart> land, FlownHeading whole, PassPace pace, int depth)
    {
        if (depth > 0 && Cut(land, whole, pace) is { } sides)
            return [.. Split(sides.Left.Land, sides.Left.Best, pace, depth - 1), .. Split(sides.Right.Land, sides.Right.Best, pace, depth - 1)];
        return [(land, whole)];
    }

    private static ((ImmutableArray<PlanePart> Land, FlownHeading Best) Left, (ImmutableArray<PlanePart> Land, FlownHeading Best) Right)? Cut(
        ImmutableArray<PlanePart> land, FlownHeading whole, PassPace pace)
    {
        if (land.Length != 1) return null;
        var sowing = LayingBound.Of(land, pace);
        if (whole.Time <= sowing.Time + pace.Turn) return null;
        var guesses = Bays.Of(land[0].Outer).Where(bay => bay.Depth > pace.Swath.Meters / 2).Take(MostBays)
            .SelectMany(bay => Bays.Ways(land[0].Outer, bay, pace.Swath.Meters).Concat([whole.Heading, Bearing.FromDegrees(whole.Heading.Degrees + 90)]).Select(way => (bay.Corner, Way: way)))
            .Select(cut => (cut.Corner, cut.Way, Seconds: Guess(land[0], cut.Corner, cut.Way, pace, sowing.Length)))
            .Where(cut => cut.Seconds < whole.Time.TotalSeconds)
            .OrderBy(cut => cut.Seconds)
            .Take(MostWorkedOut);
        foreach (var (corner, way, _) in guesses)
        {
            var (left, right) = LandCut.Split(land, corner, way);
            if (left.IsEmpty || right.IsEmpty) continue;
            var (a, b) = (HeadingSearch.Quickest(left, pace), HeadingSearch.Quickest(right, pace));
            if (Seconds([(left, a), (right, b)], pace) + Seam(left, corner, way, pace) < whole.Time.TotalSeconds) return ((left, a), (right, b));
        }

        return null;
    }

    private static double Seconds(ImmutableArray<(ImmutableArray<PlanePart> Land, FlownHeading Best)> cells, PassPace pace) =>
        cells.Sum(c => c.Best.Time.TotalSeconds) + ((cells.Length - 1) * pace.Turn.TotalSeconds);

    // Length of the cut itself, flown once.
    private static double Seam(ImmutableArray<PlanePart> side, PlanePoint through, Bearing way, PassPace pace)
    {
        var (right, hair) = (through.RightOf(way), 1e-3);
        var on = side.SelectMany(p => p.Outer).Where(p => Math.Abs(p.RightOf(way) - right) < hair).Select(p => p.AheadOf(way)).ToList();
        return on.Count < 2 ? 0 : (on.Max() - on.Min()) / pace.Speed.MetersPerSecond;
    }

    // The least that both sides can take if each is flown across its own narrowest width.
    private static double Guess(PlanePart land, PlanePoint through, Bearing way, PassPace pace, Length sowing)
    {
        var (sides, at) = ((Left: new List<PlanePoint>(), Right: new List<PlanePoint>()), through.RightOf(way));
        var ring = land.Outer;
        for (var i = 0; i < ring.Length; i++)
        {
            var (p, q) = (ring[i], ring[(i + 1) % ring.Length]);
            var (a, b) = (p.RightOf(way) - at, q.RightOf(way) - at);
            if (a <= 0) sides.Left.Add(p);
            if (a >= 0) sides.Right.Add(p);
            if (a * b >= 0) continue;
            var crossing = new PlanePoint(p.East + (a / (a - b) * (q.East - p.East)), p.North + (a / (a - b) * (q.North - p.North)));
            sides.Left.Add(crossing);
            sides.Right.Add(crossing);
        }

        if (Across(sides.Left, pace) is not { } left || Across(sides.Right, pace) is not { } right) return double.PositiveInfinity;
        return pace.Time(sowing, left + right).TotalSeconds;
    }

    private static int? Across(List<PlanePoint> side, PassPace pace)
    {
        if (side.Count < 3) return null;
        var east = side.Max(p => p.East) - side.Min(p => p.East) + side.Max(p => p.North) - side.Min(p => p.North);
        if (east < pace.Swath.Meters) return null;
        try
        {
            return Passes.Count(Hull.Of(side).Narrowest().Width, pace.Swath);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }
}
