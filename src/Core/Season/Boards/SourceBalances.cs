using Watersown.Land;
using Watersown.Schedule;
using Watersown.Water;

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

    /// <summary>The source that a field's water comes from: the plan's, or the first that reaches it.</summary>
    public static string? FirstSource(SeasonPlan? plan, Field field) =>
        plan?.Task(field.Code, PlanTaskKind.Fill) is { From: [var first, ..] } ? first.Source : field.Sources.FirstOrDefault();

    private static SourceBalance Of(SeasonState state, SeasonPlan? plan, WaterSource source)
    {
        var fields = state.Farm.Fields.Where(f => FirstSource(plan, f) == source.Code).ToImmutableArray();
        var waters = fields.Select(f => (Field: f, Water: FieldWater.Of(state, f.Code))).ToImmutableArray();
        var held = waters.Where(w => w.Water.Job.Wet > Area.Zero).Select(w => new HeldLand(w.Field, w.Water.Job.Wet, w.Water.HoldingNow)).ToImmutableArray();
        var filling = waters.Where(w => state.Season(w.Field.Code).Stage == FieldStage.Flooding).ToImmutableArray();
        var holds = Sum(held.Select(h => h.Flow));
        FlowRate? gives = source.Down ? FlowRate.Zero : source.Running;
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
        return filling.IsEmpty || gives is not { } flow ? balance : Finish(state, balance, filling, flow);
    }

    // One job for everything it fills: the fields together, the loss that of their own land.
    private static SourceBalance Finish(SeasonState state, SourceBalance balance, ImmutableArray<(Field Field, FieldWater Water)> filling, FlowRate flow)
    {
        var dry = filling.Aggregate(Area.Zero, (sum, w) => sum + w.Water.Job.Dry);
        var wet = filling.Aggregate(Area.Zero, (sum, w) => sum + w.Water.Job.Wet);
        if (dry <= Area.Zero) return balance;
        var fill = WaterDepth.FromMeters(filling.Sum(w => w.Water.Job.Fill.Meters * w.Water.Job.Dry.SquareMeters) / dry.SquareMeters);
        var loss = DepthRate.FromMetersPerSecond(filling.Sum(w => w.Water.Job.Loss.MetersPerSecond * w.Water.All.SquareMeters) / (dry + wet).SquareMeters);
        var job = new FloodJob(dry, wet, fill, loss);
        var others = balance.Holds - Ponding.HoldingFlow(wet, loss);
        var supply = flow - others;
        var time = Ponding.FillTime(job, supply);
        return balance with
        {
            FullAt = time is { } span ? state.Now + span : null,
            Never = time is null,
            Stall = time is null && supply > FlowRate.Zero && loss > DepthRate.Zero ? Ponding.StallArea(supply, loss) : null,
            Working = balance.Working.Then(ShowFill(job, supply, others, time)),
        };
    }

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

    private static Working ShowFill(FloodJob job, FlowRate supply, FlowRate others, TimeSpan? time) => Working.Empty
        .Step("Ho", "to hold the other fields", others.CubicFeetPerSecond, "cfs", "H less what the filling fields hold", Sources.Arithmetic)
        .Step("S", "for what is filling", supply.AcreFeetPerDay, "ac-ft/day", "1.983471 (Q − Ho)", Sources.Definition)
        .Given("A", "land still to be covered", job.Dry.Acres, "ac", "checks not wet")
        .Given("A0", "its land already wet", job.Wet.Acres, "ac", "checks wet")
        .Given("V", "water to wet and cover it", job.Fill.Feet, "ft", "soil")
        .Given("m", "loss from wet land", job.Loss.FeetPerDay, "ft/day", "evaporation + seepage")
        .Step("t", "until all of it is covered", Datum.Of(time?.TotalDays), "days", time is null ? "never: S is not above m (A0 + A)" : "(V / m) ln((S − m A0) / (S − m (A0 + A)))", Sources.WaterBalance);
}
