using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>
/// How wide strips over a field must be together, on whatever headings they lie. Strips that cover a figure without bays have
/// widths that add up to its least width or more (Bang). A field with bays and holes is not such a figure, but its outline is:
/// lay one strip more over each bay and each hole, just so wide that it covers it, and all strips together cover the outline.
/// So n strips of one swath, and these, are as wide as the outline is: n × swath ≥ least width − Σ widths of what lies over
/// bays and holes. The same holds of any part of the outline cut off by straight lines, whose bays are smaller: the part that
/// proves most is looked for, among others from a place deep inside, and whichever is found proves what it proves.
/// </summary>
internal sealed class StripsNeeded
{
    private const int MostCuts = 8;
    private const int Ways = 12;

    // Bays that no pass can tell are left as they are found, share of a swath.
    private const double Worth = 0.01;

    private readonly PlanePoint[] figure;
    private readonly ImmutableArray<PlanePoint[]> patches;

    private StripsNeeded(PlanePoint[] figure, ImmutableArray<PlanePoint[]> patches)
    {
        (this.figure, this.patches) = (figure, patches);
        Width = BaylessFigure.Width(figure) - patches.Sum(p => BaylessFigure.Width(p) + Bent.Thread);
    }

    /// <summary>Of all strips together, m.</summary>
    private double Width { get; }

    /// <summary>What strips over all pieces of the field must be wide together at least.</summary>
    public static Length Of(ImmutableArray<PlanePart> land, Length swath) => Length.FromMeters(Math.Max(0, land.Max(part => Of(part, swath.Meters))));

    private static double Of(PlanePart part, double swath)
    {
        var outline = BaylessFigure.Around(part.Outer);
        if (outline.Length == 0) return 0;
        var whole = new StripsNeeded(outline, Joined([.. PatchesOf(part)]));
        var most = Count(BaylessFigure.Width(outline), swath);
        if (Count(whole.Width, swath) == most) return whole.Width;
        var seeds = InnerFigure.Seeds(part, Hull.Of(part.Outer).Narrowest().Heading);
        return seeds.Select(seed => whole.Inner(part, seed)).Prepend(whole).Max(start => start.CutOff(swath, most).Width);
    }

    // Cut off what pays, one bay at a time.
    private StripsNeeded CutOff(double swath, int most)
    {
        var found = this;
        for (var cut = 0; cut < MostCuts && Count(found.Width, swath) < most; cut++)
        {
            if (found.Cuts(swath).MaxBy(c => c.Width) is not { } better || better.Width <= found.Width + (Worth * swath)) break;
            found = new StripsNeeded(better.figure, Joined(better.patches));
        }

        return found;
    }

    // The best on the way to a figure that lies wholly in the field.
    private StripsNeeded Inner(PlanePart part, PlanePoint seed)
    {
        var (best, now) = (this, this);
        var (cuts, bare) = InnerFigure.Grow(part, figure, seed);
        foreach (var (through, east, north) in cuts)
        {
            now = now.LeftOf(through, east, north, now.patches);
            if (now.Width > best.Width) best = now;
        }

        // Nothing of bay or hole is left in it, though what holds a bent one may still reach in.
        var last = bare ? new StripsNeeded(now.figure, []) : now;
        return last.Width > best.Width ? last : best;
    }

    private StripsNeeded LeftOf(PlanePoint through, double east, double north, ImmutableArray<PlanePoint[]> left) =>
        new(BaylessFigure.LeftOf(figure, through, east, north), [.. left.Select(p => BaylessFigure.LeftOf(p, through, east, north)).Where(p => p.Length > 0)]);

    private static int Count(double width, double swath) => Passes.Count(Length.FromMeters(width), Length.FromMeters(swath));

    private static IEnumerable<PlanePoint[]> PatchesOf(PlanePart part)
    {
        foreach (var hole in part.Holes.SelectMany(hole => Bent.Pieces([.. hole]))) yield return hole;
        var (ring, corners) = (part.Outer, Hull.Of(part.Outer).Corners.ToHashSet());
        var start = Enumerable.Range(0, ring.Length).First(i => corners.Contains(ring[i]));
        for (var from = start; from < start + ring.Length;)
        {
            var to = from + 1;
            while (!corners.Contains(ring[to % ring.Length])) to++;
            var bay = from;
            if (to > from + 1)
            {
                foreach (var piece in Bent.Pieces([.. Enumerable.Range(bay, to - bay + 1).Select(i => ring[i % ring.Length])])) yield return piece;
            }

            from = to;
        }
    }

    // Where one strip over two bays is narrower than two strips, it is one.
    private static ImmutableArray<PlanePoint[]> Joined(ImmutableArray<PlanePoint[]> patches)
    {
        var left = patches.Where(p => p.Length > 0).ToList();
        while (true)
        {
            var (saved, first, second, joint) = (1e-9, -1, -1, Array.Empty<PlanePoint>());
            for (var i = 0; i < left.Count; i++)
            {
                for (var j = 0; j < i; j++)
                {
                    var both = BaylessFigure.Around(left[i].Concat(left[j]));
                    var saves = BaylessFigure.Width(left[i]) + BaylessFigure.Width(left[j]) - BaylessFigure.Width(both);
                    if (saves > saved) (saved, first, second, joint) = (saves, i, j, both);
                }
            }

            if (first < 0) return [.. left];
            left[second] = joint;
            left.RemoveAt(first);
        }
    }

    // Each bay cut off with all that lies beyond it, by lines that touch it.
    private IEnumerable<StripsNeeded> Cuts(double swath)
    {
        foreach (var patch in patches)
        {
            if (BaylessFigure.Width(patch) < Worth * swath) continue;
            foreach (var (east, north) in Directions(patch))
            {
                // The rest lies to the left of the line, the bay to the right of it.
                var touched = patch.MaxBy(p => (east * p.North) - (north * p.East));
                var rest = BaylessFigure.LeftOf(figure, touched, east, north);
                if (BaylessFigure.Width(rest) <= Width) continue;
                yield return LeftOf(touched, east, north, patches.Remove(patch));
            }
        }
    }

    // Along each side of the bay, and a fan that turns with it.
    private static IEnumerable<(double East, double North)> Directions(PlanePoint[] patch)
    {
        var longest = (East: 1.0, North: 0.0, Length: 0.0);
        for (var i = 0; i < patch.Length; i++)
        {
            var (p, q) = (patch[i], patch[(i + 1) % patch.Length]);
            double east = q.East - p.East, north = q.North - p.North, length = double.Hypot(east, north);
            if (length > longest.Length) longest = (east, north, length);
            yield return (-east, -north);
        }

        for (var k = 0; k < 2 * Ways; k++)
        {
            var (sin, cos) = Math.SinCos(k * Math.PI / Ways);
            yield return ((longest.East * cos) - (longest.North * sin), (longest.East * sin) + (longest.North * cos));
        }
    }
}
