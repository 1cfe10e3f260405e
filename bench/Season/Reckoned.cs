using System.Diagnostics;
using Watersown.Reckon;

namespace Watersown.Bench;

/// <summary>Every reckoning on its own example, against the bare arithmetic of one of them in the same loop.</summary>
internal static class Reckoned
{
    private const int Times = 2000;

    public static void Measure()
    {
        double head = 0.5, sink = 0;
        var bare = Time(() => sink += 3.33 * (4 - (0.2 * head)) * Math.Pow(head + (sink * 1e-30), 1.5));
        Console.WriteLine($"reckon baseline, one weir formula in bare numbers: {bare.TotalNanoseconds:0.0} ns ({sink:0})");
        foreach (var reckoning in Reckonings.All)
        {
            var given = Documents.Reckon.ReckonRequest.FromWords(Documents.Reckon.ReckonRequest.Words(reckoning), reckoning).Value;
            var each = Time(() => reckoning.Run(given));
            Console.WriteLine($"reckon {reckoning.Name,-18} {each.TotalMicroseconds,10:0.0} µs");
        }
    }

    private static TimeSpan Time(Action action)
    {
        for (var i = 0; i < Times / 10; i++) action();
        var best = TimeSpan.MaxValue;
        for (var round = 0; round < 5; round++)
        {
            var watch = Stopwatch.StartNew();
            for (var i = 0; i < Times; i++) action();
            if (watch.Elapsed / Times < best) best = watch.Elapsed / Times;
        }

        return best;
    }
}
