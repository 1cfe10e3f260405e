using Watersown.Shapes;

namespace Watersown.Flight.Cover;

/// <summary>The outlines of what was swept: what cells count, as shapes.</summary>
public static class SwathOutlines
{
    /// <summary>One ring for each stretch of the runs that goes one way: its left edge, and its right edge back.</summary>
    /// <param name="runs">For each run the places of the line of flight on the ground.</param>
    /// <param name="swath">Width of the swath.</param>
    /// <param name="right">How far right of the line its middle lies.</param>
    public static ImmutableArray<ImmutableArray<PlanePoint>> Of(ImmutableArray<ImmutableArray<PlanePoint>> runs, Length swath, Length right)
    {
        var grid = new CoverGrid(new PlanePoint(0, 0), 1, 1, 1, northward: true);
        var lines = new FlownLines(runs, new SwathEdges(grid, Reach.About(swath, right), wide: false));
        var outlines = ImmutableArray.CreateBuilder<ImmutableArray<PlanePoint>>();
        while (lines.Next())
        {
            var e = lines.Edges;
            outlines.Add(
            [
                .. Enumerable.Range(0, e.Places).Select(i => grid.FromCells(e.LeftAlong[i], e.LeftAcross[i])),
                .. Enumerable.Range(0, e.Places).Reverse().Select(i => grid.FromCells(e.RightAlong[i], e.RightAcross[i])),
            ]);
        }

        return outlines.ToImmutable();
    }
}
