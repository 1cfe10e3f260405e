namespace Watersown.Planner.Instances;

/// <summary>
/// The limits that say water can be shared out: for every set of classes that hang together, their demand is at most the
/// flow of all their sources. With few classes this lists every cut of the flow network.
/// </summary>
internal static class WaterLimits
{
    private const int MostClassesTogether = 10;

    public static ImmutableArray<WaterLimit> Of(ImmutableArray<WaterClass> classes, int sources)
    {
        var limits = ImmutableArray.CreateBuilder<WaterLimit>();
        foreach (var together in Components(classes, sources))
        {
            // Beyond ten classes on joined sources only the single ones and the whole are kept: 1,000 cuts are enough for any farm.
            var subsets = together.Length <= MostClassesTogether ? Subsets(together) : [.. together.Select(c => ImmutableArray.Create(c)), together];
            foreach (var subset in subsets)
            {
                ImmutableArray<int> reached = [.. subset.SelectMany(c => classes[c].Sources).Distinct().Order()];
                // Two sets of classes with the same sources: only the larger one binds.
                var same = limits.FindIndex(l => l.Sources.SequenceEqual(reached));
                if (same < 0) limits.Add(new WaterLimit(subset, reached));
                else if (limits[same].Classes.Length < subset.Length) limits[same] = new WaterLimit(subset, reached);
            }
        }

        return limits.ToImmutable();
    }

    private static int FindIndex(this ImmutableArray<WaterLimit>.Builder limits, Func<WaterLimit, bool> match)
    {
        for (var i = 0; i < limits.Count; i++)
        {
            if (match(limits[i])) return i;
        }

        return -1;
    }

    private static IEnumerable<ImmutableArray<int>> Components(ImmutableArray<WaterClass> classes, int sources)
    {
        var group = Enumerable.Range(0, sources).ToArray();
        foreach (var one in classes)
        {
            foreach (var source in one.Sources.Skip(1)) Join(group, group[one.Sources[0]], group[source]);
        }

        return Enumerable.Range(0, classes.Length).GroupBy(c => group[classes[c].Sources[0]]).Select(g => g.ToImmutableArray());
    }

    private static void Join(int[] group, int keep, int drop)
    {
        for (var i = 0; i < group.Length; i++)
        {
            if (group[i] == drop) group[i] = keep;
        }
    }

    private static IEnumerable<ImmutableArray<int>> Subsets(ImmutableArray<int> items)
    {
        for (var mask = 1; mask < 1 << items.Length; mask++) yield return [.. items.Where((_, i) => (mask & (1 << i)) != 0)];
    }
}
