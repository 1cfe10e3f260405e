using Watersown.Flight;
using Watersown.Flight.Cover;
using Watersown.Shapes;

namespace Watersown.Bench;

/// <summary>A field of 150 acres, 1,000 m by 607 m, flown at 50 m/s and logged ten times a second, each fix 0.4 m off sideways by chance.</summary>
internal sealed record Flight(string Name, ImmutableArray<PlanePart> Field, Length Swath, ImmutableArray<ImmutableArray<PlanePoint>> Runs)
{
    public static Length Cell { get; } = Length.FromMeters(0.5);

    public static IEnumerable<Flight> All => [Fly("passes along y", 0, 60), Fly("along x", 90, 60), Fly("33 degrees", 33, 70)];

    private static Flight Fly(string name, double heading, int passes)
    {
        ImmutableArray<PlanePart> field = [new PlanePart([new(0, 0), new(1000, 0), new(1000, 607), new(0, 607)], [])];
        var bearing = Bearing.FromDegrees(heading);
        var swath = Passes.OutlineOf(field).Across(bearing) / passes;
        var chance = new Random(7);
        double Off() => 0.4 * Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
        var (sin, cos) = Math.SinCos(bearing.Radians);
        var runs = Passes.Lay(field, swath + Length.FromMeters(1e-6), bearing).All.SelectMany(p => p.Open.Select(span => (p.Number, Span: span))).Select(p =>
        {
            var line = Enumerable.Range(0, (int)Math.Max(1, Math.Round(p.Span.Length.Meters / 5)) + 1).Select(i =>
            {
                var (ahead, off) = (i * p.Span.Length.Meters / Math.Max(1, Math.Round(p.Span.Length.Meters / 5)), Off());
                return new PlanePoint(p.Span.From.East + (ahead * sin) + (off * cos), p.Span.From.North + (ahead * cos) - (off * sin));
            }).ToImmutableArray();
            return p.Number % 2 == 0 ? [.. line.Reverse()] : line;
        }).ToImmutableArray();
        return new Flight(name, field, swath, runs);
    }

    /// <summary>The quadrilaterals that Core counts, corner by corner in meters.</summary>
    public List<PlanePoint[]> Quads(CoverGrid grid)
    {
        var quads = new List<PlanePoint[]>();
        var lines = new FlownLines(Runs, new SwathEdges(grid, Reach.About(Swath, Length.Zero), wide: true));
        while (lines.Next())
        {
            var e = lines.Edges;
            for (var i = 0; i + 1 < e.Places; i++)
            {
                quads.Add(
                [
                    grid.FromCells(e.LeftAlong[i], e.LeftAcross[i]), grid.FromCells(e.RightAlong[i], e.RightAcross[i]),
                    grid.FromCells(e.RightAlong[i + 1], e.RightAcross[i + 1]), grid.FromCells(e.LeftAlong[i + 1], e.LeftAcross[i + 1]),
                ]);
            }
        }

        return quads;
    }
}
