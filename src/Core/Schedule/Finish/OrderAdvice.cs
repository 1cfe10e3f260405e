using Watersown.Land;
using Watersown.Water;

namespace Watersown.Schedule.Finish;

/// <summary>Water that runs and that nothing takes up, or, of <see cref="OrderAdvice.Missing"/>, that is taken up and does not come.</summary>
/// <param name="From">From when.</param>
/// <param name="Until">Until when.</param>
/// <param name="Needs">Taken up all the while.</param>
/// <param name="Flow">Apart from what runs.</param>
public sealed record FlowApart(DateTimeOffset From, DateTimeOffset Until, FlowRate Needs, FlowRate Flow)
{
    public Volume Volume => Flow * (Until - From);
}

/// <summary>What should run from a source, so that at every hour it gives what its wet ground and its filling fields take.</summary>
/// <param name="Source">The source.</param>
public sealed record OrderAdvice(WaterSource Source)
{
    /// <summary>What runs from each moment on, as far as it can still be changed; the first is what runs now.</summary>
    public required ImmutableArray<OrderedFlow> Orders { get; init; }

    /// <summary>Changes to ask for, up and down, by the moment they must be sent.</summary>
    public required ImmutableArray<WaterChange> Changes { get; init; }

    /// <summary>Runs and is not taken up. None of it may go out through a field that must not spill.</summary>
    public required ImmutableArray<FlowApart> Over { get; init; }

    /// <summary>Taken up and not there: before an order can be changed, or beyond the cap.</summary>
    public required ImmutableArray<FlowApart> Missing { get; init; }

    public Volume OverInAll => Over.Aggregate(Volume.Zero, (sum, o) => sum + o.Volume);

    public required Working Working { get; init; }

    /// <summary>Orders for a source from what is taken up of it.</summary>
    /// <param name="state">The season as it stands.</param>
    /// <param name="code">Source code.</param>
    /// <param name="finish">What its fields take up, from one moment to the next.</param>
    [Source(nameof(Sources.CommonPractice), "next order = what holding and filling take up at any hour until the one after it; sent a notice ahead")]
    public static OrderAdvice Of(SeasonState state, string code, SourceFinish finish)
    {
        var source = state.Farm.Source(code) ?? throw new ArgumentException("No source is called " + code, nameof(code));
        // Turns and curtailments far beyond the last fill ask for nothing yet.
        var end = finish.Full ?? FarmTime.Midnight(state, state.Horizon.AddDays(1));
        ImmutableArray<(DateTimeOffset From, FlowRate Flow)> needs = [.. finish.Spans.Select(s => (From: state.Now + s.From, s.Takes)).Where(n => n.From <= end)];
        if (needs.IsEmpty) needs = [(state.Now, finish.Holds)];
        var running = SourceSupply.Running(state, source) is [var first, ..] ? first.Flow : FlowRate.Zero;
        var edges = OrderEdges.Of(state, source, needs);
        var orders = ImmutableArray.CreateBuilder<OrderedFlow>();
        for (var i = 0; i + 1 < edges.Length; i++)
        {
            // What runs now runs on until the first moment at which it can be something else.
            var most = OrderEdges.MostGiven(source, edges[i].At, edges[i + 1].At);
            var flow = i == 0 && !edges[0].Free ? running : OrderEdges.Rounded(source, OrderEdges.Most(needs, edges[i].At, edges[i + 1].At), running, most);
            if (orders.Count > 0 && orders[^1].Flow == flow) orders[^1] = orders[^1] with { Until = edges[i + 1].At };
            else orders.Add(new OrderedFlow(code, edges[i].At, edges[i + 1].At, flow));
        }

        var apart = orders.SelectMany(o => OrderEdges.Apart(source, needs, o)).ToImmutableArray();
        var advice = new OrderAdvice(source)
        {
            Orders = orders.ToImmutable(),
            Changes = [.. OrderEdges.Changes(source, running, orders)],
            Over = [.. apart.Where(a => a.Flow > FlowRate.Zero)],
            Missing = [.. apart.Where(a => a.Flow < FlowRate.Zero).Select(a => a with { Flow = FlowRate.Zero - a.Flow })],
            Working = Working.Empty,
        };
        return advice with { Working = OrderEdges.Show(advice, running) };
    }
}
