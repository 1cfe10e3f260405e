using Watersown.Schedule;

namespace Watersown.Season.Learning;

/// <summary>A flow from a moment on.</summary>
/// <param name="From">The first stands for all time before it, too.</param>
/// <param name="Flow">None where nobody knows.</param>
/// <param name="Read">The mark, where somebody read it.</param>
internal readonly record struct SourceRun(DateTimeOffset From, FlowRate? Flow, Mark? Read);

/// <summary>What a source gave from when to when: readings, orders for their moment, starts and stops, and what the farm says.</summary>
internal static class SourceRuns
{
    private enum Kind
    {
        Flow,
        Up,
        Down,
    }

    public static ImmutableArray<SourceRun> Of(SeasonState ground, ImmutableArray<StoryLine> story, string code)
    {
        if (ground.Farm.Source(code) is not { } source) return [];
        var happenings = new List<(DateTimeOffset At, int Place, Kind Kind, FlowRate? Flow, Mark? Read)> { (ground.Now, -1, source.Down ? Kind.Down : Kind.Up, source.Running, null) };
        var orders = new Dictionary<string, (WaterOrdered Order, Mark Mark, int Place)>(StringComparer.OrdinalIgnoreCase);
        for (var i = 0; i < story.Length; i++)
        {
            var mark = story[i].Mark;
            if (story[i].Standing != Standing.Stands) continue;
            switch (mark.Fact)
            {
                case FlowSeen seen when Same(seen.Source): happenings.Add((mark.Happened, i, Kind.Flow, seen.Flow, mark)); break;
                case WaterOrdered order when Same(order.Source) && order.State != OrderState.Asked: orders[SourceFold.NameOf(order)] = (order, mark, i); break;
                case SourceSwitched to when Same(to.Source): happenings.Add((mark.Happened, i, to.Up ? Kind.Up : Kind.Down, null, null)); break;
                case FaultFound { Kind: FaultKind.Pump or FaultKind.Gate, Source: { } at } when Same(at): happenings.Add((mark.Happened, i, Kind.Down, null, null)); break;
                case FaultMended mended when Mends(mended): happenings.Add((mark.Happened, i, Kind.Up, null, null)); break;
                default: break;
            }
        }

        happenings.AddRange(orders.Values.Select(o => (SourceFold.Effective(o.Order, o.Mark.Happened), o.Place, Kind.Flow, (FlowRate?)(o.Order.State == OrderState.Ended ? FlowRate.Zero : o.Order.Flow), (Mark?)null)));
        return Walk([.. happenings.OrderBy(h => h.At).ThenBy(h => h.Place)], source.Running);

        bool Same(string other) => string.Equals(other, code, StringComparison.OrdinalIgnoreCase);
        bool Mends(FaultMended mended)
        {
            var line = story.FirstOrDefault(l => l.Mark.Id == mended.Fault);
            if (line is { Standing: Standing.Replaced, By: { } by }) line = story.FirstOrDefault(l => l.Mark.Id == by);
            return line is { Standing: Standing.Stands, Mark.Fact: FaultFound { Kind: FaultKind.Pump or FaultKind.Gate, Source: { } at } } && Same(at);
        }
    }

    private static ImmutableArray<SourceRun> Walk(ImmutableArray<(DateTimeOffset At, int Place, Kind Kind, FlowRate? Flow, Mark? Read)> happenings, FlowRate? before)
    {
        var (runs, flow, up) = (ImmutableArray.CreateBuilder<SourceRun>(), before, true);
        runs.Add(new SourceRun(DateTimeOffset.MinValue, before, null));
        foreach (var happening in happenings)
        {
            up = happening.Kind switch { Kind.Up => true, Kind.Down => false, _ => up || happening.Read is not null };
            flow = happening.Flow ?? flow;
            runs.Add(new SourceRun(happening.At, up ? flow : FlowRate.Zero, happening.Read));
        }

        return runs.ToImmutable();
    }
}
