using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics.X86;
using Watersown.Flight.Cover;

namespace Watersown.Flight.Deposit;

/// <summary>
/// Adds passes to cells. A cell takes what the pattern lays at its middle; the borders between pieces part the cells among them, so
/// none takes from two. Lines of cells whose whole width lies between two borders go without looking at any border.
/// </summary>
internal sealed class DepositLayer
{
    /// <summary>So much of a piece's way must run along the lines of cells for it to be swept with its neighbors.</summary>
    public const double MostlyAlong = 0.5;

    private readonly DepositCells cells;
    private readonly bool wide;
    private ShapeTable table = null!;
    private bool vectors;

    public DepositLayer(DepositCells cells, CoverGrid grid, bool wide)
    {
        if (!grid.Northward) throw new ArgumentException("The cells do not lie as they must.", nameof(grid));
        (this.cells, this.wide) = (cells, wide && Avx512F.IsSupported);
    }

    /// <summary>What the next pieces lay.</summary>
    public void Take(ShapeTable shape) => (table, vectors) = (shape, wide && shape.FitsVectors);

    /// <summary>A piece by itself.</summary>
    public void Lay(in DepositPiece piece)
    {
        var (least, most) = (Row(Math.Min(piece.Back.Least, piece.Front.Least)), Row(Math.Max(piece.Back.Most, piece.Front.Most)));
        if (most <= least) return;
        var place = piece.Place(table);
        var (from, end) = piece.WayAlong switch
        {
            >= MostlyAlong => (Row(piece.Back.Most), Row(piece.Front.Least)),
            <= -MostlyAlong => (Row(piece.Front.Most), Row(piece.Back.Least)),
            _ => (most, most),
        };
        if (end <= from) (from, end) = (most, most);
        Rim(piece, place, least, from);
        while (from < end)
        {
            var until = Math.Min(end, ((from / DepositCells.Band) + 1) * DepositCells.Band);
            Inner(place, from, until);
            from = until;
        }

        Rim(piece, place, end, most);
    }

    /// <summary>
    /// A whole stretch that runs mostly along the lines of cells and never turns round on them, on the lines of one band. Where one
    /// border crosses a line, both pieces beside it are laid at once.
    /// </summary>
    public void Lay(RunSweep sweep, int band)
    {
        var row = Math.Max(band * DepositCells.Band, sweep.Lines(0).From);
        var end = Math.Min(Math.Min(cells.Lines, (band + 1) * DepositCells.Band), sweep.Lines(sweep.Pieces).End);
        while (row < end)
        {
            var at = sweep.From(row);
            var last = at;
            while (last + 1 < sweep.Pieces && sweep.Lines(last + 1).From <= row) last++;
            var next = sweep.Lines(last + 1).From;
            var begins = at == 0 && sweep.Lines(0).End > row;
            var capped = begins || (last + 1 == sweep.Pieces && next <= row);
            if (last == at && !capped)
            {
                var until = Math.Min(end, next);
                Inner(sweep.Place(at), row, until);
                row = until;
                continue;
            }

            // As long as the same borders cross.
            var same = Math.Min(end, sweep.Lines(at + 1).End);
            if (next > row) same = Math.Min(same, next);
            if (begins) same = Math.Min(same, sweep.Lines(0).End);
            if (vectors && last == at + 1 && !capped)
            {
                DepositVectors.Two(cells, table, sweep.Place(at), sweep.Place(last), sweep.Leaning(last), row, same);
            }
            else
            {
                for (var i = at; i <= last; i++) Rim(sweep.Piece(i), sweep.Place(i), row, same);
            }

            row = same;
        }
    }

    public int Row(double along) => unchecked((int)Math.Clamp(Math.Ceiling(along - 0.5), 0, cells.Lines));

    private void Inner(in PatternPlace place, int from, int end)
    {
        if (vectors)
        {
            DepositVectors.Inner(cells, table, place, from, end);
            return;
        }

        for (var row = from; row < end; row++)
        {
            var (first, last) = place.Sides(row + 0.5, row + 0.5, cells.Across);
            Plainly(place, row, first, last);
        }
    }

    // Lines that a border crosses.
    private void Rim(in DepositPiece piece, in PatternPlace place, int from, int end)
    {
        if (end <= from) return;
        var (back, front) = (new LeaningEdge(piece.Back), new LeaningEdge(piece.Front));
        for (var row = from; row < end; row++)
        {
            var (first, last) = place.Sides(row + 0.5, row + 0.5, cells.Across);
            if (!piece.Back.IsLevel) Bound(back, row + 0.5, piece.Back.RightAlong > piece.Back.LeftAlong, ref first, ref last);
            if (!piece.Front.IsLevel) Bound(front, row + 0.5, piece.Front.RightAlong < piece.Front.LeftAlong, ref first, ref last);
            if (last <= first) continue;
            if (vectors) DepositVectors.One(cells, table, place, row, (first, last));
            else Plainly(place, row, first, last);
        }
    }

    private static void Bound(in LeaningEdge edge, double along, bool toLeft, ref int first, ref int end)
    {
        if (end <= first) return;
        var at = unchecked((int)Math.Clamp(edge.FirstRight(along), first, end));
        if (toLeft) end = at;
        else first = at;
    }

    private void Plainly(in PatternPlace place, int row, int first, int last)
    {
        var t = place.At(row + 0.5, first + 0.5);
        while (first < last)
        {
            // Column by column, so that where a cell lies is worked out once for sixteen of them.
            var column = first / DepositCells.Lanes;
            ref var to = ref cells.At(row, column);
            for (var end = Math.Min(last, (column + 1) * DepositCells.Lanes); first < end; first++, t += place.PerAcross) Unsafe.Add(ref to, first % DepositCells.Lanes) += table.At(t);
        }
    }
}
