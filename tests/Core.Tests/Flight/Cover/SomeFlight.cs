using Watersown.Shapes;

namespace Watersown.Flight.Cover;

/// <summary>Fields and flights over them, with chance from a seed.</summary>
internal static class SomeFlight
{
    public static ImmutableArray<PlanePart> Rectangle(double east, double north) => [new PlanePart([new(0, 0), new(east, 0), new(east, north), new(0, north)], [])];

    /// <summary>Passes straight north over a field, one at each place from its west side.</summary>
    public static ImmutableArray<ImmutableArray<PlanePoint>> North(double length, params IEnumerable<double> easts) =>
        [.. easts.Select(e => (ImmutableArray<PlanePoint>)[new PlanePoint(e, 0), new PlanePoint(e, length / 2), new PlanePoint(e, length)])];

    /// <summary>The planned passes of a field as they are logged: a fix every so often, every other pass the other way, each fix off sideways by chance.</summary>
    public static ImmutableArray<ImmutableArray<PlanePoint>> Logged(ImmutableArray<PlanePart> field, double swath, double heading, double noise, double apart = 5, int seed = 7)
    {
        var chance = new Random(seed);
        var plan = Passes.Lay(field, Length.FromMeters(swath), Bearing.FromDegrees(heading));
        var (sin, cos) = Math.SinCos(heading * Math.PI / 180);
        var runs = ImmutableArray.CreateBuilder<ImmutableArray<PlanePoint>>();
        foreach (var pass in plan.All)
        {
            foreach (var span in pass.Open)
            {
                var fixes = Math.Max(1, (int)Math.Round(span.Length.Meters / apart));
                var line = Enumerable.Range(0, fixes + 1).Select(i =>
                {
                    var (share, off) = ((double)i / fixes, noise * Normal(chance));
                    return new PlanePoint(span.From.East + (share * (span.To.East - span.From.East)) + (off * cos), span.From.North + (share * (span.To.North - span.From.North)) - (off * sin));
                }).ToImmutableArray();
                runs.Add(pass.Number % 2 == 0 ? [.. line.Reverse()] : line);
            }
        }

        return runs.ToImmutable();
    }

    /// <summary>Standard normal, by Box and Muller.</summary>
    public static double Normal(Random chance) => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());

    public static FieldCover Cover(ImmutableArray<PlanePart> field, ImmutableArray<ImmutableArray<PlanePoint>> runs, double swath, CoverOptions? options = null) =>
        Coverage.Of(field, runs, Length.FromMeters(swath), options).Value;

    public static ImmutableArray<PlanePart> Turned(ImmutableArray<PlanePart> field, double degrees) => [.. field.Select(p => new PlanePart(Turned(p.Outer, degrees), [.. p.Holes.Select(h => Turned(h, degrees))]))];

    public static ImmutableArray<PlanePoint> Turned(ImmutableArray<PlanePoint> line, double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return [.. line.Select(p => new PlanePoint((p.East * cos) - (p.North * sin), (p.East * sin) + (p.North * cos)))];
    }
}
