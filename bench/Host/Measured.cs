using System.Diagnostics;
using System.Globalization;

namespace Watersown.Bench;

/// <summary>One line of the table.</summary>
/// <param name="Engine">Which database; - where none.</param>
/// <param name="What">What was asked.</param>
/// <param name="PerSecond">Requests, or rows of the bare loop, each second.</param>
/// <param name="Marks">Marks each second; 0 where none are sent.</param>
/// <param name="Median">Half were faster.</param>
/// <param name="P99">One of a hundred was slower.</param>
internal sealed record Measured(string Engine, string What, double PerSecond, double Marks, TimeSpan Median, TimeSpan P99)
{
    public const string Head = "| database | what | a second | marks a second | median ms | p99 ms |\n|---|---|---:|---:|---:|---:|\n";

    public string Line => string.Create(CultureInfo.InvariantCulture,
        $"| {Engine} | {What} | {PerSecond:#,0} | {(Marks > 0 ? Marks.ToString("#,0", CultureInfo.InvariantCulture) : "-")} | {Median.TotalMilliseconds:0.0} | {P99.TotalMilliseconds:0.0} |\n");

    /// <summary>Several do the same over and over, one at a time each, for a while; the first fifth is thrown away.</summary>
    public static async Task<Measured> OfAsync(string engine, string what, int many, TimeSpan span, int marks, Func<int, Task> once)
    {
        var (watch, warm) = (Stopwatch.StartNew(), span / 5);
        var took = await Task.WhenAll(Enumerable.Range(0, many).Select(one => Task.Run(async () =>
        {
            var times = new List<double>();
            while (watch.Elapsed < span + warm)
            {
                var (from, began) = (Stopwatch.GetTimestamp(), watch.Elapsed);
                await once(one);
                if (began >= warm) times.Add(Stopwatch.GetElapsedTime(from).TotalMilliseconds);
            }

            return times;
        })));
        var all = took.SelectMany(t => t).Order().ToArray();
        var each = all.Length / (watch.Elapsed - warm).TotalSeconds;
        return new(engine, what, each, each * marks, At(all, 0.5), At(all, 0.99));
    }

    private static TimeSpan At(double[] sorted, double share) => sorted.Length == 0 ? TimeSpan.Zero : TimeSpan.FromMilliseconds(sorted[Math.Min(sorted.Length - 1, (int)(sorted.Length * share))]);
}
