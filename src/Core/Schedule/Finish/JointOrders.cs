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
            var orders = advices.Where(a => cap.Sources.Contains(a.Source.Code, StringComparer.Ordinal)).Select(a => a.Orders).Where(o => !o.IsEmpty).ToImmutableArray();
            if (orders.IsEmpty) continue;
            // The last order of each lasts on.
            var moments = orders.SelectMany(o => o.Select(x => x.From)).Append(orders.Max(o => o[^1].Until)).Distinct().Order().ToImmutableArray();
            foreach (var (from, until) in moments.Zip(moments.Skip(1)))
            {
                var sum = orders.Aggregate(FlowRate.Zero, (all, o) => all + (o.LastOrDefault(x => x.From <= from)?.Flow ?? FlowRate.Zero));
                if (sum > cap.Cap * (1 + 1e-9)) found.Add(new CapBreak(cap, from, until, sum - cap.Cap));
            }
        }

        return [.. found.OrderBy(f => f.From)];
    }
}
