using Watersown.Land;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Season;

/// <summary>One source as the marks go by.</summary>
internal sealed class SourceFold(string code, WaterSource? source)
{
    private readonly ImmutableArray<StoryLine>.Builder story = ImmutableArray.CreateBuilder<StoryLine>();
    private readonly List<(DateTimeOffset At, FlowRate Flow, Mark Mark)> seen = [];
    private readonly Dictionary<string, OrderNote> orders = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, Mark> orderMarks = new(StringComparer.OrdinalIgnoreCase);
    private DateTimeOffset? switched;

    public WaterSource? Source { get; private set; } = source;

    public void Take(StoryLine line, GroundTime time)
    {
        var mark = line.Mark;
        story.Add(line);
        switch (mark.Fact)
        {
            case FlowSeen flow:
                seen.Add((mark.Happened, flow.Flow, mark));
                break;
            case WaterOrdered order:
                var name = NameOf(order);
                (orders[name], orderMarks[name]) = (new OrderNote(order, mark.Happened, mark.By), mark);
                break;
            case SourceSwitched to:
                Switch(to.Up, mark, time);
                break;
            case WaterCurtailed told when time.IsOlderThan(mark):
                Curtail(told);
                break;
            case FaultFound { Kind: FaultKind.Pump or FaultKind.Gate }:
                Switch(up: false, mark, time);
                break;
            default:
                break;
        }
    }

    public void Switch(bool up, Mark mark, GroundTime time)
    {
        if (!time.IsOlderThan(mark)) return;
        switched = mark.Happened;
        if (Source is not null) Source = Source with { Down = !up };
    }

    private void Curtail(WaterCurtailed told)
    {
        if (Source is null) return;
        // One that ends before it begins was refused where it was put down; told elsewhere, it is nothing.
        if (told.Left is not null && told.Until is { } until && until <= told.From) return;
        var curtailments = told.Left is { } flow
            ? Source.Curtailments.Add(new Curtailment(told.From) { Until = told.Until, Flow = flow })
            : [.. Source.Curtailments.Where(c => c.From < told.From).Select(c => c.Until is { } end && end <= told.From ? c : c with { Until = told.From })];
        Source = Source with { Curtailments = curtailments };
    }

    public SourceBook Book() => new(code)
    {
        Seen = seen.Count > 0 ? seen[^1].Flow : null,
        SeenAt = seen.Count > 0 ? seen[^1].At : null,
        Orders = [.. orders.Values.Where(o => o.Order.State != OrderState.Ended).OrderBy(o => o.Order.From).ThenBy(o => o.At)],
        SwitchedAt = switched,
        Story = story.ToImmutable(),
    };

    /// <summary>What runs now: the newest of what was seen and what was ordered for a moment gone by.</summary>
    public void Close(DateTimeOffset now, SeasonState ground, GroundTime time, ImmutableArray<Doubt>.Builder doubts)
    {
        if (Source is null) return;
        ImmutableArray<(DateTimeOffset At, FlowRate Flow, Mark Mark)> ordered =
        [
            .. orders.Select(o => (At: Effective(o.Value.Order, o.Value.At), Flow: o.Value.Order.State == OrderState.Ended ? FlowRate.Zero : o.Value.Order.Flow, Mark: orderMarks[o.Key]))
                .Where(o => o.At <= now && ((WaterOrdered)o.Mark.Fact).State != OrderState.Asked)
                .OrderBy(o => o.At).ThenBy(o => o.Mark, MarkOrder.Happened),
        ];
        var events = seen.Concat(ordered).Where(e => e.At >= time.AsOf || Source.Running is null).OrderBy(e => e.At).ThenBy(e => e.Mark, MarkOrder.Happened).ToList();
        if (events.Count > 0) Source = Source with { Running = events[^1].Flow };
        AskTwo(ordered, doubts);
        AskOff(ordered, doubts);
        AskNotice(ground, doubts);
    }

    /// <summary>An order is known by its number, else by the moment it is for.</summary>
    public static string NameOf(WaterOrdered order) => order.OrderNumber ?? order.From.ToUniversalTime().ToString("O", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>When an order that was told of at a moment changes the flow.</summary>
    public static DateTimeOffset Effective(WaterOrdered order, DateTimeOffset told) => order.State == OrderState.Ended || told > order.From ? told : order.From;

    private void AskTwo(ImmutableArray<(DateTimeOffset At, FlowRate Flow, Mark Mark)> ordered, ImmutableArray<Doubt>.Builder doubts)
    {
        var running = ordered.Where(o => ((WaterOrdered)o.Mark.Fact).State == OrderState.Running).ToList();
        if (Source!.Kind != WaterSourceKind.DistrictTurnout || running.Count < 2) return;
        doubts.Add(new Doubt(SeasonProblems.TwoOrders.At(code, ("value", code), ("limit", Cfs(running[^1].Flow)), ("other", Cfs(running[^2].Flow))), [running[^2].Mark.Id, running[^1].Mark.Id]));
    }

    private void AskOff(ImmutableArray<(DateTimeOffset At, FlowRate Flow, Mark Mark)> ordered, ImmutableArray<Doubt>.Builder doubts)
    {
        if (seen.Count == 0 || ordered.LastOrDefault(o => o.At <= seen[^1].At) is not { Mark: not null } order || order.Flow <= FlowRate.Zero) return;
        var (_, flow, mark) = seen[^1];
        if (flow / order.Flow is < 0.75 or > 1.25)
            doubts.Add(new Doubt(SeasonProblems.FlowOffOrder.At(code, ("value", Cfs(flow)), ("source", code), ("limit", Cfs(order.Flow))), [order.Mark.Id, mark.Id]));
    }

    private void AskNotice(SeasonState ground, ImmutableArray<Doubt>.Builder doubts)
    {
        foreach (var note in orders.Values.Where(o => o.Order.State == OrderState.Asked && o.Order.From - o.At < Source!.Notice).OrderBy(o => o.Order.From))
        {
            var mark = orderMarks.Values.First(m => m.Fact == note.Order && m.Happened == note.At);
            doubts.Add(new Doubt(
                SeasonProblems.ShortNotice.At(code, ("value", When.Moment(note.Order.From.ToOffset(ground.Offset))), ("span", When.Span(note.Order.From - note.At)), ("source", code), ("limit", When.Span(Source!.Notice))),
                [mark.Id]));
        }
    }

    private static string Cfs(FlowRate flow) => Say.Number(flow.CubicFeetPerSecond, 1) + " cfs";
}
