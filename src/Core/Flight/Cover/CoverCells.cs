using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Watersown.Flight.Cover;

/// <summary>Cells of a field by how often they were flown over.</summary>
/// <param name="Inside">All cells of the field.</param>
/// <param name="None">Never.</param>
/// <param name="More">Twice or more.</param>
/// <param name="Excess">How often more than once, all cells together.</param>
internal readonly record struct CellTally(long Inside, long None, long More, long Excess)
{
    public long Once => Inside - None - More;

    public static CellTally operator +(CellTally a, CellTally b) => new(a.Inside + b.Inside, a.None + b.None, a.More + b.More, a.Excess + b.Excess);
}

/// <summary>Sums marks to counts, line after line, and tells the field's cells apart while each line is at hand.</summary>
internal static class CoverCells
{
    private const int Step = 64;

    public static CellTally Sum(Span<byte> cells, CoverGrid grid, FieldLines field, bool wide)
    {
        wide &= Vector512.IsHardwareAccelerated;
        var tally = default(CellTally);
        for (var line = 0; line < grid.Along; line++)
        {
            var counts = cells.Slice(line * grid.Stride, grid.Stride);
            if (line > 0) Add(cells.Slice((line - 1) * grid.Stride, grid.Stride), counts, wide);
            var ends = field[line];
            for (var i = 0; i + 1 < ends.Length; i += 2) tally += wide ? Look(counts, ends[i], ends[i + 1]) : LookPlainly(counts[ends[i]..ends[i + 1]]);
        }

        return tally;
    }

    /// <summary>All counts together, in the field and out.</summary>
    public static long Total(ReadOnlySpan<byte> cells, CoverGrid grid)
    {
        long total = 0;
        for (var line = 0; line < grid.Along; line++)
        {
            foreach (var count in cells.Slice(line * grid.Stride, grid.Across)) total += count;
        }

        return total;
    }

    private static void Add(ReadOnlySpan<byte> before, Span<byte> counts, bool wide)
    {
        if (wide)
        {
            ref var from = ref MemoryMarshal.GetReference(before);
            ref var to = ref MemoryMarshal.GetReference(counts);
            for (nuint i = 0; i < (nuint)counts.Length; i += Step) (Vector512.LoadUnsafe(ref from, i) + Vector512.LoadUnsafe(ref to, i)).StoreUnsafe(ref to, i);
            return;
        }

        // Eight counts in a word: the high bits are added apart, so that nothing runs from one count into the next.
        const ulong Low = 0x7F7F_7F7F_7F7F_7F7F;
        var a = MemoryMarshal.Cast<byte, ulong>(before);
        var b = MemoryMarshal.Cast<byte, ulong>(counts);
        for (var i = 0; i < b.Length; i++) b[i] = ((a[i] & Low) + (b[i] & Low)) ^ ((a[i] ^ b[i]) & ~Low);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static CellTally Look(Span<byte> counts, int from, int end)
    {
        if (end <= from) return default;
        ref var cell = ref MemoryMarshal.GetReference(counts);
        int none = 0, more = 0;
        long excess = 0;
        for (var i = from & -Step; i < end; i += Step)
        {
            var inside = ulong.MaxValue;
            if (i < from) inside &= ulong.MaxValue << (from - i);
            if (end - i < Step) inside &= ulong.MaxValue >> (Step - (end - i));
            var v = Vector512.LoadUnsafe(ref cell, (nuint)i);
            none += BitOperations.PopCount(Vector512.Equals(v, Vector512<byte>.Zero).ExtractMostSignificantBits() & inside);
            more += BitOperations.PopCount(Vector512.GreaterThan(v, Vector512<byte>.One).ExtractMostSignificantBits() & inside);
            var thrice = Vector512.GreaterThan(v, Vector512.Create((byte)2)).ExtractMostSignificantBits() & inside;
            if (thrice != 0) excess += Beyond(counts, i, thrice);
        }

        return new CellTally(end - from, none, more, more + excess);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static long Beyond(Span<byte> counts, int at, ulong which)
    {
        long beyond = 0;
        for (; which != 0; which &= which - 1) beyond += counts[at + BitOperations.TrailingZeroCount(which)] - 2;
        return beyond;
    }

    private static CellTally LookPlainly(ReadOnlySpan<byte> counts)
    {
        long none = 0, more = 0, excess = 0;
        foreach (var count in counts)
        {
            if (count == 0) none++;
            if (count > 1) (more, excess) = (more + 1, excess + count - 1);
        }

        return new CellTally(counts.Length, none, more, excess);
    }
}
