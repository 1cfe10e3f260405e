using Watersown.Land;

namespace Watersown.Schedule.Finish;

/// <summary>Orders that together are more than a joint cap allows.</summary>
/// <param name="Cap">The cap.</param>
/// <param name="From">From when.</param>
/// <param name="Until">Until when.</param>
/// <param name="Flow">How much too much.</param>
public sealed record CapBreak(SharedCap Cap, DateTimeOffset From, DateTimeOffset Until, FlowRate Flow);

/// <summary>Orders of sources under one cap.</summary>
public static class JointOrders
{
    /// <summary>Where the orders of some sources break a joint cap, in order of time.</summary>
    [Source(nameof(Sources.Arithmetic), "Σ orders − cap")]
    public static ImmutableArray<CapBreak> Breaks(Farm farm, ImmutableArray<OrderAdvice> advices)
    {
        var found = ImmutableArray.CreateBuilder<CapBreak>();
        foreach (var cap in farm.SharedCaps)
        {
            var asked = advices.Where(a => cap.Sources.Contains(a.Source.Code, StringComparer.Ordinal) && !a.Orders.IsEmpty).ToImmutableArray();
            if (asked.IsEmpty) continue;
            var (under, orders) = (asked.Select(a => a.Source).ToImmutableArray(), asked.Select(a => a.Orders).ToImmutableArray());
            // The last order of each lasts on.
            var (first, last) = (orders.Min(o => o[0].From), orders.Max(o => o[^1].Until));
            var limits = under.SelectMany(s => SourceSupply.Changes(s, first, last));
            var moments = orders.SelectMany(o => o.Select(x => x.From)).Append(last).Concat(limits).Distinct().Order().ToImmutableArray();
            foreach (var (from, until) in moments.Zip(moments.Skip(1)))
            {
                var sum = asked.Aggregate(FlowRate.Zero, (all, a) => all + Comes(a, from));
                if (sum > cap.Cap * (1 + 1e-9)) found.Add(new CapBreak(cap, from, until, sum - cap.Cap));
            }
        }

        return [.. found.OrderBy(f => f.From)];
    }

    // Of an order no more comes than the source can give just then.
    private static FlowRate Comes(OrderAdvice advice, DateTimeOffset at)
    {
        var (order, most) = (advice.Orders.LastOrDefault(o => o.From <= at)?.Flow ?? FlowRate.Zero, SourceSupply.MostAt(advice.Source, at));
        return order < most ? order : most;
    }
}
