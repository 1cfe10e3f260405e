using Watersown.Shapes;

namespace Watersown.Flight.Cover;

/// <summary>
/// Square cells laid over a field, edges along the plane's east and north. A cell counts as inside land, or inside a swath, by its
/// middle alone. Cells are kept in lines; lines follow one another the way that most of the flying goes, so that what a pass
/// covers changes little from one line to the next.
/// </summary>
public sealed record CoverGrid
{
    private const int Room = 64;

    internal CoverGrid(PlanePoint corner, double cell, int columns, int rows, bool northward) =>
        (Corner, CellMeters, Columns, Rows, Northward) = (corner, cell, columns, rows, northward);

    /// <summary>The south-west corner of the first cell.</summary>
    public PlanePoint Corner { get; }

    /// <summary>Side of a cell.</summary>
    public Length Cell => Length.FromMeters(CellMeters);

    public Area CellArea => Cell * Cell;

    /// <summary>Cells from west to east.</summary>
    public int Columns { get; }

    /// <summary>Cells from south to north.</summary>
    public int Rows { get; }

    internal double CellMeters { get; }

    /// <summary>Lines run east and follow one another north; else the other way about.</summary>
    internal bool Northward { get; }

    /// <summary>Lines, in the direction of flying.</summary>
    internal int Along => Northward ? Rows : Columns;

    /// <summary>Cells in a line.</summary>
    internal int Across => Northward ? Columns : Rows;

    /// <summary>
    /// From line to line in memory: whole vectors, an odd number of them, as lines a power of two apart would crowd each other out
    /// of a processor's cache.
    /// </summary>
    internal int Stride => (((Across + Room - 1) / Room) | 1) * Room;

    /// <summary>Memory for all lines and one more that takes what ends beyond them.</summary>
    internal int Size => (Along + 1) * Stride;

    /// <summary>+1 where the right of the flight lies towards higher cells of a line, else −1.</summary>
    internal double Turn => Northward ? 1 : -1;

    /// <summary>The middle of a cell.</summary>
    public PlanePoint Middle(int column, int row) => new(Corner.East + ((column + 0.5) * CellMeters), Corner.North + ((row + 0.5) * CellMeters));

    /// <summary>A place in cells: along the flying, across it.</summary>
    internal (double Along, double Across) ToCells(PlanePoint place)
    {
        var (east, north) = ((place.East - Corner.East) / CellMeters, (place.North - Corner.North) / CellMeters);
        return Northward ? (north, east) : (east, north);
    }

    internal PlanePoint FromCells(double along, double across)
    {
        var (east, north) = Northward ? (across, along) : (along, across);
        return new PlanePoint(Corner.East + (east * CellMeters), Corner.North + (north * CellMeters));
    }

    internal int Index(int column, int row) => Northward ? (row * Stride) + column : (column * Stride) + row;
}
