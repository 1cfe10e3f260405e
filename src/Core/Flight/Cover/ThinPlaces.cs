using Watersown.Shapes;

namespace Watersown.Flight.Cover;

/// <summary>Finds the places worth walking to among strips of bare or thin cells.</summary>
internal static class ThinPlaces
{
    public static ImmutableArray<ThinPlace> Find(List<CellStrip> strips, CoverGrid grid, ImmutableArray<ImmutableArray<PlanePoint>> runs, CoverOptions options)
    {
        var apart = (int)Math.Floor(options.Together.Meters / grid.CellMeters);
        var least = options.LeastPlace / grid.CellArea;
        return
        [
            .. CellStrips.Regions(strips, apart)
                .Select(region => (Region: region, Cells: region.Sum(s => (long)s.Cells)))
                .Where(r => r.Cells >= least)
                .OrderByDescending(r => r.Cells)
                .Take(options.MostPlaces)
                .Select((r, i) => Place(i + 1, r.Region, r.Cells, grid, runs)),
        ];
    }

    private static ThinPlace Place(int rank, List<CellStrip> region, long cells, CoverGrid grid, ImmutableArray<ImmutableArray<PlanePoint>> runs)
    {
        var along = region.Sum(s => (s.Line + 0.5) * s.Cells) / cells;
        var across = region.Sum(s => (s.From + s.End) / 2.0 * s.Cells) / cells;
        var middle = grid.FromCells(along, across);
        var (nearest, heading) = Nearest(middle, runs);
        var (length, width) = Extent(region, grid, heading);
        return new ThinPlace(rank, cells * grid.CellArea, middle, Standing(region, along, across, grid), heading, length, width, nearest);
    }

    // The cell of the region nearest to its middle.
    private static PlanePoint Standing(List<CellStrip> region, double along, double across, CoverGrid grid)
    {
        var best = (Square: double.PositiveInfinity, Along: 0.0, Across: 0.0);
        foreach (var strip in region)
        {
            var (line, cell) = (strip.Line + 0.5, Math.Clamp(Math.Floor(across), strip.From, strip.End - 1) + 0.5);
            var square = ((line - along) * (line - along)) + ((cell - across) * (cell - across));
            if (square < best.Square) best = (square, line, cell);
        }

        return grid.FromCells(best.Along, best.Across);
    }

    private static (ImmutableArray<int> Nearest, Bearing Heading) Nearest(PlanePoint middle, ImmutableArray<ImmutableArray<PlanePoint>> runs)
    {
        var found = runs.Select((run, i) => (Run: i, Line: LineDistance.From(middle, run)))
            .Where(r => double.IsFinite(r.Line.Distance))
            .OrderBy(r => r.Line.Distance).ThenBy(r => r.Run).Take(2).ToList();
        return found.Count == 0 ? ([], Bearing.FromDegrees(0)) : ([.. found.Select(f => f.Run)], found[0].Line.Axis);
    }

    private static (Length Long, Length Wide) Extent(List<CellStrip> region, CoverGrid grid, Bearing heading)
    {
        double ahead = double.NegativeInfinity, behind = double.PositiveInfinity, right = double.NegativeInfinity, left = double.PositiveInfinity;
        foreach (var strip in region)
        {
            foreach (var (line, cell) in (ReadOnlySpan<(int, int)>)[(strip.Line, strip.From), (strip.Line, strip.End), (strip.Line + 1, strip.From), (strip.Line + 1, strip.End)])
            {
                var corner = grid.FromCells(line, cell);
                var (a, r) = (corner.AheadOf(heading), corner.RightOf(heading));
                (ahead, behind, right, left) = (Math.Max(ahead, a), Math.Min(behind, a), Math.Max(right, r), Math.Min(left, r));
            }
        }

        return (Length.FromMeters(ahead - behind), Length.FromMeters(right - left));
    }
}
