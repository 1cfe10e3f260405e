namespace Watersown.Flight.Cover;

/// <summary>How often each cell of a field was flown over, and what follows from it.</summary>
public sealed class FieldCover
{
    private readonly byte[] counts;
    private readonly FieldLines field;

    internal FieldCover(CoverGrid grid, byte[] counts, FieldLines field, CoverShares shares, ImmutableArray<ThinPlace> thinPlaces, int leftOut) =>
        (Grid, this.counts, this.field, Shares, ThinPlaces, FixesLeftOut) = (grid, counts, field, shares, thinPlaces, leftOut);

    public CoverGrid Grid { get; }

    public CoverShares Shares { get; }

    /// <summary>Bare places, the largest first.</summary>
    public ImmutableArray<ThinPlace> ThinPlaces { get; }

    /// <summary>Fixes too near to one another to tell the line's way, or at which it bent back on itself within the swath: the swath runs on past them.</summary>
    public int FixesLeftOut { get; }

    /// <summary>How often a cell was flown over, inside the field or not.</summary>
    public int CountAt(int column, int row)
    {
        Require(column, row);
        return counts[Grid.Index(column, row)];
    }

    /// <summary>Whether the middle of a cell lies in the field.</summary>
    public bool IsInside(int column, int row)
    {
        Require(column, row);
        var (line, cell) = Grid.Northward ? (row, column) : (column, row);
        var ends = field[line];
        var before = 0;
        while (before < ends.Length && ends[before] <= cell) before++;
        return before % 2 == 1;
    }

    private void Require(int column, int row)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(column);
        ArgumentOutOfRangeException.ThrowIfNegative(row);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(column, Grid.Columns);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(row, Grid.Rows);
    }
}
