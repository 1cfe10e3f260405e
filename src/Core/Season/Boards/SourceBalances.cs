using Watersown.Land;
using Watersown.Schedule;
using Watersown.Schedule.Finish;

namespace Watersown.Season.Boards;

/// <summary>Each source against what its fields take up, by the water balance of land that is wet and land that is not yet.</summary>
public static class SourceBalances
{
    /// <summary>One for each source, in the farm's order.</summary>
    [Source(nameof(Sources.WaterBalance), "gives − wet land × (evaporation + seepage)")]
    public static ImmutableArray<SourceBalance> Of(SeasonState state, SeasonPlan? plan) => [.. state.Farm.Sources.Select(s => Of(state, plan, s))];

    /// <summary>Sources under one cap, then sources joined by fields that more than one of them reaches.</summary>
    [Source(nameof(Sources.WaterBalance), "sums over the sources of a group")]
    public static ImmutableArray<SourceGroup> Groups(SeasonState state, SeasonPlan? plan)
    {
        var balances = Of(state, plan);
        var capped = state.Farm.SharedCaps.Select(c => Group(c.Name, [.. balances.Where(b => c.Sources.Contains(b.Source.Code, StringComparer.Ordinal))], c.Cap));
        var joined = Joined(state.Farm).Select(codes => balances.Where(b => codes.Contains(b.Source.Code)).ToImmutableArray())
            .Select(g => Group(null, g, Sum(g.Select(b => b.Source.Cap))));
        return [.. capped.Concat(joined)];
    }

    private static SourceBalance Of(SeasonState state, SeasonPlan? plan, WaterSource source)
    {
        var fields = state.Farm.Fields.Where(f => FieldSource.First(plan, f) == source.Code).ToImmutableArray();
        var waters = fields.Select(f => (Field: f, Water: FieldWater.Of(state, f.Code))).ToImmutableArray();
        var held = waters.Where(w => w.Water.Job.Wet > Area.Zero).Select(w => new HeldLand(w.Field, w.Water.Job.Wet, w.Water.HoldingNow)).ToImmutableArray();
        var filling = waters.Where(w => state.Season(w.Field.Code).Stage == FieldStage.Flooding).ToImmutableArray();
        var holds = Sum(held.Select(h => h.Flow));
        FlowRate? gives = SourceSupply.Running(state, source) is [var first, ..] ? first.Flow : null;
        var balance = new SourceBalance(source)
        {
            Gives = gives,
            Held = held,
            Holds = holds,
            Filling = [.. filling.Select(w => new FillingLand(w.Field, w.Water.Job.Dry) { ChecksWet = state.Season(w.Field.Code).ChecksWet })],
            Over = gives - holds,
            HoldsAll = Sum(waters.Select(w => w.Water.Holding)),
            Waits = Waits(state, source),
            Working = Show(source, gives, held, holds),
        };
        return filling.Any(w => w.Water.Job.Dry > Area.Zero) && gives is not null ? Finish(balance, SourceFinish.Of(state, source.Code, null, plan)) : balance;
    }

    private static SourceBalance Finish(SourceBalance balance, SourceFinish finish) => balance with
    {
        FullAt = finish.Full,
        Never = finish.Never,
        Stall = finish.Stops,
        Finish = finish,
        Working = finish.Fields.Aggregate(balance.Working, (working, f) => working.Then(f.Working)),
    };

    private static (Area Needed, Area Full)? Waits(SeasonState state, WaterSource source)
    {
        if (source.Needs is not { } need) return null;
        var full = need.Fields.Where(c => state.Fields.Any(f => f.Code == c && f.Stage >= FieldStage.Full)).Aggregate(Area.Zero, (sum, c) => sum + state.Farm.Field(c).Net);
        return (need.Full, full);
    }

    private static SourceGroup Group(string? name, ImmutableArray<SourceBalance> balances, FlowRate cap)
    {
        FlowRate gives = Sum(balances.Select(b => b.Gives ?? FlowRate.Zero)), holds = Sum(balances.Select(b => b.Holds)), all = Sum(balances.Select(b => b.HoldsAll));
        var own = balances.Where(b => b.Source.Kind != WaterSourceKind.Tailwater).ToImmutableArray();
        return new SourceGroup(name, [.. balances.Select(b => b.Source.Code)])
        {
            Cap = cap,
            Gives = gives,
            Holds = holds,
            HoldsAll = all,
            CapWithoutTailwater = own.Length < balances.Length ? Sum(own.Select(b => b.Source.Cap)) : null,
            Working = Working.Empty
                .Given("C", "the most they may give together", cap.CubicFeetPerSecond, "cfs", "farm")
                .Step("Q", "what they give now", gives.CubicFeetPerSecond, "cfs", string.Join(" + ", balances.Select(b => "Q(" + b.Source.Code + ")")), Sources.Arithmetic)
                .Step("H", "to hold what is wet now", holds.CubicFeetPerSecond, "cfs", "Σ wet land × loss", Sources.WaterBalance)
                .Step("H1", "to hold all their fields once full", all.CubicFeetPerSecond, "cfs", "Σ net land × loss", Sources.WaterBalance)
                .Step("d", "left of the most they may give", (cap - all).CubicFeetPerSecond, "cfs", "C − H1", Sources.Arithmetic),
        };
    }

    // Sources that reach one field are joined, and so are those joined to them.
    private static List<ImmutableHashSet<string>> Joined(Farm farm)
    {
        var groups = new List<ImmutableHashSet<string>>();
        foreach (var reach in farm.Fields.Select(f => f.Sources.ToImmutableHashSet(StringComparer.Ordinal)).Where(s => s.Count > 1))
        {
            var touching = groups.Where(g => g.Overlaps(reach)).ToList();
            groups.RemoveAll(touching.Contains);
            groups.Add(touching.Aggregate(reach, (all, g) => all.Union(g)));
        }

        return groups;
    }

    private static FlowRate Sum(IEnumerable<FlowRate> flows) => flows.Aggregate(FlowRate.Zero, (sum, f) => sum + f);

    private static Working Show(WaterSource source, FlowRate? gives, ImmutableArray<HeldLand> held, FlowRate holds)
    {
        var working = Working.Empty.Given("Q", "gives now", Datum.Of(gives?.CubicFeetPerSecond), "cfs", source.Down ? "down" : "order or reading, source " + source.Code);
        foreach (var land in held)
            working = working.Step("H(" + land.Field.Code + ")", "to hold " + land.Field.Name, land.Flow.CubicFeetPerSecond, "cfs", Wording.Say.Figure(land.Wet.Acres) + " ac wet × loss", Sources.WaterBalance);
        return working
            .Step("H", "to hold what is wet now", holds.CubicFeetPerSecond, "cfs", "Σ H(field)", Sources.WaterBalance)
            .Step("d", "over, or short where below zero", Datum.Of((gives - holds)?.CubicFeetPerSecond), "cfs", "Q − H", Sources.Arithmetic);
    }
}
