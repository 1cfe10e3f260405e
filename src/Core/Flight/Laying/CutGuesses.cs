using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>A straight cut through a field.</summary>
/// <param name="Through">A corner of a bay or hole.</param>
/// <param name="Way">Of the cut.</param>
/// <param name="Hair">Less than counts as wider by a pass, m.</param>
/// <param name="Seam">Time of a pass along the cut, from the first land on it to the last, s.</param>
/// <param name="Seconds">What both sides, the turn between and the seam take at least, if each side is flown on one heading.</param>
internal readonly record struct GuessedCut(PlanePoint Through, Bearing Way, double Hair, double Seam, double Seconds)
{
    /// <summary>A place a hair to its left and one to its right: a cut along an edge leaves a thread of that edge on the side that it is no part of, unless it is moved to the other.</summary>
    public ImmutableArray<PlanePoint> BesideIt
    {
        get
        {
            var (sin, cos) = Math.SinCos(Way.Radians);
            return [new PlanePoint(Through.East - (Hair * cos), Through.North + (Hair * sin)), new PlanePoint(Through.East + (Hair * cos), Through.North - (Hair * sin))];
        }
    }

    /// <summary>What lies left and right of it, a hair off, by the edge alone; pieces of a side that lie apart hang together along the cut.</summary>
    public ImmutableArray<PlanePoint[]> Sides(PlanePoint[] ring)
    {
        var ((sin, cos), beside) = (Math.SinCos(Way.Radians), BesideIt);
        return [BaylessFigure.LeftOf(ring, beside[0], sin, cos), BaylessFigure.LeftOf(ring, beside[1], -sin, -cos)];
    }
}

/// <summary>
/// Cuts that may pay, by the outlines of their two sides: through each corner of a bay or hole, along the edge on either side of
/// it, along and across the heading of the whole, and to each corner of another bay. All of it turns with the field.
/// </summary>
internal static class CutGuesses
{
    private const int MostCorners = 12;

    /// <summary>Those that may take less time than the whole, the least first.</summary>
    public static ImmutableArray<GuessedCut> Of(PlanePart land, FlownHeading whole, PassPace pace, Length sowing)
    {
        var corners = Corners(land, pace.Swath.Meters / 2).OrderByDescending(c => c.Depth).Take(MostCorners).ToList();
        var ring = land.Outer.ToArray();
        return
        [
            .. corners.SelectMany(corner => Ways(corner, corners, whole.Heading, pace.Swath.Meters).Select(way => Guess(ring, corner.Ring[corner.Place], way, pace, sowing)))
                .Where(cut => cut.Seconds < whole.Time.TotalSeconds)
                .OrderBy(cut => cut.Seconds),
        ];
    }

    private static IEnumerable<BayCorner> Corners(PlanePart land, double least) =>
        Bays.Of(land.Outer).Where(bay => bay.Depth > least).SelectMany(bay => bay.Corners).Concat(land.Holes.SelectMany(Bays.Round)).Where(c => c.Depth > least);

    private static IEnumerable<Bearing> Ways(BayCorner corner, List<BayCorner> all, Bearing heading, double stretch)
    {
        foreach (var way in Bays.Ways(corner.Ring, corner.Place, stretch)) yield return way;
        yield return heading;
        yield return Bearing.FromDegrees(heading.Degrees + 90);
        var from = corner.Ring[corner.Place];
        foreach (var other in all)
        {
            var to = other.Ring[other.Place];
            if (double.Hypot(to.East - from.East, to.North - from.North) > stretch) yield return Bearing.FromDegrees(Math.Atan2(to.East - from.East, to.North - from.North) * 180 / Math.PI);
        }
    }

    private static GuessedCut Guess(PlanePoint[] ring, PlanePoint through, Bearing way, PassPace pace, Length sowing)
    {
        var cut = new GuessedCut(through, way, HairShare * pace.Swath.Meters, 0, double.PositiveInfinity);
        var (passes, seam) = (0, 0.0);
        foreach (var side in cut.Sides(ring))
        {
            var figure = BaylessFigure.Around(side);
            if (figure.Length < 3) return cut;
            passes += Passes.Count(Length.FromMeters(BaylessFigure.Width(figure)), pace.Swath);
            seam = Math.Max(seam, Along(figure, cut));
        }

        return cut with { Seam = seam / pace.Speed.MetersPerSecond, Seconds = pace.Time(sowing, passes).TotalSeconds + (seam / pace.Speed.MetersPerSecond) };
    }

    // How far a figure that ends at the cut goes along it.
    private static double Along(PlanePoint[] figure, GuessedCut cut)
    {
        var (way, right, low, high) = (cut.Way, cut.Through.RightOf(cut.Way), double.PositiveInfinity, double.NegativeInfinity);
        foreach (var corner in figure)
        {
            if (Math.Abs(corner.RightOf(way) - right) > 2 * cut.Hair) continue;
            (low, high) = (Math.Min(low, corner.AheadOf(way)), Math.Max(high, corner.AheadOf(way)));
        }

        return high > low ? high - low : 0;
    }

    // Of a swath.
    private const double HairShare = 2e-6;
}
