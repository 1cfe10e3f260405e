using System.Diagnostics;
using System.Globalization;

namespace Watersown.Bench;

/// <summary>Times of one thing, run again and again after it is warm.</summary>
internal static class Measured
{
    private const int Rounds = 7;

    /// <summary>Best and median of seven, each of as many runs as fill a fifth of a second.</summary>
    public static (TimeSpan Best, TimeSpan Median) Time(Action action)
    {
        // The compiler works on what runs often for a while: half a second of it, then as many as fill a round.
        var warm = Stopwatch.StartNew();
        var runs = 0;
        do
        {
            action();
            runs++;
        }
        while (warm.Elapsed < TimeSpan.FromSeconds(0.5));
        var each = Math.Max(1, (int)(0.2 / (warm.Elapsed.TotalSeconds / runs)));
        var times = new TimeSpan[Rounds];
        for (var round = 0; round < Rounds; round++)
        {
            var watch = Stopwatch.StartNew();
            for (var i = 0; i < each; i++) action();
            times[round] = watch.Elapsed / each;
        }

        Array.Sort(times);
        return (times[0], times[Rounds / 2]);
    }

    /// <summary>Says a row of the table.</summary>
    public static void Row(params string[] cells) => Console.WriteLine("| " + string.Join(" | ", cells) + " |");

    public static string Figure(double value, string form) => value.ToString(form, CultureInfo.InvariantCulture);
}
