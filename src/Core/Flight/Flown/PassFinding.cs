using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>
/// Puts runs together to passes. A line is measured along its whole way, between its places too: the nearest places alone
/// would tell too large an error.
/// </summary>
public static class PassFinding
{
    // A run goes back on itself where it returns by this much, or by a swath.
    private const double LeastReturn = 30;

    // Two stretches one after the other are one pass where their lines lie within this share of a swath.
    private const double SameLine = 1.0 / 3;

    private const double LeastCommon = 0.5;

    /// <summary>The passes of runs over a field.</summary>
    [Source(nameof(Sources.TrackInterpolation), "mean lines by interpolation along the path")]
    public static FlownPasses Of(ImmutableArray<FlownRun> runs, Length swath)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(swath.Meters, 0, nameof(swath));
        var axes = Headings.Axes(runs.SelectMany(Steps));
        if (axes.IsEmpty) return new FlownPasses { All = [], Heading = null, Spacings = [] };
        var passes = Along(runs, axes[0], swath);
        var mean = Headings.Mean(passes.Where(p => p.IsAlong).DefaultIfEmpty(passes[0]).Select(p => (p.Heading.Degrees, p.Length.Meters)));
        passes = Along(runs, mean, swath);
        return new FlownPasses { All = passes, Heading = Bearing.FromDegrees(mean), Spacings = Spacings([.. passes.Where(p => p.IsAlong)]) };
    }

    private static IEnumerable<(double Direction, double Length)> Steps(FlownRun run)
    {
        for (var i = 1; i < run.Line.Length; i++)
            yield return (Headings.Of(run.Line[i - 1], run.Line[i]), Turn.Hypot(run.Line[i].East - run.Line[i - 1].East, run.Line[i].North - run.Line[i - 1].North));
    }

    private static ImmutableArray<FlownPass> Along(ImmutableArray<FlownRun> runs, double axis, Length swath)
    {
        var heading = Bearing.FromDegrees(axis);
        var found = new List<(List<FlownRun> Stretches, LineSums Sums)>();
        foreach (var stretch in runs.SelectMany(r => Parts(r, heading, Math.Max(LeastReturn, swath.Meters))))
        {
            var sums = LineSums.Of(stretch, heading);
            if (found.Count > 0 && found[^1].Sums.GoesOnWith(sums, swath.Meters * SameLine))
            {
                found[^1].Stretches.Add(stretch);
                found[^1] = (found[^1].Stretches, found[^1].Sums.With(sums));
            }
            else
            {
                found.Add(([stretch], sums));
            }
        }

        return [.. found.Select((f, i) => new FlownPass(i + 1, Bearing.FromDegrees(f.Sums.IsAlong ? axis + f.Sums.Lean : Headings.Of(f.Stretches[0].Line[0], f.Stretches[^1].Line[^1])), [.. f.Stretches])
        {
            IsAlong = f.Sums.IsAlong,
            Right = Length.FromMeters(f.Sums.Right),
            Strays = Length.FromMeters(f.Sums.Strays),
            Ahead = (Length.FromMeters(f.Sums.Least), Length.FromMeters(f.Sums.Most)),
        })];
    }

    // A run that turned with the gate open is several passes: it is cut where it comes back on itself.
    private static IEnumerable<FlownRun> Parts(FlownRun run, Bearing heading, double back)
    {
        var line = run.Line;
        var whole = Math.Max(run.Length.Meters, 1e-9);
        int start = 0, extreme = 0, side = 0;
        var way = 0.0;
        var began = run.Began;
        var ways = new double[line.Length];
        for (var i = 1; i < line.Length; i++) ways[i] = way += Turn.Hypot(line[i].East - line[i - 1].East, line[i].North - line[i - 1].North);
        for (var i = 1; i < line.Length; i++)
        {
            var now = line[i].AheadOf(heading);
            var (from, far) = (line[start].AheadOf(heading), line[extreme].AheadOf(heading));
            if (side == 0 && Math.Abs(now - from) > back) side = Math.Sign(now - from);
            if ((now - far) * (side == 0 ? Math.Sign(now - from) : side) >= 0) extreme = i;
            else if (side != 0 && (far - now) * side > back)
            {
                var ended = run.Began + (ways[extreme] / whole * (run.Ended - run.Began));
                yield return new FlownRun(line[start..(extreme + 1)], began, ended);
                start = extreme;
                began = ended;
                side = -side;
                extreme = i;
            }
        }

        yield return start == 0 ? run : new FlownRun(line[start..], began, run.Ended);
    }

    private static ImmutableArray<PassSpacing> Spacings(ImmutableArray<FlownPass> passes)
    {
        ImmutableArray<FlownPass> sorted = [.. passes.OrderBy(p => p.Right).ThenBy(p => p.Number)];
        var spacings = ImmutableArray.CreateBuilder<PassSpacing>();
        for (var i = 0; i < sorted.Length; i++)
        {
            var left = sorted[i];
            if (sorted.Skip(i + 1).FirstOrDefault(p => Common(left, p)) is { } right) spacings.Add(new PassSpacing(left.Number, right.Number, right.Right - left.Right));
        }

        return spacings.ToImmutable();
    }

    private static bool Common(FlownPass one, FlownPass other)
    {
        var common = Math.Min(one.Ahead.To.Meters, other.Ahead.To.Meters) - Math.Max(one.Ahead.From.Meters, other.Ahead.From.Meters);
        return common > LeastCommon * Math.Min((one.Ahead.To - one.Ahead.From).Meters, (other.Ahead.To - other.Ahead.From).Meters);
    }
}
