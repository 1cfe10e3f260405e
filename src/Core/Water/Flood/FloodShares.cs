namespace Watersown.Water.Flood;

/// <summary>What each inlet gets where several ask one source for more than it gives.</summary>
public static class FloodShares
{
    /// <summary>Inlets with the flow that each gets: as asked, or less in proportion where the source is short.</summary>
    [Source(nameof(Sources.WaterBalance), "asked × cap / all that is asked of the source")]
    public static ImmutableArray<(FloodInlet Inlet, ImmutableArray<FlowStep> Flow)> Of(FloodNetwork network)
    {
        var shares = new ImmutableArray<FlowStep>[network.Inlets.Length];
        foreach (var source in network.Inlets.Select((Inlet, Index) => (Inlet, Index)).GroupBy(i => i.Inlet.Source, StringComparer.OrdinalIgnoreCase))
        {
            var inlets = source.ToList();
            if (!network.Caps.TryGetValue(source.Key, out var cap)) inlets.ForEach(i => shares[i.Index] = Ordered(i.Inlet));
            else Share(inlets, cap, shares);
        }

        return [.. network.Inlets.Select((inlet, i) => (inlet, shares[i]))];
    }

    private static void Share(List<(FloodInlet Inlet, int Index)> inlets, FlowRate cap, ImmutableArray<FlowStep>[] shares)
    {
        var asked = inlets.ConvertAll(i => Ordered(i.Inlet));
        var moments = asked.SelectMany(a => a).Select(s => s.From).Distinct().Order().ToList();
        var got = inlets.ConvertAll(_ => ImmutableArray.CreateBuilder<FlowStep>());
        foreach (var moment in moments)
        {
            var now = asked.ConvertAll(a => a.LastOrDefault(s => s.From <= moment)?.Flow ?? FlowRate.Zero);
            var all = now.Aggregate(FlowRate.Zero, (sum, f) => sum + f);
            var share = all > cap ? cap / all : 1;
            for (var i = 0; i < got.Count; i++) got[i].Add(new FlowStep(moment, now[i] * share));
        }

        for (var i = 0; i < inlets.Count; i++) shares[inlets[i].Index] = got[i].ToImmutable();
    }

    private static ImmutableArray<FlowStep> Ordered(FloodInlet inlet) => [.. inlet.Flow.OrderBy(s => s.From)];
}
