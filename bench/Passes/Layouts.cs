using System.Diagnostics;
using Watersown.Flight.Laying;
using Watersown.Shapes;

namespace Watersown.Bench;

/// <summary>Whole layouts: how long they take, and how near they come to what nothing can beat.</summary>
internal static class Layouts
{
    private static readonly Area Farmed = Area.FromHectares(2);

    public static void Measure()
    {
        Console.WriteLine();
        Console.WriteLine("whole layout of real fields, loads in it, strip 1.5 miles off; flight time over its bound for fields of 2 ha or more");
        Measured.Row("fields", "median, ms", "p95, ms", "worst, ms", "of 2 ha or more", "without bay or hole: gap median / worst, %", "with holes: median / worst, %", "with bays: median / worst, %", "against east-west: time saved, %");
        Measured.Row("---", "---:", "---:", "---:", "---:", "---:", "---:", "---:", "---:");
        foreach (var file in RealFields.Farmed) Table(file);
    }

    private static void Table(string file)
    {
        ImmutableArray<ImmutableArray<PlanePart>> fields = [.. RealFields.Of(file).Select(f => f.Land)];
        foreach (var field in fields) Lay(field);
        foreach (var field in fields) Lay(field);
        var times = fields.Select(Timed).Order().ToArray();
        var laid = fields.Select(f => (Land: f, Layout: Lay(f))).Where(f => f.Layout.Bound.Length * Common.Pace.Swath > Farmed).ToList();
        var eastWest = laid.Sum(f => HeadingSearch.On(f.Land, Common.Pace, Bearing.FromDegrees(90)).Time.TotalSeconds);
        Measured.Row(
            file, Measured.Figure(times[times.Length / 2], "0.00"), Measured.Figure(times[times.Length * 95 / 100], "0.00"), Measured.Figure(times[^1], "0.00"), Measured.Figure(laid.Count, "0"),
            Gaps(laid.Where(f => f.Layout.Bound.Convex)), Gaps(laid.Where(f => f.Land[0].Holes.Length > 0)), Gaps(laid.Where(f => !f.Layout.Bound.Convex && f.Land[0].Holes.Length == 0)),
            Measured.Figure(100 * (1 - (laid.Sum(f => f.Layout.Passing.TotalSeconds) / eastWest)), "0.0"));
    }

    private static string Gaps(IEnumerable<(ImmutableArray<PlanePart> Land, FieldLayout Layout)> laid)
    {
        var gaps = laid.Select(f => f.Layout.Gap * 100).Order().ToArray();
        return gaps.Length == 0 ? "none" : $"{gaps.Length}: {Measured.Figure(gaps[gaps.Length / 2], "0.0")} / {Measured.Figure(gaps[^1], "0.0")}";
    }

    private static double Timed(ImmutableArray<PlanePart> field)
    {
        var best = double.PositiveInfinity;
        for (var i = 0; i < 5; i++)
        {
            var watch = Stopwatch.StartNew();
            Lay(field);
            best = Math.Min(best, watch.Elapsed.TotalMilliseconds);
        }

        return best;
    }

    private static FieldLayout Lay(ImmutableArray<PlanePart> field) =>
        FieldLaying.Lay(field, new LayingAsk(Common.Pace) { Hopper = Common.Hopper(new PlanePoint(1700, 1700)) })!;
}
