namespace Watersown.Water.Flood;

/// <summary>
/// A matrix with room for the pairs of checks that something joins, and its elimination. Checks with the fewest neighbors go first, so
/// that fields whose checks hang together like a row or a tree, as nearly all do, need no more room than they have joints. The columns of what it
/// is used for outweigh their other numbers in the diagonal: no order of elimination is unsafe.
/// </summary>
internal sealed class FloodMatrix
{
    private readonly int count;
    private readonly int[] order;
    private readonly int[] start;
    private readonly int[] later;
    private readonly int[] fill;
    private readonly double[] values;
    private readonly Dictionary<(int Row, int Column), int> places = [];

    /// <summary>Room for a network.</summary>
    /// <param name="count">Checks.</param>
    /// <param name="joined">Pairs of checks, in either order.</param>
    public FloodMatrix(int count, IEnumerable<(int One, int Other)> joined)
    {
        this.count = count;
        (order, start) = (new int[count], new int[count + 1]);
        var neighbors = Enumerable.Range(0, count).Select(_ => new HashSet<int>()).ToArray();
        foreach (var (one, other) in joined.Where(j => j.One != j.Other))
        {
            neighbors[one].Add(other);
            neighbors[other].Add(one);
        }

        var lists = Ordered(neighbors);
        later = [.. lists.SelectMany(l => l)];
        for (var p = 0; p < count; p++)
        {
            start[p + 1] = start[p] + lists[p].Length;
            for (var e = start[p]; e < start[p + 1]; e++)
            {
                places[(order[p], later[e])] = count + (2 * e);
                places[(later[e], order[p])] = count + (2 * e) + 1;
            }
        }

        fill = [.. lists.SelectMany(l => l.SelectMany(j => l.Select(k => Place(j, k))))];
        values = new double[count + (2 * later.Length)];
    }

    /// <summary>Where a number stands, for <see cref="Add"/>.</summary>
    public int Place(int row, int column) => row == column ? row : places[(row, column)];

    public void Add(int place, double value) => values[place] += value;

    /// <summary>Ones in the diagonal, nothing beside it.</summary>
    public void Clear()
    {
        Array.Clear(values);
        Array.Fill(values, 1, 0, count);
    }

    /// <summary>Makes it ready to solve with, after its numbers were put in.</summary>
    public void Eliminate()
    {
        var next = 0;
        for (var p = 0; p < count; p++)
        {
            var per = 1 / values[order[p]];
            values[order[p]] = per;
            for (var e = start[p]; e < start[p + 1]; e++)
            {
                var share = values[count + (2 * e) + 1] *= per;
                for (var f = start[p]; f < start[p + 1]; f++) values[fill[next++]] -= share * values[count + (2 * f)];
            }
        }
    }

    /// <summary>Solves in place.</summary>
    public void Solve(double[] x)
    {
        for (var p = 0; p < count; p++)
        {
            var known = x[order[p]];
            for (var e = start[p]; e < start[p + 1]; e++) x[later[e]] -= values[count + (2 * e) + 1] * known;
        }

        for (var p = count - 1; p >= 0; p--)
        {
            var rest = x[order[p]];
            for (var e = start[p]; e < start[p + 1]; e++) rest -= values[count + (2 * e)] * x[later[e]];
            x[order[p]] = rest * values[order[p]];
        }
    }

    // Puts the checks in order, and tells for each which of its neighbors come later; neighbors of one that goes become each other's.
    private int[][] Ordered(HashSet<int>[] neighbors)
    {
        var waiting = new PriorityQueue<int, (int Neighbors, int Check)>();
        for (var i = 0; i < count; i++) waiting.Enqueue(i, (neighbors[i].Count, i));
        var (lists, gone) = (new int[count][], new bool[count]);
        for (var p = 0; p < count;)
        {
            if (!waiting.TryDequeue(out var check, out var was) || gone[check] || was.Neighbors != neighbors[check].Count) continue;
            (order[p], lists[p], gone[check]) = (check, [.. neighbors[check].Order()], true);
            foreach (var one in lists[p])
            {
                neighbors[one].Remove(check);
                neighbors[one].UnionWith(lists[p]);
                neighbors[one].Remove(one);
                waiting.Enqueue(one, (neighbors[one].Count, one));
            }

            p++;
        }

        return lists;
    }
}
