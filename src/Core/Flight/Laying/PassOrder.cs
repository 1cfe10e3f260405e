namespace Watersown.Flight.Laying;

/// <summary>In which order passes are taken up.</summary>
public enum PassOrderKind
{
    /// <summary>Each beside the last.</summary>
    BackAndForth,

    /// <summary>Half of the field apart, so that every turn is a plain half circle and neighbors are flown the same way.</summary>
    Racetrack,
}

/// <summary>Orders of passes by number, left to right from 1.</summary>
public static class PassOrder
{
    /// <summary>Left to right, one beside the other.</summary>
    [Source(nameof(Sources.Definition))]
    [return: PlainNumber("numbers of passes in the order flown")]
    public static ImmutableArray<int> BackAndForth([PlainNumber("passes")] int passes) => [.. Enumerable.Range(1, passes)];

    /// <summary>
    /// By turns from each half: the first, the one an offset on, the second, and so on. Of more than two offsets, field after
    /// field of two offsets side by side. What is left over at the far edge goes back and forth.
    /// </summary>
    /// <param name="passes">Passes of the field.</param>
    /// <param name="offset">Passes from one side of the racetrack to the other.</param>
    [Source(nameof(Sources.RacetrackSequence), "1, 1 + k, 2, 2 + k, …")]
    [return: PlainNumber("numbers of passes in the order flown")]
    public static ImmutableArray<int> Racetrack([PlainNumber("passes")] int passes, [PlainNumber("passes")] int offset)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(offset, 1);
        var order = ImmutableArray.CreateBuilder<int>(passes);
        var first = 1;

        // The last round shares out what is left, so that its sides are as far apart as they can be.
        for (; passes - first + 1 >= 2 * offset; first += 2 * offset)
        {
            var left = passes - first + 1;
            var k = left < 4 * offset ? (left + 1) / 2 : offset;
            Round(order, first, k, left < 4 * offset ? left : 2 * offset);
            if (left < 4 * offset) return order.ToImmutable();
        }

        for (; first <= passes; first++) order.Add(first);
        return order.ToImmutable();
    }

    private static void Round(ImmutableArray<int>.Builder order, int first, int offset, int count)
    {
        for (var i = 0; i < offset; i++)
        {
            order.Add(first + i);
            if (i + offset < count) order.Add(first + i + offset);
        }
    }
}
