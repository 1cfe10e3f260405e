using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Watersown.Flight.Deposit;

/// <summary>Adds what a pattern lays to lines of cells of one band, sixteen cells at a time.</summary>
internal static class DepositVectors
{
    private const int Lanes = DepositCells.Lanes;

    // After so many lines the place within the pattern is worked out anew, so that no rounding adds up.
    private const int MostSteps = 16;

    /// <summary>Lines that no border crosses.</summary>
    public static void Inner(DepositCells cells, ShapeTable table, in PatternPlace place, int from, int end)
    {
        Vector512<float> bases = table.Bases(0), moreBases = table.Bases(1), slopes = table.Slopes(0), moreSlopes = table.Slopes(1);
        var top = Vector512.Create(table.Top);
        var lanes = Vector512<float>.Indices * (float)place.PerAcross;
        var step = Vector512.Create((float)place.PerAlong);
        for (; from < end; from += MostSteps)
        {
            var rows = Math.Min(end - from, MostSteps);
            var (first, last) = place.Sides(from + 0.5, from + rows - 0.5, cells.Across);
            if (last <= first) continue;
            var column = first / Lanes;
            ref var to = ref cells.At(from, column);
            for (var at = column * Lanes; at < last; at += Lanes)
            {
                var t = Vector512.Create((float)place.At(from + 0.5, at + 0.5)) + lanes;
                for (nuint i = 0; i < (nuint)(rows * Lanes); i += Lanes)
                {
                    (Vector512.LoadUnsafe(ref to, i) + Up(t, top, bases, moreBases, slopes, moreSlopes)).StoreUnsafe(ref to, i);
                    t += step;
                }

                to = ref Unsafe.Add(ref to, DepositCells.NextColumn);
            }
        }
    }

    /// <summary>Cells of one line from a first up to a last.</summary>
    public static void One(DepositCells cells, ShapeTable table, in PatternPlace place, int row, (int First, int End) span)
    {
        Vector512<float> bases = table.Bases(0), moreBases = table.Bases(1), slopes = table.Slopes(0), moreSlopes = table.Slopes(1);
        var top = Vector512.Create(table.Top);
        var column = span.First / Lanes;
        var at = column * Lanes;
        var (low, high) = (Vector512.Create(span.First - at), Vector512.Create(span.End - at));
        var t = Vector512.Create((float)place.At(row + 0.5, at + 0.5)) + (Vector512<float>.Indices * (float)place.PerAcross);
        var step = Vector512.Create((float)(place.PerAcross * Lanes));
        ref var to = ref cells.At(row, column);
        for (; at < span.End; at += Lanes)
        {
            var inside = Vector512.GreaterThanOrEqual(Vector512<int>.Indices, low) & Vector512.LessThan(Vector512<int>.Indices, high);
            (Vector512.LoadUnsafe(ref to) + (Up(t, top, bases, moreBases, slopes, moreSlopes) & inside.AsSingle())).StoreUnsafe(ref to);
            to = ref Unsafe.Add(ref to, DepositCells.NextColumn);
            t += step;
            low -= Vector512.Create(Lanes);
            high -= Vector512.Create(Lanes);
        }
    }

    /// <summary>Lines that the border between two pieces crosses; the first piece is the one before it in the order of the lines.</summary>
    public static void Two(DepositCells cells, ShapeTable table, in PatternPlace before, in PatternPlace after, in LeaningEdge border, int from, int end)
    {
        // Cells right of the border lie before it where it rises to the right.
        if (border.Rises) Parted(cells, table, after, before, border, from, end);
        else Parted(cells, table, before, after, border, from, end);
    }

    private static void Parted(DepositCells cells, ShapeTable table, in PatternPlace leftPlace, in PatternPlace rightPlace, in LeaningEdge border, int from, int end)
    {
        Vector512<float> bases = table.Bases(0), moreBases = table.Bases(1), slopes = table.Slopes(0), moreSlopes = table.Slopes(1);
        var top = Vector512.Create(table.Top);
        var (lanesLeft, lanesRight) = (Vector512<float>.Indices * (float)leftPlace.PerAcross, Vector512<float>.Indices * (float)rightPlace.PerAcross);
        var (stepLeft, stepRight) = (Vector512.Create((float)(leftPlace.PerAcross * Lanes)), Vector512.Create((float)(rightPlace.PerAcross * Lanes)));
        for (var row = from; row < end; row++)
        {
            var along = row + 0.5;
            var first = Math.Max(0, Math.Min(leftPlace.Low + (along * leftPlace.Lean), rightPlace.Low + (along * rightPlace.Lean)) - 0.5);
            var last = Math.Min(cells.Across, Math.Max(leftPlace.High + (along * leftPlace.Lean), rightPlace.High + (along * rightPlace.Lean)) + 0.5);
            if (!(last > first)) continue;
            var column = unchecked((int)first) / Lanes;
            var at = column * Lanes;
            var parted = Vector512.Create(unchecked((int)Math.Clamp(border.FirstRight(along), 0, cells.Across) - at));
            var left = Vector512.Create((float)leftPlace.At(along, at + 0.5)) + lanesLeft;
            var right = Vector512.Create((float)rightPlace.At(along, at + 0.5)) + lanesRight;
            ref var to = ref cells.At(row, column);
            for (; at < last; at += Lanes)
            {
                var t = Vector512.ConditionalSelect(Vector512.LessThan(Vector512<int>.Indices, parted).AsSingle(), left, right);
                (Vector512.LoadUnsafe(ref to) + Up(t, top, bases, moreBases, slopes, moreSlopes)).StoreUnsafe(ref to);
                to = ref Unsafe.Add(ref to, DepositCells.NextColumn);
                left += stepLeft;
                right += stepRight;
                parted -= Vector512.Create(Lanes);
            }
        }
    }

    // What lies at places within the pattern, by a table in registers.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<float> Up(Vector512<float> t, Vector512<float> top, Vector512<float> bases, Vector512<float> moreBases, Vector512<float> slopes, Vector512<float> moreSlopes)
    {
        var clamped = Vector512.MinNative(Vector512.MaxNative(t, Vector512<float>.Zero), top);
        var piece = Vector512.ConvertToInt32Native(clamped);
        return Vector512.FusedMultiplyAdd(Avx512F.PermuteVar16x32x2(slopes, piece, moreSlopes), clamped, Avx512F.PermuteVar16x32x2(bases, piece, moreBases));
    }
}
