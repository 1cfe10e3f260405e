using Watersown.Water.Flood;

namespace Watersown.Bench;

/// <summary>From one field to a district: time for each check must not grow.</summary>
internal static class Growth
{
    public static void Measure()
    {
        Console.WriteLine();
        Console.WriteLine("fields of 20 checks, unlike, dry at the start, 96 h; laying out in it");
        Measured.Row("checks", "best, ms", "median, ms", "µs a check");
        Measured.Row("---:", "---:", "---:", "---:");
        foreach (var fields in (int[])[1, 5, 50, 500, 5000])
        {
            var networks = Cases.Unlike(Cases.Dry(), fields);
            var (best, median) = Measured.Time(() => FloodBatch.Run(networks, Cases.Span));
            Measured.Row(Measured.Figure(fields * 20, "N0"), Measured.Figure(best.TotalMilliseconds, "0.00"), Measured.Figure(median.TotalMilliseconds, "0.00"), Measured.Figure(median.TotalMicroseconds / (fields * 20), "0.00"));
        }

        One("one network of all the fields, each on its own, by Flooding.Run", Cases.Dry());
        One("the same with thin sheets over wide boards", Cases.Sheets());
    }

    private static void One(string what, FloodNetwork like)
    {
        Console.WriteLine();
        Console.WriteLine(what);
        Measured.Row("checks", "best, ms", "median, ms", "µs a check");
        Measured.Row("---:", "---:", "---:", "---:");
        foreach (var fields in (int[])[1, 5, 50, 500, 5000])
        {
            var network = Beside(Cases.Unlike(like, fields));
            var (best, median) = Measured.Time(() => Flooding.Run(network, Cases.Span, new FloodOptions { Telling = TimeSpan.Zero }));
            Measured.Row(Measured.Figure(fields * 20, "N0"), Measured.Figure(best.TotalMilliseconds, "0.00"), Measured.Figure(median.TotalMilliseconds, "0.00"), Measured.Figure(median.TotalMicroseconds / (fields * 20), "0.00"));
        }
    }

    private static FloodNetwork Beside(ImmutableArray<FloodNetwork> networks) => networks[0] with
    {
        Checks = [.. networks.SelectMany(n => n.Checks)],
        Boxes = [.. networks.SelectMany((n, k) => n.Boxes.Select(b => b with { From = b.From + (20 * k), To = b.To + (20 * k) }))],
        Inlets = [.. networks.SelectMany((n, k) => n.Inlets.Select(i => i with { To = i.To + (20 * k) }))],
    };
}
