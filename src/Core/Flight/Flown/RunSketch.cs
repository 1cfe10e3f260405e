using Watersown.Land;
using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>Runs with as few places as still draw them.</summary>
public static class RunSketch
{
    /// <summary>How far a line so drawn may lie off the one flown.</summary>
    [Source(nameof(Sources.CommonPractice), "one meter")]
    public static Length Off { get; } = Length.FromMeters(1);

    private const int MostRuns = 1000;
    private const int MostPlaces = 200;

    /// <summary>Each run of a report as places on the ground.</summary>
    public static ImmutableArray<ImmutableArray<GeoPoint>> Of(FlownReport report) =>
        [.. report.Landed.Take(MostRuns).Select(r => (ImmutableArray<GeoPoint>)[.. Simple(r.Line).Take(MostPlaces).Select(report.Track.Plane.ToPlace)])];

    // As far along as one straight line stays near every place in between; so no place is looked at more than a few times.
    private static IEnumerable<PlanePoint> Simple(ImmutableArray<PlanePoint> line)
    {
        var start = 0;
        yield return line[0];
        while (start < line.Length - 1)
        {
            var step = 1;
            while (start + (step * 2) < line.Length && IsNear(line, start, start + (step * 2))) step *= 2;
            var end = Math.Min(line.Length - 1, start + step);
            if (end < line.Length - 1 && IsNear(line, start, line.Length - 1)) end = line.Length - 1;
            yield return line[end];
            start = end;
        }
    }

    private static bool IsNear(ImmutableArray<PlanePoint> line, int from, int to)
    {
        var (east, north) = (line[to].East - line[from].East, line[to].North - line[from].North);
        var length = Turn.Hypot(east, north);
        if (length == 0) return false;
        for (var i = from + 1; i < to; i++)
        {
            if (Math.Abs(((line[i].East - line[from].East) * north) - ((line[i].North - line[from].North) * east)) / length > Off.Meters) return false;
        }

        return true;
    }
}
