using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Watersown.Flight.Cover;

/// <summary>How many sides of cells part skipped, single and overlapped land from everything else.</summary>
internal readonly record struct CoverSides(long None, long Once, long More)
{
    private const int Word = 64;

    public static CoverSides Count(ReadOnlySpan<byte> cells, CoverGrid grid, FieldLines field)
    {
        var words = (grid.Across + Word - 1) / Word;
        var (before, now) = (new Kinds[words], new Kinds[words]);
        long none = 0, once = 0, more = 0;
        for (var line = 0; line <= grid.Along; line++)
        {
            Array.Clear(now);
            if (line < grid.Along) Read(cells.Slice(line * grid.Stride, grid.Stride), field[line], now);
            var left = default(Kinds);
            for (var i = 0; i < words; i++)
            {
                none += Sides(now[i].None, before[i].None, left.None);
                once += Sides(now[i].Once, before[i].Once, left.Once);
                more += Sides(now[i].More, before[i].More, left.More);
                left = now[i];
            }

            // The last cell of a line may have a side of its own.
            (none, once, more) = (none + (long)(left.None >> (Word - 1)), once + (long)(left.Once >> (Word - 1)), more + (long)(left.More >> (Word - 1)));
            (before, now) = (now, before);
        }

        return new CoverSides(none, once, more);
    }

    private static int Sides(ulong now, ulong before, ulong left) => BitOperations.PopCount(now ^ before) + BitOperations.PopCount(now ^ ((now << 1) | (left >> (Word - 1))));

    private static void Read(ReadOnlySpan<byte> counts, ReadOnlySpan<int> ends, Span<Kinds> kinds)
    {
        for (var i = 0; i + 1 < ends.Length; i += 2)
        {
            var (from, end) = (ends[i], ends[i + 1]);
            for (var word = from / Word; word * Word < end; word++)
            {
                var inside = ulong.MaxValue;
                if (word * Word < from) inside &= ulong.MaxValue << (from - (word * Word));
                if (end - (word * Word) < Word) inside &= ulong.MaxValue >> (Word - (end - (word * Word)));
                var (none, once) = Bits(counts.Slice(word * Word, Word));
                kinds[word] = new Kinds(kinds[word].None | (none & inside), kinds[word].Once | (once & inside), kinds[word].More | (~none & ~once & inside));
            }
        }
    }

    private static (ulong None, ulong Once) Bits(ReadOnlySpan<byte> counts)
    {
        if (Vector512.IsHardwareAccelerated)
        {
            var v = Vector512.LoadUnsafe(ref MemoryMarshal.GetReference(counts));
            return (Vector512.Equals(v, Vector512<byte>.Zero).ExtractMostSignificantBits(), Vector512.Equals(v, Vector512<byte>.One).ExtractMostSignificantBits());
        }

        ulong none = 0, once = 0;
        for (var i = 0; i < Word; i++)
        {
            if (counts[i] == 0) none |= 1UL << i;
            if (counts[i] == 1) once |= 1UL << i;
        }

        return (none, once);
    }

    // One bit for each of 64 cells.
    private readonly record struct Kinds(ulong None, ulong Once, ulong More);
}
