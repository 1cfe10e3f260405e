using Watersown.Flight;
using Watersown.Flight.Laying;
using Watersown.Shapes;
using LoadChoice = Watersown.Flight.Laying.LoadChoice;

namespace Watersown.Bench;

/// <summary>Order and loads together against loads filled up in the order laid, over real fields and strips all round them.</summary>
internal static class Orders
{
    private const int Directions = 8;
    private const double Worth = 0.1;
    private static readonly Area Farmed = Area.FromHectares(2);

    public static void Measure()
    {
        Console.WriteLine();
        Console.WriteLine($"loads of real fields of 2 ha or more, {Directions} directions to the strip; ferry against loads filled up in the order laid; lining up again within a pass 32 s");
        Measured.Row("strip off, mi", "jobs", "breaks alone: ferry saved, %", "order and breaks: median / mean, %", "jobs with 10 % or more, %", "possible by the bound: mean, %", "jobs where 10 % is impossible, %", "time saved, mean %", "stopping within passes: ferry saved, mean %", "time saved, mean %");
        Measured.Row("---:", "---:", "---:", "---:", "---:", "---:", "---:", "---:", "---:", "---:");
        foreach (var miles in new[] { 0.5, 1.5, 5 }) Table(miles);
    }

    private static void Table(double miles)
    {
        var jobs = RealFields.Farmed.SelectMany(file => RealFields.Of(file)).Select(f => f.Land).Where(land => LayingBound.Of(land, Common.Pace).Length * Common.Pace.Swath > Farmed)
            .SelectMany(land => Enumerable.Range(0, Directions).Select(k => Laid(land, miles, k * 360.0 / Directions))).OfType<LoadChoice>().ToList();
        double Saved(Func<LoadChoice, TimeSpan> ferry, LoadChoice job) => 100 * (1 - (ferry(job) / job.FilledUp.Ferry));
        var found = jobs.Select(job => Saved(j => j.Whole.Ferry, job)).Order().ToArray();
        Measured.Row(
            Measured.Figure(miles, "0.0"), Measured.Figure(jobs.Count, "0"), Measured.Figure(jobs.Average(job => Saved(j => j.InOrder.Ferry, job)), "0.0"),
            Measured.Figure(found[found.Length / 2], "0.0") + " / " + Measured.Figure(found.Average(), "0.0"), Measured.Figure(100.0 * found.Count(s => s >= 100 * Worth) / found.Length, "0"),
            Measured.Figure(jobs.Average(job => Saved(j => j.LeastFerry, job)), "0.0"), Measured.Figure(100.0 * jobs.Count(job => Saved(j => j.LeastFerry, job) < 100 * Worth) / jobs.Count, "0"),
            Measured.Figure(jobs.Average(job => 100 * (1 - (job.Whole.Time / job.FilledUp.Time))), "0.0"),
            Measured.Figure(jobs.Average(job => Saved(j => j.Chosen.Ferry, job)), "0.0"), Measured.Figure(jobs.Average(job => 100 * (1 - (job.Chosen.Time / job.FilledUp.Time))), "0.0"));
    }

    private static LoadChoice? Laid(ImmutableArray<PlanePart> land, double miles, double degrees)
    {
        var corners = Passes.OutlineOf(land).Corners;
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        var strip = new PlanePoint(corners.Average(c => c.East) + (Length.FromMiles(miles).Meters * sin), corners.Average(c => c.North) + (Length.FromMiles(miles).Meters * cos));
        return FieldLaying.Lay(land, new LayingAsk(Common.Pace) { Hopper = Common.Hopper(strip) with { LineUp = Common.Pace.Turn } })?.Loads;
    }
}
