using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Watersown.Flight.Cover;

namespace Watersown.Flight.Deposit;

/// <summary>Cells of a field by what was laid on them, over the rate asked for.</summary>
/// <param name="Cells">How many.</param>
/// <param name="Beyond">Sum of what lies beyond the rate asked for; below zero where less does.</param>
/// <param name="Squares">Sum of its squares.</param>
/// <param name="Near">How many are near the rate asked for.</param>
/// <param name="Thin">How many are thin.</param>
internal readonly record struct DepositTally(long Cells, double Beyond, double Squares, long Near, long Thin)
{
    public double Mean => 1 + (Beyond / Cells);

    /// <summary>Standard deviation over mean, population form; nothing where nothing was laid.</summary>
    public double Cv
    {
        get
        {
            var off = Beyond / Cells;
            return Mean > 0 ? Math.Sqrt(Math.Max(0, (Squares / Cells) - (off * off))) / Mean : 0;
        }
    }

    public static DepositTally Of(DepositCells cells, FieldLines field, (double Near, double Thin) limits, bool wide)
    {
        var tally = default(DepositTally);
        var row = new float[cells.Columns * DepositCells.Lanes];
        for (var line = 0; line < cells.Lines; line++)
        {
            var ends = field[line];
            if (ends.IsEmpty) continue;
            cells.Read(line, row);
            for (var i = 0; i + 1 < ends.Length; i += 2)
            {
                var laid = row.AsSpan(ends[i], ends[i + 1] - ends[i]);
                tally += wide && Vector512.IsHardwareAccelerated ? Look(laid, limits) : LookPlainly(laid, limits);
            }
        }

        return tally;
    }

    public static DepositTally operator +(DepositTally a, DepositTally b) => new(a.Cells + b.Cells, a.Beyond + b.Beyond, a.Squares + b.Squares, a.Near + b.Near, a.Thin + b.Thin);

    private static DepositTally Look(ReadOnlySpan<float> laid, (double Near, double Thin) limits)
    {
        var (beyond, squares) = (Vector512<float>.Zero, Vector512<float>.Zero);
        var (near, thin) = (Vector512.Create((float)limits.Near), Vector512.Create((float)limits.Thin));
        var (nears, thins) = (Vector512<int>.Zero, Vector512<int>.Zero);
        ref var from = ref MemoryMarshal.GetReference(laid);
        var i = 0;
        for (; i + Vector512<float>.Count <= laid.Length; i += Vector512<float>.Count)
        {
            var v = Vector512.LoadUnsafe(ref from, (nuint)i);
            var off = v - Vector512<float>.One;
            beyond += off;
            squares = Vector512.FusedMultiplyAdd(off, off, squares);
            nears -= Vector512.LessThanOrEqual(Vector512.Abs(off), near).AsInt32();
            thins -= Vector512.LessThan(v, thin).AsInt32();
        }

        return new DepositTally(i, Vector512.Sum(beyond), Vector512.Sum(squares), Vector512.Sum(nears), Vector512.Sum(thins)) + LookPlainly(laid[i..], limits);
    }

    private static DepositTally LookPlainly(ReadOnlySpan<float> laid, (double Near, double Thin) limits)
    {
        var (nearest, thinnest) = ((float)limits.Near, (float)limits.Thin);
        var (beyond, squares, near, thin) = (0.0, 0.0, 0L, 0L);
        foreach (var v in laid)
        {
            var off = v - 1;
            (beyond, squares) = (beyond + off, squares + ((double)off * off));
            if (Math.Abs(off) <= nearest) near++;
            if (v < thinnest) thin++;
        }

        return new DepositTally(laid.Length, beyond, squares, near, thin);
    }
}
