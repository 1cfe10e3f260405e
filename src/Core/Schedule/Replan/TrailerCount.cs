using Watersown.Seed;

namespace Watersown.Schedule.Replan;

/// <summary>Whether the trailers go round: seed soaks, drains and travels in them.</summary>
internal static class TrailerCount
{
    /// <summary>No moment at which seed goes under water asks for more trailers than there are.</summary>
    public static bool Fits(Weighing weighing, IReadOnlyList<SowingWay> ways)
    {
        if (weighing.Case.State.SoakPlace?.Trailers is not { } most) return true;
        var taken = Fresh(weighing, ways).ToList();
        var starts = taken.Select(t => t.From).Distinct().ToList();
        taken.AddRange(Batches(weighing, ways));
        return starts.TrueForAll(at => taken.Where(t => t.From <= at && at < t.Until).Sum(t => t.Count) <= most);
    }

    private static IEnumerable<(DateTimeOffset From, DateTimeOffset Until, int Count)> Fresh(Weighing weighing, IReadOnlyList<SowingWay> ways)
    {
        for (var i = 0; i < ways.Count; i++)
        {
            if (ways[i] is { Soak: { } soak, Morning: >= 0 and var m }) yield return (soak, Back(weighing, m), weighing.Trailers[i]);
        }
    }

    private static IEnumerable<(DateTimeOffset From, DateTimeOffset Until, int Count)> Batches(Weighing weighing, IReadOnlyList<SowingWay> ways)
    {
        var state = weighing.Case.State;
        foreach (var standing in weighing.Case.Batches)
        {
            var live = weighing.Live.IndexOf(standing);
            var last = live < 0 ? -1 : ways.Where(w => w.Batch == live).Select(w => w.Morning).DefaultIfEmpty(-1).Max();
            // What is called off takes up nothing; what is dumped is washed and back a day later.
            if (last < 0 && standing.Due) continue;
            var until = last < 0 ? state.Now + state.SoakRules.TrailerReturn : Back(weighing, last);
            var count = standing.Batch.Trailers.Length > 0 ? standing.Batch.Trailers.Length : SeedClock.Trailers(standing.Batch.Dry, state.WetFactor, state.SoakRules.HaulLimit);
            yield return (standing.Due ? standing.Batch.InSoak : state.Now, until, count);
        }
    }

    /// <summary>Back and washed, so long after the morning is over.</summary>
    private static DateTimeOffset Back(Weighing weighing, int morning) => weighing.Case.Mornings[morning].Until + weighing.Case.State.SoakRules.TrailerReturn;
}
