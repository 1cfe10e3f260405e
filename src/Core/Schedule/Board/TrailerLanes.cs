namespace Watersown.Schedule.Board;

/// <summary>
/// Trailers over time: taken from the hour a batch goes under water until they are back after sowing; those of seed that
/// nobody can use until they are emptied and back. The same rule as the plan's.
/// </summary>
internal static class TrailerLanes
{
    public static ImmutableArray<UseLane> Of(SeasonPlan plan, BoardSpan span)
    {
        // Trailers that are known by their number first: the others go wherever there is room beside them.
        var trips = Trips(plan).SelectMany(t => t.Names.Concat(Enumerable.Repeat<string?>(null, Math.Max(0, t.Count - t.Names.Length))).Select(n => (Trip: t, Name: n)))
            .OrderBy(t => t.Name is null).ThenBy(t => t.Trip.From).ThenBy(t => t.Trip.Bars[0].Field, StringComparer.Ordinal).ToImmutableArray();
        if (trips.IsEmpty && plan.State.SoakPlace?.Trailers is null) return [];
        var taken = new List<List<Trip>>();
        var names = new List<string?>();
        var bars = ImmutableArray.CreateBuilder<LaneBar>();
        foreach (var (trip, name) in trips)
        {
            var layer = Layer(taken, names, name, trip);
            taken[layer].Add(trip);
            bars.AddRange(trip.Bars.Select(b => b with { Layer = layer }));
        }

        return
        [
            new UseLane(LaneKind.Trailers, plan.State.SoakPlace?.Name ?? string.Empty, plan.State.SoakPlace?.Trailers)
            {
                Bars = [.. bars.Where(b => span.Meets(b.From, b.Until)).OrderBy(b => b.Layer).ThenBy(b => b.From)],
                Names = [.. names.Select(n => n ?? string.Empty)],
            },
        ];
    }

    /// <summary>A trailer with a number keeps its layer; one without takes the first that is free.</summary>
    private static int Layer(List<List<Trip>> taken, List<string?> names, string? name, Trip trip)
    {
        var layer = name is null ? taken.FindIndex(trips => trips.TrueForAll(t => t.Until <= trip.From || trip.Until <= t.From)) : names.IndexOf(name);
        if (layer >= 0) return layer;
        taken.Add([]);
        names.Add(name);
        return taken.Count - 1;
    }

    private static IEnumerable<Trip> Trips(SeasonPlan plan)
    {
        var back = plan.State.SoakRules.TrailerReturn;
        var soaks = plan.Tasks.Where(t => t.Kind == PlanTaskKind.Soak).GroupBy(t => (t.Field, t.Batch));
        foreach (var soak in soaks.SelectMany(g => g.OrderBy(t => t.Start).Select((t, i) => (Task: t, Index: i))))
        {
            var task = soak.Task;
            var sow = Nth(plan, task, PlanTaskKind.Sow, soak.Index);
            var drain = Nth(plan, task, PlanTaskKind.Drain, soak.Index)?.Start ?? task.End;
            var flown = sow?.End ?? drain;
            var batch = plan.State.Batches.FirstOrDefault(b => b.Code == task.Batch);
            LaneBar Bar(LaneUse use, DateTimeOffset from, DateTimeOffset until) => new(0, use, from, until) { Field = task.Field, Batch = task.Batch };
            var count = batch is null ? task.Trailers ?? 1 : Count(plan.State, batch);
            yield return new Trip(task.Start, flown + back, count, batch?.Trailers ?? [],
                [Bar(LaneUse.InSoak, task.Start, drain), Bar(LaneUse.Drained, drain, flown), Bar(LaneUse.ComingBack, flown, flown + back)]);
        }

        foreach (var lost in plan.State.Batches.Where(b => plan.LostBatches.Contains(b.Code, StringComparer.Ordinal)))
        {
            yield return new Trip(lost.InSoak, plan.MadeAt + back, Count(plan.State, lost), lost.Trailers,
            [
                new LaneBar(0, LaneUse.PastUse, lost.InSoak, plan.MadeAt) { Batch = lost.Code },
                new LaneBar(0, LaneUse.ComingBack, plan.MadeAt, plan.MadeAt + back) { Batch = lost.Code },
            ]);
        }
    }

    private static int Count(SeasonState state, Seed.SoakBatch batch) =>
        Math.Max(batch.Trailers.Length, Seed.SeedClock.Trailers(batch.Dry, state.WetFactor, state.SoakPlace?.HaulLimit));

    private static PlanTask? Nth(SeasonPlan plan, PlanTask soak, PlanTaskKind kind, int index) =>
        plan.Tasks.Where(t => t.Kind == kind && t.Field == soak.Field && t.Batch == soak.Batch).OrderBy(t => t.Start).ElementAtOrDefault(index);

    private sealed record Trip(DateTimeOffset From, DateTimeOffset Until, int Count, ImmutableArray<string> Names, ImmutableArray<LaneBar> Bars);
}
