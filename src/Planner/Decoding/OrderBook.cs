using Watersown.Planner.Instances;

namespace Watersown.Planner.Decoding;

/// <summary>Finds the least order of every period that serves the fills and holds of a plan.</summary>
internal static class OrderBook
{
    public static ImmutableArray<ImmutableArray<int>> Of(Instance instance, ImmutableArray<FieldSolution> fields)
    {
        var demand = instance.Classes.Select((c, i) => DemandOf(instance, fields, i, c)).ToImmutableArray();
        var orders = ImmutableArray.CreateBuilder<ImmutableArray<int>>(instance.Sources.Length);
        for (var s = 0; s < instance.Sources.Length; s++)
        {
            var source = instance.Sources[s];
            orders.Add([.. source.Periods.Select((p, k) => p.FixedFlow ?? Order(instance, demand, s, k))]);
        }

        return orders.ToImmutable();
    }

    private static StepProfile DemandOf(Instance instance, ImmutableArray<FieldSolution> fields, int index, WaterClass waterClass)
    {
        var profile = new StepProfile();
        profile.Take(0, instance.Clock.Horizon, waterClass.BaseHold);
        foreach (var field in instance.Fields.Where(f => f.Class == index && f.Need != WaterNeed.None))
        {
            var planned = fields[field.Index];
            if (!planned.Flooded) continue;
            profile.Take(Math.Max(0, planned.FillStart), planned.FillEnd, planned.Flow - field.HoldNow);
            profile.Take(planned.FillEnd, instance.Clock.Horizon, field.Hold - field.HoldNow);
        }

        return profile;
    }

    /// <summary>Peak demand of the classes whose first choice this source is, less nothing: other choices come on top only when it is used up.</summary>
    private static int Order(Instance instance, ImmutableArray<StepProfile> demand, int source, int place)
    {
        var item = instance.Sources[source];
        var period = item.Periods[place];
        var moments = new SortedSet<int> { period.From };
        var users = Enumerable.Range(0, instance.Classes.Length).Where(c => instance.Classes[c].Sources[0] == source).ToImmutableArray();
        foreach (var c in users) moments.UnionWith(demand[c].Changes.Where(t => t > period.From && t < period.Until));
        var peak = moments.Max(t => users.Sum(c => demand[c].Peak(t, t + 1)));
        return Math.Min(item.MostIn(place), (peak + item.Step - 1) / item.Step * item.Step);
    }
}
