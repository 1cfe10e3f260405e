using Watersown.Shapes;

namespace Watersown.Flight.Cover;

/// <summary>Lines as a receiver logs them, made fit for laying a swath along.</summary>
internal static class LineCleaning
{
    // Fixes nearer to one another than this share of the swath tell more of the receiver's jumps than of the line's way.
    private const double Near = 1.0 / 8;

    /// <summary>The line without fixes that lie too near to one another to tell its way, cut in two at each turn of more than a right angle.</summary>
    public static List<List<PlanePoint>> Pieces(ImmutableArray<PlanePoint> run, Length swath)
    {
        var pieces = new List<List<PlanePoint>>();
        var piece = new List<PlanePoint>();
        foreach (var place in Apart(run, swath.Meters * Near))
        {
            if (piece.Count > 1 && TurnsRound(piece[^2], piece[^1], place))
            {
                pieces.Add(piece);
                piece = [piece[^1]];
            }

            piece.Add(place);
        }

        if (piece.Count > 1) pieces.Add(piece);
        return pieces;
    }

    // Both ends of the line stay where they are.
    private static List<PlanePoint> Apart(ImmutableArray<PlanePoint> run, double least)
    {
        var kept = new List<PlanePoint>(run.Length);
        var last = default(PlanePoint?);
        foreach (var place in run)
        {
            if (!double.IsFinite(place.East) || !double.IsFinite(place.North)) continue;
            last = place;
            if (kept.Count == 0 || Distance(kept[^1], place) >= least) kept.Add(place);
        }

        if (kept.Count > 1 && last is { } end) kept[^1] = end;
        return kept;
    }

    /// <summary>A line just laid, without one end of each piece whose edge runs backwards; the ends of the line stay where they can.</summary>
    public static List<PlanePoint> WithoutFolds(List<PlanePoint> line, SwathEdges laid)
    {
        var kept = new List<PlanePoint>(line.Count) { line[0] };
        for (var i = 1; i < line.Count; i++)
        {
            if (laid.IsSound(i - 1)) kept.Add(line[i]);
            else if (i == line.Count - 1 && kept.Count > 1) kept[^1] = line[i];
            else if (i < line.Count - 1) kept.Add(line[++i]);
        }

        return kept;
    }

    private static double Distance(PlanePoint a, PlanePoint b) => double.Hypot(b.East - a.East, b.North - a.North);

    private static bool TurnsRound(PlanePoint a, PlanePoint b, PlanePoint c) =>
        ((b.East - a.East) * (c.East - b.East)) + ((b.North - a.North) * (c.North - b.North)) < 0;
}
