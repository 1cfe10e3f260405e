namespace Watersown.Schedule.Board;

/// <summary>Spans that overlap are laid under one another, in as few layers as there are spans at once.</summary>
internal static class Layers
{
    /// <summary>The layer of each span, 0 first; spans are taken in order of their start.</summary>
    public static ImmutableArray<int> Of(IEnumerable<(DateTimeOffset From, DateTimeOffset Until)> spans)
    {
        var all = spans.ToImmutableArray();
        var layers = new int[all.Length];
        var ends = new List<DateTimeOffset>();
        foreach (var i in Enumerable.Range(0, all.Length).OrderBy(i => all[i].From).ThenBy(i => i))
        {
            var free = ends.FindIndex(end => end <= all[i].From);
            if (free < 0)
            {
                free = ends.Count;
                ends.Add(all[i].Until);
            }

            ends[free] = all[i].Until;
            layers[i] = free;
        }

        return [.. layers];
    }
}
