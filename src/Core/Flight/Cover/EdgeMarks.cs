using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Watersown.Flight.Cover;

/// <summary>
/// Marks in each line of cells what begins there and what ends: +1 and −1 where an edge of a swath passes the middle of a cell's
/// column. Summed from line to line the marks are the number of passes over each cell. A pass gives as many marks as its edges
/// wander sideways, not as many as it covers cells.
/// </summary>
internal readonly ref struct EdgeMarks
{
    private readonly Span<byte> cells;
    private readonly CoverGrid grid;

    public EdgeMarks(Span<byte> cells, CoverGrid grid)
    {
        if (cells.Length < grid.Size) throw new ArgumentException("Too little room for the cells.", nameof(cells));
        this.cells = cells;
        this.grid = grid;
    }

    /// <summary>Marks a stretch; gives back the cells covered, each as often as it is.</summary>
    public long Mark(SwathEdges edges, bool wide)
    {
        var last = edges.Places - 1;
        var covered = Chain(edges.RightAlong, edges.RightAcross, last, grid.Turn, wide)
            + Chain(edges.LeftAlong, edges.LeftAcross, last, -grid.Turn, wide)
            + Edge((edges.LeftAlong[0], edges.LeftAcross[0]), (edges.RightAlong[0], edges.RightAcross[0]), grid.Turn)
            + Edge((edges.RightAlong[last], edges.RightAcross[last]), (edges.LeftAlong[last], edges.LeftAcross[last]), grid.Turn);
        return (long)covered;
    }

    private double Chain(double[] along, double[] across, int last, double turn, bool wide)
    {
        var covered = 0.0;
        var i = 0;
        if (wide && Vector512.IsHardwareAccelerated)
        {
            for (; i + Vector512<double>.Count <= last; i += Vector512<double>.Count)
                covered += Eight(ref MemoryMarshal.GetArrayDataReference(along), ref MemoryMarshal.GetArrayDataReference(across), i, turn);
        }

        for (; i < last; i++) covered += Edge((along[i], across[i]), (along[i + 1], across[i + 1]), turn);
        return covered;
    }

    private double Edge((double Along, double Across) a, (double Along, double Across) b, double turn)
    {
        var first = Math.Max(Math.Ceiling(Math.Min(a.Across, b.Across) - 0.5), 0);
        var end = Math.Min(Math.Ceiling(Math.Max(a.Across, b.Across) - 0.5), grid.Across);
        if (!(end > first)) return 0;
        var slope = (b.Along - a.Along) / (b.Across - a.Across);
        var line = a.Along + ((first + 0.5 - a.Across) * slope) - 0.5;
        var step = b.Across > a.Across ? turn : -turn;
        var covered = 0.0;
        for (; first < end; first++, line += slope)
        {
            var at = Math.Min(Math.Max(Math.Ceiling(line), 0), grid.Along);
            covered += step * (grid.Along - at);
            unchecked
            {
                cells[(int)((at * grid.Stride) + first)] += (byte)(int)step;
            }
        }

        return covered;
    }

    // Eight edges of a chain, each marked column by column while any of them has one left; the same arithmetic as one edge.
    private double Eight(ref double alongs, ref double acrosses, int i, double turn)
    {
        var half = Vector512.Create(0.5);
        Vector512<double> a = Vector512.LoadUnsafe(ref alongs, (nuint)i), b = Vector512.LoadUnsafe(ref alongs, (nuint)i + 1);
        Vector512<double> c = Vector512.LoadUnsafe(ref acrosses, (nuint)i), d = Vector512.LoadUnsafe(ref acrosses, (nuint)i + 1);
        var first = Vector512.MaxNative(Vector512.Ceiling(Vector512.MinNative(c, d) - half), Vector512<double>.Zero);
        var end = Vector512.MinNative(Vector512.Ceiling(Vector512.MaxNative(c, d) - half), Vector512.Create((double)grid.Across));
        var active = Vector512.GreaterThan(end, first);
        if (active == Vector512<double>.Zero) return 0;
        var slope = (b - a) / (d - c);
        var line = a + ((first + half - c) * slope) - half;
        var step = Vector512.ConditionalSelect(Vector512.GreaterThan(d, c), Vector512.Create(turn), Vector512.Create(-turn));
        var (lines, stride) = (Vector512.Create((double)grid.Along), Vector512.Create((double)grid.Stride));
        var lanes = Vector512.Create(0.0, 8, 16, 24, 32, 40, 48, 56);
        var covered = Vector512<double>.Zero;
        ref var cell = ref MemoryMarshal.GetReference(cells);
        Unsafe.SkipInit(out Eights at);
        Unsafe.SkipInit(out Eights by);
        do
        {
            // A lane with nothing left adds nothing to a cell of its own in the spare line: with one cell for all they would wait for each other.
            var to = Vector512.ConditionalSelect(active, Vector512.MinNative(Vector512.MaxNative(Vector512.Ceiling(line), Vector512<double>.Zero), lines), lines);
            var adds = step & active;
            covered += adds * (lines - to);
            Vector512.ConvertToInt64Native((to * stride) + Vector512.ConditionalSelect(active, first, lanes)).StoreUnsafe(ref at[0]);
            Vector512.ConvertToInt64Native(adds).StoreUnsafe(ref by[0]);
            unchecked
            {
                Unsafe.Add(ref cell, (nint)at[0]) += (byte)by[0];
                Unsafe.Add(ref cell, (nint)at[1]) += (byte)by[1];
                Unsafe.Add(ref cell, (nint)at[2]) += (byte)by[2];
                Unsafe.Add(ref cell, (nint)at[3]) += (byte)by[3];
                Unsafe.Add(ref cell, (nint)at[4]) += (byte)by[4];
                Unsafe.Add(ref cell, (nint)at[5]) += (byte)by[5];
                Unsafe.Add(ref cell, (nint)at[6]) += (byte)by[6];
                Unsafe.Add(ref cell, (nint)at[7]) += (byte)by[7];
            }

            first += Vector512<double>.One;
            line += slope;
            active = Vector512.GreaterThan(end, first);
        }
        while (active != Vector512<double>.Zero);
        return Vector512.Sum(covered);
    }

    [InlineArray(8)]
    private struct Eights
    {
        private long first;
    }
}
