using Watersown.Land;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;

namespace Watersown.Season.Boards;

/// <summary>A change of water to ask for, and how far asking has come.</summary>
/// <param name="Source">Where the water comes from.</param>
/// <param name="Before">What runs before; none known.</param>
/// <param name="After">What is to run from then.</param>
/// <param name="At">When it is to change.</param>
/// <param name="SendBy">Last moment to send it.</param>
public sealed record OrderLine(WaterSource Source, FlowRate? Before, FlowRate After, DateTimeOffset At, DateTimeOffset SendBy)
{
    /// <summary>The newest word on it; none while nobody has asked.</summary>
    public OrderNote? Last { get; init; }

    /// <summary>The plan asks for it; otherwise only a person did.</summary>
    public required bool Planned { get; init; }

    public bool Down => Before is { } before && After < before;
}

/// <summary>What to order or cut, and what was ordered.</summary>
public static class OrderBook
{
    /// <summary>
    /// Changes of the plan and orders that people put down, by the moment they must be sent. An order put down for the same
    /// source and hour is the plan's change being asked for, whatever flow was agreed.
    /// </summary>
    [Source(nameof(Sources.Arithmetic), "change of flow less the notice")]
    public static ImmutableArray<OrderLine> Of(SeasonBook book, SeasonPlan? plan)
    {
        var told = book.Sources.SelectMany(s => s.Orders).ToImmutableArray();
        var planned = (plan is null ? [] : WaterSheets.Changes(plan with { State = book.State }))
            .Select(c => new OrderLine(c.Source, c.Before, c.After, c.At, c.SendBy) { Planned = true, Last = told.LastOrDefault(o => IsOf(o, c.Source.Code, c.At)) })
            .ToImmutableArray();
        var own = told.Where(o => !planned.Any(p => IsOf(o, p.Source.Code, p.At))).Select(o => Own(book.State, o)).OfType<OrderLine>();
        return [.. planned.Concat(own).OrderBy(o => o.SendBy).ThenBy(o => o.Source.Code, StringComparer.Ordinal)];
    }

    private static bool IsOf(OrderNote note, string source, DateTimeOffset at) => note.Order.Source == source && note.Order.From == at;

    private static OrderLine? Own(SeasonState state, OrderNote note) => state.Farm.Source(note.Order.Source) is { } source
        ? new OrderLine(source, source.Running, note.Order.Flow, note.Order.From, note.Order.From - source.Notice) { Planned = false, Last = note }
        : null;
}
