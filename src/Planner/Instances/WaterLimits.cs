namespace Watersown.Planner.Instances;

/// <summary>
/// The limits that say water can be shared out: for every set of classes that hang together, their demand is at most the
/// flow of all their sources, each joint cap counted whole or not at all. With few classes this lists every cut of the
/// flow network.
/// </summary>
internal static class WaterLimits
{
    private const int MostTogether = 8;

    public static ImmutableArray<WaterLimit> Of(ImmutableArray<WaterClass> classes, ImmutableArray<SourceItem> sources, ImmutableArray<JointCap> caps)
    {
        var limits = new List<WaterLimit>();
        foreach (var together in Components(classes, sources.Length, caps))
        {
            // Beyond eight classes on joined sources only the single ones and the whole are kept: enough for any farm seen.
            var subsets = together.Length <= MostTogether ? Subsets(together) : [.. together.Select(c => ImmutableArray.Create(c)), together];
            foreach (var subset in subsets) AddCuts(limits, subset, [.. subset.SelectMany(c => classes[c].Sources).Distinct().Order()], sources, caps);
        }

        return [.. limits];
    }

    private static void AddCuts(List<WaterLimit> limits, ImmutableArray<int> subset, ImmutableArray<int> reached, ImmutableArray<SourceItem> sources, ImmutableArray<JointCap> caps)
    {
        // A joint cap can only bind where it is below what its reached sources give by themselves.
        ImmutableArray<int> binding = [.. Enumerable.Range(0, caps.Length).Where(j => caps[j].Sources.Intersect(reached).Sum(s => sources[s].Cap) > caps[j].Cap)];
        foreach (var counted in Subsets(binding).Prepend([]))
        {
            ImmutableArray<int> alone = [.. reached.Where(s => !counted.Any(j => caps[j].Sources.Contains(s)))];
            // Two sets of classes behind the same cut: only the larger one binds.
            var same = limits.FindIndex(l => l.Sources.SequenceEqual(alone) && l.Caps.SequenceEqual(counted));
            if (same < 0) limits.Add(new WaterLimit(subset, alone, counted));
            else if (limits[same].Classes.Length < subset.Length) limits[same] = new WaterLimit(subset, alone, counted);
        }
    }

    private static IEnumerable<ImmutableArray<int>> Components(ImmutableArray<WaterClass> classes, int sources, ImmutableArray<JointCap> caps)
    {
        var group = Enumerable.Range(0, sources).ToArray();
        foreach (var joined in classes.Select(c => c.Sources).Concat(caps.Select(j => j.Sources)).Where(s => s.Length > 1))
        {
            foreach (var source in joined.Skip(1)) Join(group, group[joined[0]], group[source]);
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
