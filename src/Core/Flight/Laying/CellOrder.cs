namespace Watersown.Flight.Laying;

/// <summary>In which order and from which side cells are flown, so that the ways between them are short.</summary>
internal static class CellOrder
{
    // Of so many cells every order is tried; of more the nearest is always taken next, from every cell on.
    private const int Few = 4;

    /// <summary>Each block of passes from one side or the other, one block after another.</summary>
    public static ImmutableArray<ImmutableArray<FlownLine>> Shortest(ImmutableArray<ImmutableArray<FlownLine>> blocks, PassPace pace)
    {
        if (blocks.Length < 2) return blocks;
        var turned = blocks.Select(b => b.Reverse().ToImmutableArray()).ToImmutableArray();
        var best = new Way([], double.PositiveInfinity);
        for (var first = 0; first < blocks.Length; first++)
        {
            Go(new Way([blocks[first]], 0), [first]);
            Go(new Way([turned[first]], 0), [first]);
        }

        return best.Blocks;

        void Go(Way way, ImmutableHashSet<int> flown)
        {
            if (way.Seconds >= best.Seconds) return;
            if (way.Blocks.Length == blocks.Length)
            {
                best = way;
                return;
            }

            var next = Enumerable.Range(0, 2 * blocks.Length).Where(k => !flown.Contains(k / 2)).Select(k => (Cell: k / 2, Block: k % 2 == 0 ? blocks[k / 2] : turned[k / 2]))
                .Select(k => (k.Cell, k.Block, Seconds: LineOrder.TurnSeconds(way.Blocks[^1][^1], k.Block[0], pace)));
            if (blocks.Length > Few) next = next.OrderBy(k => k.Seconds).Take(1);
            foreach (var (cell, block, seconds) in next) Go(new Way(way.Blocks.Add(block), way.Seconds + seconds), flown.Add(cell));
        }
    }

    private readonly record struct Way(ImmutableArray<ImmutableArray<FlownLine>> Blocks, double Seconds);
}
