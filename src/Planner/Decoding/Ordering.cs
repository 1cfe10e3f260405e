using System.Diagnostics;
using Watersown.Planner.Instances;

namespace Watersown.Planner.Decoding;

/// <summary>Improves the choices of list-made plans by trying small changes and keeping those that cost no more.</summary>
internal static class Ordering
{
    /// <summary>The best plan found, told of as it gets better.</summary>
    /// <param name="instance">The season.</param>
    /// <param name="seed">Seed of the random choices.</param>
    /// <param name="budget">Time; not used where tries are counted.</param>
    /// <param name="tries">Count of tries for a repeatable search; none for a timed one.</param>
    /// <param name="onBetter">Told of each better plan.</param>
    /// <param name="stop">Ends the search early.</param>
    public static Solution Search(Instance instance, int seed, TimeSpan budget, int? tries, Action<Solution, long> onBetter, CancellationToken stop)
    {
        var watch = Stopwatch.StartNew();
        var dice = new Dice((ulong)seed);
        var decoder = new Decoder(instance);
        var genes = FirstGenes(instance);
        var best = decoder.Decode(genes);
        var bestCost = SolutionCost.Of(instance, best).Total;
        onBetter(best, bestCost);
        var current = bestCost;
        for (var t = 0; tries is { } most ? t < most : watch.Elapsed < budget; t++)
        {
            if (stop.IsCancellationRequested) break;
            var tried = Change(instance, genes, dice);
            var plan = decoder.Decode(tried);
            var cost = SolutionCost.Of(instance, plan).Total;
            // A little uphill now and then, ever less, so that the search does not sit in the first hollow.
            var slack = 1 + (0.02 * Math.Max(0, 1 - (tries is { } all ? t / (double)all : watch.Elapsed / budget)) * dice.Next());
            if (cost > current * slack) continue;
            (genes, current) = (tried, cost);
            if (cost >= bestCost) continue;
            (best, bestCost) = (plan, cost);
            onBetter(best, bestCost);
        }

        return best;
    }

    private static Genes FirstGenes(Instance instance)
    {
        // Ground that is ready first, then small before large: early acres bring the aeroplane work.
        var order = instance.Fields.OrderBy(f => f.Works.Sum(w => w.Steps) + f.FitAxis).ThenBy(f => f.Index).Select(f => f.Index);
        var splits = instance.JointCaps.Select(j =>
        {
            var caps = j.Sources.Select(s => (double)instance.Sources[s].Cap).ToImmutableArray();
            return caps.Select(c => c / caps.Sum()).ToImmutableArray();
        });
        return new Genes([.. order], [.. splits], 0.2);
    }

    private static Genes Change(Instance instance, Genes genes, Dice dice)
    {
        var kind = dice.Below(10);
        if (kind == 0 && instance.JointCaps.Length > 0) return genes with { Splits = Shift(genes.Splits, dice) };
        if (kind == 1) return genes with { Haste = Math.Clamp(genes.Haste + ((dice.Next() - 0.5) * 0.4), 0, 2) };
        var order = genes.Order.ToBuilder();
        if (order.Count < 2) return genes;
        var from = dice.Below(order.Count);
        var to = dice.Below(order.Count);
        if (kind < 6)
        {
            (order[from], order[to]) = (order[to], order[from]);
            return genes with { Order = order.ToImmutable() };
        }

        var moved = order[from];
        order.RemoveAt(from);
        order.Insert(to, moved);
        return genes with { Order = order.ToImmutable() };
    }

    private static ImmutableArray<ImmutableArray<double>> Shift(ImmutableArray<ImmutableArray<double>> splits, Dice dice)
    {
        var which = dice.Below(splits.Length);
        var shares = splits[which].ToBuilder();
        if (shares.Count < 2) return splits;
        var from = dice.Below(shares.Count);
        var to = (from + 1 + dice.Below(shares.Count - 1)) % shares.Count;
        var amount = Math.Min(shares[from], 0.1 * dice.Next());
        shares[from] -= amount;
        shares[to] += amount;
        return splits.SetItem(which, shares.ToImmutable());
    }
}

/// <summary>Random choices from a seed, the same on every machine (splitmix64, Steele, Lea and Flood 2014).</summary>
internal sealed class Dice(ulong seed)
{
    private ulong state = seed;

    /// <summary>From 0 up to but not including 1.</summary>
    public double Next() => (Draw() >> 11) * (1.0 / (1UL << 53));

    public int Below(int count) => (int)(Next() * count);

    private ulong Draw()
    {
        unchecked
        {
            var z = state += 0x9E3779B97F4A7C15UL;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }
}
