using Watersown.Flight;

namespace Watersown.Schedule.Board;

/// <summary>Aeroplanes, trailers, soak place and tractors over time.</summary>
internal static class UseLanes
{
    public static ImmutableArray<UseLane> Of(SeasonPlan plan, SeasonState state, BoardSpan span) =>
        [.. Planes(plan, state, span), .. TrailerLanes.Of(plan, span), .. Soaks(plan, span), .. Tractors(plan, span)];

    private static IEnumerable<UseLane> Planes(SeasonPlan plan, SeasonState state, BoardSpan span)
    {
        var flights = plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow).ToLookup(t => t.Resource, StringComparer.Ordinal);
        foreach (var name in state.Aeroplanes.Select(p => p.Name).Union(flights.Select(f => f.Key), StringComparer.Ordinal))
        {
            var plane = state.Aeroplanes.FirstOrDefault(p => p.Name == name);
            yield return new UseLane(LaneKind.Aeroplane, name, 1)
            {
                Bars = Spread(flights[name].Select(t => new LaneBar(0, LaneUse.Sowing, t.Start, t.End) { Field = t.Field, Batch = t.Batch }), span),
                Slots = plane is null ? [] : [.. Slots(state, plane, span)],
            };
        }
    }

    /// <summary>Promised hours cut into calm ones and blown ones.</summary>
    private static IEnumerable<LaneSlot> Slots(SeasonState state, Aeroplane plane, BoardSpan span)
    {
        var windows = FlyingWindows.Of(state, plane);
        foreach (var (from, until) in span.Days.SelectMany(d => FlyingWindows.Slots(state, plane, d)))
        {
            var cursor = from;
            foreach (var calm in windows.Where(w => w.From < until && w.Until > from))
            {
                if (calm.From > cursor) yield return new LaneSlot(cursor, calm.From) { Blown = true };
                yield return new LaneSlot(calm.From, calm.Until);
                cursor = calm.Until;
            }

            // Beyond the forecast only part of a slot is counted on; the rest is not blown, it is kept in hand.
            if (cursor < until && windows.FirstOrDefault(w => w.Until == cursor) is not { Forecast: false }) yield return new LaneSlot(cursor, until) { Blown = true };
        }
    }

    private static IEnumerable<UseLane> Soaks(SeasonPlan plan, BoardSpan span)
    {
        foreach (var place in plan.Tasks.Where(t => t.Kind == PlanTaskKind.Soak).GroupBy(t => t.Resource, StringComparer.Ordinal))
            yield return new UseLane(LaneKind.SoakPlace, place.Key, null) { Bars = Spread(place.Select(t => new LaneBar(0, LaneUse.InSoak, t.Start, t.End) { Field = t.Field, Batch = t.Batch }), span) };
    }

    private static IEnumerable<UseLane> Tractors(SeasonPlan plan, BoardSpan span)
    {
        var work = plan.Tasks.Where(t => t.Kind == PlanTaskKind.Ground).ToLookup(t => t.Resource, StringComparer.Ordinal);
        var groups = plan.State.Tractors.Select(g => (g.Name, Most: (int?)g.Count)).Concat(work.Select(w => (Name: w.Key, Most: (int?)null))).DistinctBy(g => g.Name, StringComparer.Ordinal);
        foreach (var (name, most) in groups)
            yield return new UseLane(LaneKind.Tractors, name, most) { Bars = Spread(work[name].Select(t => new LaneBar(0, LaneUse.Working, t.Start, t.End) { Field = t.Field, Work = t.Implement }), span) };
    }

    /// <summary>Uses laid into layers over the whole plan, and then those that the board shows: a layer does not depend on the span.</summary>
    internal static ImmutableArray<LaneBar> Spread(IEnumerable<LaneBar> uses, BoardSpan span)
    {
        var all = uses.OrderBy(u => u.From).ThenBy(u => u.Field, StringComparer.Ordinal).ToImmutableArray();
        var layers = Layers.Of(all.Select(u => (u.From, u.Until)));
        return [.. all.Select((u, i) => u with { Layer = layers[i] }).Where(u => span.Meets(u.From, u.Until))];
    }
}
