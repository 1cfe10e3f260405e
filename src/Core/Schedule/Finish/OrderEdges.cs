using System.Globalization;
using Watersown.Land;
using Watersown.Water;

namespace Watersown.Schedule.Finish;

/// <summary>The moments between which an order cannot change, and what is wanted between them.</summary>
internal static class OrderEdges
{
    // Less than this is within what a gate wanders, and no order.
    private static readonly FlowRate worthSaying = FlowRate.FromCubicFeetPerSecond(0.05);

    /// <summary>From now until a while after the last change of need; each with whether the flow can be chosen from then on.</summary>
    public static ImmutableArray<(DateTimeOffset At, bool Free)> Of(SeasonState state, WaterSource source, ImmutableArray<(DateTimeOffset From, FlowRate Flow)> needs)
    {
        var end = needs[^1].From + TimeSpan.FromDays(1);
        var changes = WaterOrders.Changes(state, source);
        if (source.ChangeHours.IsEmpty)
        {
            var first = state.Now + source.Notice;
            changes = [first, .. needs.Select(n => n.From).Where(t => t > first)];
        }

        // The need that comes last must be ordered too, and the order it asks for lasts on.
        var last = changes.FirstOrDefault(c => c >= needs[^1].From, end);
        var kept = changes.Where(c => c <= last && c >= state.Now).ToImmutableArray();
        var until = kept.IsEmpty || last > kept[^1] ? last : last + TimeSpan.FromDays(1);
        return !kept.IsEmpty && kept[0] == state.Now
            ? [.. kept.Select(c => (c, true)), (until, true)]
            : [(state.Now, false), .. kept.Select(c => (c, true)), (until, true)];
    }

    /// <summary>The most that is taken up at any moment of a span.</summary>
    public static FlowRate Most(ImmutableArray<(DateTimeOffset From, FlowRate Flow)> needs, DateTimeOffset from, DateTimeOffset until) =>
        Pieces(needs, from, until).Select(p => p.Flow).Max();

    /// <summary>The most that a source can give at any moment of a span.</summary>
    public static FlowRate MostGiven(WaterSource source, DateTimeOffset from, DateTimeOffset until) =>
        SourceSupply.Changes(source, from, until).Prepend(from).Max(at => SourceSupply.MostAt(source, at));

    /// <summary>Up to the next step that the source gives, and no more than it can; what runs is left where it is enough and over by less than a step.</summary>
    public static FlowRate Rounded(WaterSource source, FlowRate flow, FlowRate running, FlowRate most)
    {
        if (source.Down) return FlowRate.Zero;
        var step = WaterOrders.Step(source);
        if (running >= flow * (1 - 1e-9) && running - flow < step && running <= most) return running;
        var up = step * Math.Ceiling((flow / step) - 1e-6);
        return up < most ? up : most;
    }

    /// <summary>
    /// Where what comes of an order and what is taken up are apart; below zero where less comes. What is over by less than a step
    /// was rounded up, and cannot be ordered nearer. Between turns wet land lives off its own water: that is no shortage.
    /// </summary>
    public static IEnumerable<FlowApart> Apart(WaterSource source, ImmutableArray<(DateTimeOffset From, FlowRate Flow)> needs, OrderedFlow order)
    {
        ImmutableArray<DateTimeOffset> moments = [order.From, .. SourceSupply.Changes(source, order.From, order.Until), order.Until];
        return moments.Zip(moments.Skip(1)).SelectMany(span =>
        {
            var most = SourceSupply.MostAt(source, span.First);
            var comes = order.Flow < most ? order.Flow : most;
            return Pieces(needs, span.First, span.Second)
                .Where(p => comes - p.Flow >= WaterOrders.Step(source) || (p.Flow - comes >= worthSaying && source.Turns?.Runs(p.From) != false))
                .Select(p => new FlowApart(p.From, p.Until, p.Flow, comes - p.Flow));
        });
    }

    /// <summary>Changes to ask for; what a source by itself no longer gives, because its turn ends or it is curtailed, is not asked for.</summary>
    public static IEnumerable<WaterChange> Changes(WaterSource source, FlowRate running, IEnumerable<OrderedFlow> orders)
    {
        var before = running;
        foreach (var order in orders)
        {
            if (order.Flow != before && !(order.Flow < before && order.Flow >= SourceSupply.MostAt(source, order.From)))
                yield return new WaterChange(source, before, order.Flow, order.From, order.From - source.Notice);
            before = order.Flow;
        }
    }

    public static Working Show(OrderAdvice advice, FlowRate running)
    {
        var working = Working.Empty
            .Given("Q", "runs now", running.CubicFeetPerSecond, "cfs", "order or reading, source " + advice.Source.Code)
            .Given("n", "notice that the source wants", advice.Source.Notice.TotalHours, "h", "source " + advice.Source.Code);
        var i = 0;
        foreach (var change in advice.Changes)
        {
            var number = (++i).ToString(CultureInfo.InvariantCulture);
            working = working
                .Step("Q" + number, "wanted from the change on", change.After.CubicFeetPerSecond, "cfs", "the most that holding and filling take up until the next change, rounded up to what can be ordered", Sources.WaterBalance)
                .Step("b" + number, "send it by", Datum.Moment(change.SendBy), string.Empty, "change − n", Sources.Arithmetic);
        }

        foreach (var over in advice.Over)
            working = working.Step("d", "over from " + Wording.When.Moment(over.From), over.Flow.CubicFeetPerSecond, "cfs", "Q − what is taken up", Sources.WaterBalance);
        return working.Step("v", "over in all", advice.OverInAll.AcreFeet, "ac-ft", "Σ d × hours × 0.0826", Sources.WaterBalance);
    }

    private static IEnumerable<(DateTimeOffset From, DateTimeOffset Until, FlowRate Flow)> Pieces(ImmutableArray<(DateTimeOffset From, FlowRate Flow)> needs, DateTimeOffset from, DateTimeOffset until)
    {
        for (var i = 0; i < needs.Length; i++)
        {
            var (start, end) = (needs[i].From > from ? needs[i].From : from, i + 1 < needs.Length && needs[i + 1].From < until ? needs[i + 1].From : until);
            if (start < end) yield return (start, end, needs[i].Flow);
        }
    }
}
