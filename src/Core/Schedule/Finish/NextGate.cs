using Watersown.Flight;
using Watersown.Seed;
using Watersown.Water.Filling;

namespace Watersown.Schedule.Finish;

/// <summary>
/// Which field gets water next, and whether one after another or side by side: every order of the fields whose ground is ready is
/// run through and priced by the day it can be sown, the age of its head check then, and the seed that waits for it.
/// </summary>
public static class NextGate
{
    /// <summary>Fields that are put in every order; more of them follow in the order of the farm.</summary>
    [Source(nameof(Sources.FarmDefault), "five: 120 orders")]
    public static int MostInEveryOrder => 5;

    /// <summary>The ways of opening what is ready, the cheapest first; one only where nothing is ready.</summary>
    /// <param name="state">The season as it stands.</param>
    /// <param name="source">Source code.</param>
    /// <param name="ask">At what flow, and joined to which other sources; fields named in it may be opened from the moment told there.</param>
    /// <param name="plan">The plan, which may lead water to a field from another source than its first.</param>
    [Source(nameof(Sources.FarmDefault), "delay + head-check age + seed lost, in the farm's prices; for ranking only")]
    public static ImmutableArray<GateChoice> Of(SeasonState state, string source, FillAsk ask, SeasonPlan? plan = null)
    {
        var ready = Ready(state, source, ask, plan);
        var orders = Orders([.. ready.Take(MostInEveryOrder)]).Select(o => (Order: o.AddRange(ready.Skip(MostInEveryOrder)), Way: FillingWay.OneAfterAnother));
        // Side by side no field comes first.
        if (ready.Length > 0) orders = orders.Append((ready, FillingWay.SideBySide));
        var mornings = FlyingWindows.Of(state, state.Aeroplanes.FirstOrDefault() ?? new Aeroplane("the aeroplane"));
        return [.. orders.Select(o => ask with { Open = o.Order, Way = o.Way }).Select(a => Choice(state, SourceFinish.Of(state, source, a, plan), a, mornings)).OrderBy(c => c.Total).ThenBy(c => c.Finish.Full ?? DateTimeOffset.MaxValue)];
    }

    private static ImmutableArray<FieldStart> Ready(SeasonState state, string source, FillAsk ask, SeasonPlan? plan)
    {
        ImmutableArray<string> sources = [source, .. ask.With];
        var ready = state.Farm.Fields.Where(f => FieldSource.First(plan, f) is { } first && sources.Contains(first, StringComparer.Ordinal)).Select(f => state.Season(f.Code))
            .Where(f => f.Stage < FieldStage.Flooding && !ask.Open.Any(o => o.Field == f.Code) && GroundChain.Left(f).IsEmpty)
            .Select(f => new FieldStart(f.Code, f.FitFrom));
        return [.. ask.Open.Where(o => state.Season(o.Field).Stage < FieldStage.Flooding), .. ready];
    }

    private static GateChoice Choice(SeasonState state, SourceFinish finish, FillAsk ask, ImmutableArray<FlyingWindow> mornings) =>
        new([.. ask.Open.Select(o => o.Field)], ask.Way, finish, [.. finish.Fields.Select(f => Priced(state, f, mornings))]);

    private static GateField Priced(SeasonState state, FieldFinish finish, ImmutableArray<FlyingWindow> mornings)
    {
        var net = finish.Field.Net;
        var batches = state.Batches.Where(b => b.MeantFor.Contains(finish.Field.Code, StringComparer.Ordinal)).ToImmutableArray();
        if (finish.Full is not { } full || mornings.FirstOrDefault(m => m.Until > full) is not { } morning)
        {
            return new GateField(finish) { SeedLost = [.. batches.Select(b => b.Code)], Delay = state.Prices.Unsown * net.Acres, HeadCost = Money.Zero, SeedCost = Seed(state, batches) };
        }

        var sow = full > morning.From ? full : morning.From;
        var lost = batches.Where(b => UseBy(state, b) < sow).ToImmutableArray();
        var age = sow - finish.HeadWet;
        return new GateField(finish)
        {
            Sow = sow,
            HeadAge = age,
            SeedLost = [.. lost.Select(b => b.Code)],
            Delay = DelayCost.PerAcre(state.Prices, FarmTime.Day(state, state.Now), FarmTime.Day(state, sow)) * net.Acres,
            HeadCost = age is { } old ? DelayCost.HeadAge(state.Prices, net, old) : Money.Zero,
            SeedCost = Seed(state, lost),
        };
    }

    // Seed under water can be drained as late as it is lost otherwise.
    private static DateTimeOffset UseBy(SeasonState state, SoakBatch batch) => Sheets.SeedTimes.UseBy(state, batch) ?? Sheets.SeedTimes.UseBy(state, batch with { Drained = batch.InSoak + state.SoakRules.SoakLost })!.Value;

    private static Money Seed(SeasonState state, ImmutableArray<SoakBatch> batches) =>
        batches.Aggregate(Money.Zero, (sum, b) => sum + (state.Prices.SoakedSeed * b.Dry.Pounds));

    private static IEnumerable<ImmutableArray<FieldStart>> Orders(ImmutableArray<FieldStart> fields)
    {
        if (fields.Length <= 1) return [fields];
        return fields.SelectMany(first => Orders(fields.Remove(first)).Select(rest => rest.Insert(0, first)));
    }
}
