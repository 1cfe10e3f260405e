using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Watersown.Flight.Cover;

namespace Watersown.Flight.Deposit;

/// <summary>
/// The cells of a deposit in memory: bands of lines, in each band columns of sixteen cells, in each column its lines one after the
/// other. A pass, some columns wide and many lines long, so lies on few pages, each read from end to end.
/// </summary>
internal sealed class DepositCells
{
    /// <summary>Cells side by side in a column.</summary>
    public const int Lanes = 16;

    /// <summary>Lines of a band.</summary>
    public const int Band = 64;

    private const int MemoryPage = 4096;
    private readonly Memory<float> cells;

    public DepositCells(CoverGrid grid)
    {
        (Lines, Across) = (grid.Along, grid.Across);
        Columns = (Across + Lanes - 1) / Lanes;
        Bands = (Lines + Band - 1) / Band;
        var size = Bands * Columns * Band * Lanes;

        // A column of a band is one page of memory where the cells begin with one.
        var room = GC.AllocateArray<float>(size + (MemoryPage / sizeof(float)), pinned: true);
        var skip = (int)((MemoryPage - (Marshal.UnsafeAddrOfPinnedArrayElement(room, 0) % MemoryPage)) % MemoryPage) / sizeof(float);
        cells = room.AsMemory(skip, size);
    }

    public int Lines { get; }

    public int Across { get; }

    public int Columns { get; }

    public int Bands { get; }

    public float this[int line, int cell] => cells.Span[Index(line, cell)];

    /// <summary>The first cell of a column on a line; its other lines of the band follow, sixteen cells apart.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public ref float At(int line, int column) => ref Unsafe.Add(ref MemoryMarshal.GetReference(cells.Span), Index(line, column * Lanes));

    /// <summary>From the cell of one column to the same of the next.</summary>
    public static int NextColumn => Band * Lanes;

    /// <summary>A whole line, side by side.</summary>
    public void Read(int line, Span<float> into)
    {
        var all = cells.Span;
        for (var (column, from) = (0, Index(line, 0)); column < Columns; column++, from += NextColumn) all.Slice(from, Lanes).CopyTo(into[(column * Lanes)..]);
    }

    public void Clear(int band) => cells.Span.Slice(band * Columns * NextColumn, Columns * NextColumn).Clear();

    // What this comes to was checked when the room was made.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int Index(int line, int cell) => unchecked(((((line / Band) * Columns) + (cell / Lanes)) * NextColumn) + ((line % Band) * Lanes) + (cell % Lanes));
}
