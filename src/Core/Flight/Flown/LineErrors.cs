using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>How far off the planned lines a job was flown, taken over the whole way rather than at its places.</summary>
/// <param name="Mean">Of the distance, either way.</param>
/// <param name="RootMeanSquare">Of the same.</param>
/// <param name="Of95">So far or less on 95 % of the way.</param>
public sealed record LineErrors(Length Mean, Length RootMeanSquare, Length Of95)
{
    // Every so many meters of way is one look.
    private const double Look = 2;

    /// <summary>
    /// Of passes against lines a swath apart along a heading, laid where they fit the passes best: what is left is not where the job
    /// began but how evenly it was flown. None where nothing goes along the heading of the job.
    /// </summary>
    [Source(nameof(Sources.TrackInterpolation), "square to the planned line, by interpolation")]
    public static LineErrors? Of(FlownPasses flown, Bearing heading, Length swath)
    {
        ImmutableArray<ImmutableArray<PlanePoint>> stretches = [.. flown.All.Where(p => p.IsAlong).SelectMany(p => p.Stretches).Select(s => s.Line)];
        var first = Fit(stretches.Select(l => Middle(l, heading)), swath.Meters);
        var off = new List<double>();
        foreach (var line in stretches)
        {
            var right = first + (Math.Round((Middle(line, heading) - first) / swath.Meters) * swath.Meters);
            for (var i = 1; i < line.Length; i++)
            {
                var looks = Math.Max(1, (int)(Turn.Hypot(line[i].East - line[i - 1].East, line[i].North - line[i - 1].North) / Look));
                for (var l = 0; l < looks; l++) off.Add(Math.Abs(EdgeBands.Between(line[i - 1], line[i], (l + 0.5) / looks).RightOf(heading) - right));
            }
        }

        if (off.Count == 0) return null;
        off.Sort();
        return new LineErrors(Length.FromMeters(off.Average()), Length.FromMeters(Math.Sqrt(off.Average(o => o * o))), Length.FromMeters(off[(int)(0.95 * (off.Count - 1))]));
    }

    // Mean place between two lines, taken round and round.
    private static double Fit(IEnumerable<double> rights, double swath)
    {
        var (sin, cos) = (0.0, 0.0);
        foreach (var right in rights)
        {
            var (s, c) = Math.SinCos(right / swath * 2 * Math.PI);
            (sin, cos) = (sin + s, cos + c);
        }

        return Math.Atan2(sin, cos) / (2 * Math.PI) * swath;
    }

    private static double Middle(ImmutableArray<PlanePoint> line, Bearing heading) => line.Average(p => p.RightOf(heading));
}
