using System.Diagnostics;
using Watersown.Flight;
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
        Measured.Row("fields", "median, ms", "p95, ms", "worst, ms", "of 2 ha or more", "against east-west: time saved, %");
        Measured.Row("---", "---:", "---:", "---:", "---:", "---:");
        var laid = RealFields.Farmed.SelectMany(Table).ToList();
        Console.WriteLine();
        Measured.Row("fields of 2 ha or more", "how many", "gap over the bound: median, %", "p95", "worst", "of it turns: median", "within 3 %", "within 10 %");
        Measured.Row("---", "---:", "---:", "---:", "---:", "---:", "---:", "---:");
        Gaps("without hole, 97 % of their outline or more", laid.Where(f => f.Land[0].Holes.Length == 0 && Fill(f.Land) >= 0.97));
        Gaps("without hole, 85 to 97 %", laid.Where(f => f.Land[0].Holes.Length == 0 && Fill(f.Land) is >= 0.85 and < 0.97));
        Gaps("without hole, less than 85 %", laid.Where(f => f.Land[0].Holes.Length == 0 && Fill(f.Land) < 0.85));
        Gaps("with holes", laid.Where(f => f.Land[0].Holes.Length > 0));
    }

    private static double Fill(ImmutableArray<PlanePart> land) => LayingBound.Of(land, Common.Pace).Length * Common.Pace.Swath / Passes.OutlineOf(land).Area;

    private static List<(ImmutableArray<PlanePart> Land, FieldLayout Layout)> Table(string file)
    {
        ImmutableArray<ImmutableArray<PlanePart>> fields = [.. RealFields.Of(file).Select(f => f.Land)];
        foreach (var field in fields) Lay(field);
        foreach (var field in fields) Lay(field);
        var times = fields.Select(Timed).Order().ToArray();
        var laid = fields.Select(f => (Land: f, Layout: FieldLaying.Lay(f, new LayingAsk(Common.Pace))!)).Where(f => f.Layout.Bound.Length * Common.Pace.Swath > Farmed).ToList();
        var eastWest = laid.Sum(f => HeadingSearch.On(f.Land, Common.Pace, Bearing.FromDegrees(90)).Time.TotalSeconds);
        Measured.Row(
            file, Measured.Figure(times[times.Length / 2], "0.00"), Measured.Figure(times[times.Length * 95 / 100], "0.00"), Measured.Figure(times[^1], "0.00"), Measured.Figure(laid.Count, "0"),
            Measured.Figure(100 * (1 - (laid.Sum(f => f.Layout.Passing.TotalSeconds) / eastWest)), "0.0"));
        return laid;
    }

    private static void Gaps(string what, IEnumerable<(ImmutableArray<PlanePart> Land, FieldLayout Layout)> laid)
    {
        var gaps = laid.Select(f => (All: f.Layout.Gap * 100, Turns: 100 * ((f.Layout.Passes - f.Layout.Bound.Passes) * Common.Pace.Turn / f.Layout.Bound.Time))).OrderBy(g => g.All).ToArray();
        Measured.Row(
            what, Measured.Figure(gaps.Length, "0"), Measured.Figure(gaps[gaps.Length / 2].All, "0.0"), Measured.Figure(gaps[gaps.Length * 95 / 100].All, "0.0"), Measured.Figure(gaps[^1].All, "0.0"),
            Measured.Figure(gaps.Select(g => g.Turns).Order().ElementAt(gaps.Length / 2), "0.0"), Measured.Figure(gaps.Count(g => g.All <= 3), "0"), Measured.Figure(gaps.Count(g => g.All <= 10), "0"));
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
