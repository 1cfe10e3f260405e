using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>
/// Ends of passes that lie before a wire: the aeroplane must be up when it gets there, so the last of the run is not sown, and
/// a few passes along the wire sow it instead. Which of two neighbors climbs is the pilot's; the band is taken along the whole.
/// </summary>
internal static class ClimbEnds
{
    /// <summary>The lines with their runs toward wires shut, and the passes along the wires that sow what is left.</summary>
    public static (ImmutableArray<FlownLine> Lines, ImmutableArray<FlownLine> Along) Of(ImmutableArray<FlownLine> lines, LayingAsk ask)
    {
        if (ask.Climb is not { } climb) return (lines, []);
        var along = ImmutableArray.CreateBuilder<FlownLine>();
        foreach (var wire in ask.Round.Where(r => r is { IsLine: true, FlownOver: true, Height: not null }))
        {
            var (run, band) = (NoDescents.ClimbRun(wire.Height!.Value, ask.Pace.Speed, climb).Meters, new List<PlanePoint>());
            lines = [.. lines.Select(line => Shut(line, wire, run, band)).Where(line => line.Spans.Length > 0)];
            along.AddRange(Beside(wire, band, lines.Length + along.Count, ask));
        }

        return (lines, along.ToImmutable());
    }

    private static FlownLine Shut(FlownLine line, NoDescent wire, double run, List<PlanePoint> band)
    {
        var flown = line.Flown.Meters;
        if (flown <= 0) return line;
        var (east, north) = ((line.To.East - line.From.East) / flown, (line.To.North - line.From.North) / flown);
        double Ahead(PlanePoint p) => ((p.East - line.From.East) * east) + ((p.North - line.From.North) * north);
        PlanePoint At(double ahead) => new(line.From.East + (ahead * east), line.From.North + (ahead * north));
        var (spans, lost) = (line.Spans, 0.0);
        foreach (var crossing in Crossings(line.From, east, north, wire.Points))
        {
            spans = [.. spans.SelectMany(span => Keep(Ahead(span.From), Ahead(span.To)))];
            IEnumerable<LineSpan> Keep(double from, double to)
            {
                // Before the wire from either side: the stretch within a run of it.
                var (shutFrom, shutTo) = (Math.Max(from, crossing - run), Math.Min(to, crossing + run));
                if (shutTo <= shutFrom)
                {
                    yield return new LineSpan(At(from), At(to));
                    yield break;
                }

                lost += shutTo - shutFrom;
                band.Add(At(shutFrom));
                band.Add(At(shutTo));
                if (shutFrom > from) yield return new LineSpan(At(from), At(shutFrom));
                if (shutTo < to) yield return new LineSpan(At(shutTo), At(to));
            }
        }

        if (lost <= 0) return line;
        var open = spans.Aggregate(Length.Zero, (sum, s) => sum + s.Length);
        return line with { Spans = spans, Open = open, Seed = line.Open > Length.Zero ? line.Seed * (open / line.Open) : line.Seed };
    }

    // Where the whole straight line of a pass meets the wire, m ahead of its beginning. A wire along the pass is met nowhere.
    private static IEnumerable<double> Crossings(PlanePoint from, double east, double north, ImmutableArray<PlanePoint> wire)
    {
        for (var i = 0; i + 1 < wire.Length; i++)
        {
            double a = Aside(wire[i]), b = Aside(wire[i + 1]);
            if (a == b || (a > 0) == (b > 0)) continue;
            var share = a / (a - b);
            var (e, n) = (wire[i].East + (share * (wire[i + 1].East - wire[i].East)), wire[i].North + (share * (wire[i + 1].North - wire[i].North)));
            yield return ((e - from.East) * east) + ((n - from.North) * north);
        }

        double Aside(PlanePoint p) => ((p.East - from.East) * north) - ((p.North - from.North) * east);
    }

    // Passes along the wire over the band on either side of it, a swath apart or a little less.
    private static IEnumerable<FlownLine> Beside(NoDescent wire, List<PlanePoint> band, int before, LayingAsk ask)
    {
        if (band.Count == 0) yield break;
        var way = Bearing.FromDegrees(Math.Atan2(wire.Points[^1].East - wire.Points[0].East, wire.Points[^1].North - wire.Points[0].North) * 180 / Math.PI);
        var middle = wire.Points[0].RightOf(way);
        foreach (var side in band.GroupBy(p => p.RightOf(way) > middle))
        {
            var (low, high) = (side.Min(p => p.RightOf(way)), side.Max(p => p.RightOf(way)));
            var (near, far) = (side.Min(p => p.AheadOf(way)), side.Max(p => p.AheadOf(way)));
            var count = Passes.Count(Length.FromMeters(high - low), ask.Pace.Swath);
            for (var i = 0; i < count; i++)
            {
                var right = low + ((i + 0.5) * (high - low) / count);
                var (sin, cos) = Math.SinCos(way.Radians);
                PlanePoint At(double ahead) => new((ahead * sin) + (right * cos), (ahead * cos) - (right * sin));
                var length = Length.FromMeters(far - near);
                yield return new FlownLine(++before, At(near), At(far), length, ask.Hopper is { } hopper ? hopper.Rate * (length * Length.FromMeters((high - low) / count)) : SoakedSeed.Zero) { Spans = [new LineSpan(At(near), At(far))] };
            }
        }
    }
}
