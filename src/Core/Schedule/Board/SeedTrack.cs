using System.Globalization;

namespace Watersown.Schedule.Board;

/// <summary>Seed of one field over time: under water, drained, on the road. Each sowing has its own seed; where two overlap they lie in two layers.</summary>
internal static class SeedTrack
{
    public static IEnumerable<BoardBar> Of(ImmutableArray<PlanTask> own, BoardSpan span)
    {
        var (soaks, drains, hauls) = (Kind(own, PlanTaskKind.Soak), Kind(own, PlanTaskKind.Drain), Kind(own, PlanTaskKind.Haul));
        var chains = Enumerable.Range(0, new[] { soaks.Length, drains.Length, hauls.Length }.Max())
            .Select(i => Chain(soaks.ElementAtOrDefault(i), drains.ElementAtOrDefault(i), hauls.ElementAtOrDefault(i), i).ToImmutableArray())
            .Where(c => !c.IsEmpty).ToList();
        var layers = Layers.Of(chains.Select(c => (c.Min(b => b.From), c.Max(b => b.Until))));
        return chains.SelectMany((c, i) => c.Select(b => b with { Layer = layers[i] })).Where(b => span.Meets(b.From, b.Until)).OrderBy(b => b.Layer).ThenBy(b => b.From);
    }

    private static ImmutableArray<PlanTask> Kind(ImmutableArray<PlanTask> own, PlanTaskKind kind) => [.. own.Where(t => t.Kind == kind).OrderBy(t => t.Start)];

    // Seed goes on draining on the road; on the board each moment shows one thing, so each ends where the next begins.
    private static IEnumerable<BoardBar> Chain(PlanTask? soak, PlanTask? drain, PlanTask? haul, int index)
    {
        if (soak is not null) yield return Bar(soak, BarState.InSoak, Until(soak, drain), index);
        if (drain is not null) yield return Bar(drain, BarState.Drained, Until(drain, haul), index);
        if (haul is not null) yield return Bar(haul, BarState.OnTheRoad, haul.End, index);
    }

    private static DateTimeOffset Until(PlanTask task, PlanTask? next) => next is not null && next.Start > task.Start ? next.Start : task.End;

    private static BoardBar Bar(PlanTask task, BarState state, DateTimeOffset until, int index) => new(BarTrack.Seed, 0, state, task.Start, until)
    {
        Key = task.Field + "/" + (state switch { BarState.InSoak => "soak", BarState.Drained => "drain", _ => "haul" }) + "/" + index.ToString(CultureInfo.InvariantCulture),
        Task = task,
    };
}
