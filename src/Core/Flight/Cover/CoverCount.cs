using Watersown.Shapes;

namespace Watersown.Flight.Cover;

/// <summary>The count of all cells.</summary>
/// <param name="Tally">Cells of the field.</param>
/// <param name="SweptCells">Land within the edges of all that was flown, in cells, by its exact outline.</param>
/// <param name="LeftOut">Fixes left out.</param>
/// <param name="TooOften">A cell was flown over more often than a byte can tell, so the count is worthless.</param>
internal sealed record CoverCount(CellTally Tally, double SweptCells, int LeftOut, bool TooOften)
{
    /// <summary>Counts into cells that are all zero.</summary>
    public static CoverCount Run(Span<byte> cells, CoverGrid grid, FieldLines field, ImmutableArray<ImmutableArray<PlanePoint>> runs, Reach reach, bool wide)
    {
        var lines = new FlownLines(runs, new SwathEdges(grid, reach, wide));
        var marks = new EdgeMarks(cells, grid);
        var (swept, oneWays, covered) = (0.0, 0L, 0L);
        while (lines.Next())
        {
            covered += marks.Mark(lines.Edges, wide);
            oneWays += lines.Edges.OneWays;
            swept += lines.Edges.Swept;
        }

        var tally = CoverCells.Sum(cells, grid, field, wide);
        // A count that has run over its byte is missing from the sum of all cells.
        var tooOften = oneWays > Coverage.MostTimes && CoverCells.Total(cells, grid) != covered;
        return new CoverCount(tally, swept, lines.LeftOut, tooOften);
    }
}
