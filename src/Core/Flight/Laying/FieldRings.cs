using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>
/// The corners of a field in rows of plain numbers, as the sweep reads them: ring after ring, the first corner of each again
/// at its end, land to the left of every edge. Meters from the middle of the field.
/// </summary>
internal sealed class FieldRings
{
    private FieldRings(PlanePoint middle, double[] east, double[] north, int[] ends, Hull outline)
    {
        (Middle, East, North, Ends, Outline) = (middle, east, north, ends, outline);
        (HullEast, HullNorth) = ([.. outline.Corners.Select(c => c.East)], [.. outline.Corners.Select(c => c.North)]);
    }

    /// <summary>Where the middle lies on the plane of the field.</summary>
    public PlanePoint Middle { get; }

    public double[] East { get; }

    public double[] North { get; }

    /// <summary>One past the last corner of each ring.</summary>
    public int[] Ends { get; }

    public Hull Outline { get; }

    public double[] HullEast { get; }

    public double[] HullNorth { get; }

    /// <summary>Land inside, holes taken off, m².</summary>
    public double Area
    {
        get
        {
            var twice = 0.0;
            for (int ring = 0, i = 0; ring < Ends.Length; ring++, i++)
            {
                for (; i + 1 < Ends[ring]; i++) twice += (East[i] * North[i + 1]) - (North[i] * East[i + 1]);
            }

            return twice / 2;
        }
    }

    public static FieldRings Of(ImmutableArray<PlanePart> field)
    {
        var outline = Passes.OutlineOf(field);
        var middle = new PlanePoint(outline.Corners.Average(c => c.East), outline.Corners.Average(c => c.North));
        var corners = field.Sum(p => p.Outer.Length + 1 + p.Holes.Sum(h => h.Length + 1));
        var (east, north, ends) = (new double[corners], new double[corners], new List<int>());
        var at = 0;
        void Add(ImmutableArray<PlanePoint> ring, bool hole)
        {
            if (ring.Length < 3) return;
            var turned = SignedArea(ring) < 0 != hole;
            for (var i = 0; i <= ring.Length; i++)
            {
                var corner = ring[(turned ? ring.Length - i : i) % ring.Length];
                (east[at], north[at]) = (corner.East - middle.East, corner.North - middle.North);
                at++;
            }

            ends.Add(at);
        }

        foreach (var part in field)
        {
            Add(part.Outer, hole: false);
            foreach (var hole in part.Holes) Add(hole, hole: true);
        }

        return new FieldRings(middle, east, north, [.. ends], Hull.Of(outline.Corners.Select(c => new PlanePoint(c.East - middle.East, c.North - middle.North))));
    }

    /// <summary>Turned back, so that what lay along a heading lies along north.</summary>
    public FieldRings Turned(double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        var (east, north) = (new double[East.Length], new double[North.Length]);
        for (var i = 0; i < east.Length; i++) (east[i], north[i]) = ((East[i] * cos) - (North[i] * sin), (East[i] * sin) + (North[i] * cos));
        return new FieldRings(Middle, east, north, Ends, Hull.Of(Outline.Corners.Select(c => new PlanePoint((c.East * cos) - (c.North * sin), (c.East * sin) + (c.North * cos)))));
    }

    // Twice over; only its sign counts.
    private static double SignedArea(ImmutableArray<PlanePoint> ring)
    {
        var twice = 0.0;
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
            twice += ((a.East - ring[0].East) * (b.North - ring[0].North)) - ((a.North - ring[0].North) * (b.East - ring[0].East));
        }

        return twice;
    }
}
