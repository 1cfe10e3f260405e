namespace Watersown.Flight.Laying;

/// <summary>
/// Order of passes and breaks into loads together. For any order the best breaks are found exactly; the order itself is bettered
/// step by step: blocks of passes moved, turned round and exchanged, each change kept only if the quickest split of what comes
/// out takes less time. Nothing in it is drawn by lot. What it starts from is never worse than what it ends with.
/// </summary>
internal sealed class OrderSearch
{
    // A field of more passes is flown in the order laid.
    private const int MostPasses = 240;

    // Splits worked out for one pass; for all passes this over their number.
    private const int Effort = 80_000;
    private const int Reach = 12;
    private const int LongestBlock = 3;

    private readonly ImmutableArray<FlownLine> lines;
    private readonly OrderCosts costs;
    private readonly int free;
    private int left;

    private OrderSearch(ImmutableArray<FlownLine> lines, int free, LoadPace pace)
    {
        (this.lines, this.free, costs) = (lines, free, new OrderCosts(lines, pace));
        left = Effort / lines.Length;
    }

    /// <summary>The best order found; the order given where nothing better is.</summary>
    /// <param name="lines">In the order laid.</param>
    /// <param name="last">How many of them, at the end, keep their places.</param>
    /// <param name="pace">What a load costs.</param>
    public static ImmutableArray<FlownLine> Best(ImmutableArray<FlownLine> lines, int last, LoadPace pace)
    {
        if (lines.Length - last is < 3 or > MostPasses || lines.Length > MostPasses) return lines;
        var search = new OrderSearch(lines, lines.Length - last, pace);
        int[] laid = [.. Enumerable.Range(0, lines.Length)];
        if (double.IsPositiveInfinity(search.costs.Of(laid))) return lines;
        var packed = search.Packed(pace.Limit.Kilograms);
        var (one, other) = (search.Bettered(laid, search.left / 2), search.Bettered(packed, search.left));
        var best = search.costs.Of(other) < search.costs.Of(one) - Tie ? other : one;
        return search.costs.Of(best) < search.costs.Of(laid) - Tie ? [.. best.Select(i => lines[i])] : lines;
    }

    // Seconds; a change must be worth more.
    private const double Tie = 1e-6;

    // Loads filled as full as a few passes ahead allow, though some are then left for the next.
    private int[] Packed(double limit)
    {
        const int ahead = 10;
        var (rest, order) = (Enumerable.Range(0, free).ToList(), new List<int>());
        while (rest.Count > 0)
        {
            var (count, best, most) = (Math.Min(ahead, rest.Count), 1, double.NegativeInfinity);
            for (var chosen = 1; chosen < (1 << count); chosen += 2)
            {
                var seed = 0.0;
                for (var k = 0; k < count; k++) seed += ((chosen >> k) & 1) == 1 ? lines[rest[k]].Seed.Kilograms : 0;
                if (seed <= limit && seed > most * (1 + 1e-9)) (best, most) = (chosen, seed);
            }

            order.AddRange(Enumerable.Range(0, count).Where(k => ((best >> k) & 1) == 1).Select(k => rest[k]));
            foreach (var k in Enumerable.Range(0, count).Where(k => ((best >> k) & 1) == 1).Reverse()) rest.RemoveAt(k);
        }

        return [.. order, .. Enumerable.Range(free, lines.Length - free)];
    }

    private int[] Bettered(int[] order, int effort)
    {
        var (now, seconds, better) = (order, costs.Of(order), true);
        while (better && effort > 0)
        {
            better = false;
            foreach (var changed in Changes(now))
            {
                if (effort-- <= 0) break;
                left--;
                var time = costs.Of(changed);
                if (time >= seconds - Tie) continue;
                (now, seconds, better) = ([.. changed], time, true);
                break;
            }
        }

        return now;
    }

    // One array is used over for every change.
    private IEnumerable<int[]> Changes(int[] order)
    {
        var changed = new int[order.Length];
        for (var from = 0; from < free; from++)
        {
            for (var length = 1; length <= LongestBlock && from + length <= free; length++)
            {
                for (var to = Math.Max(0, from - Reach); to <= Math.Min(free - length, from + Reach); to++)
                {
                    if (to == from) continue;
                    Move(order, changed, from, length, to);
                    yield return changed;
                }
            }

            for (var past = from + 2; past <= Math.Min(free, from + Reach); past++)
            {
                order.CopyTo(changed, 0);
                Array.Reverse(changed, from, past - from);
                yield return changed;
                order.CopyTo(changed, 0);
                (changed[from], changed[past - 1]) = (changed[past - 1], changed[from]);
                yield return changed;
            }
        }
    }

    private static void Move(int[] order, int[] changed, int from, int length, int to)
    {
        order.CopyTo(changed, 0);
        if (to < from) Array.Copy(order, to, changed, to + length, from - to);
        else Array.Copy(order, from + length, changed, from, to - from);
        Array.Copy(order, from, changed, to, length);
    }
}
