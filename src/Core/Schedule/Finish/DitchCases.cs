using Watersown.Land;
using Watersown.Water.Flood;

namespace Watersown.Schedule.Finish;

/// <summary>How water is led in a case that is reckoned through.</summary>
public enum DitchWay
{
    /// <summary>One source on the fields of its own ditch.</summary>
    Alone,

    /// <summary>All sources of the group on all its fields, without what comes back.</summary>
    Together,

    /// <summary>The same, with what comes back from now on.</summary>
    WithReturn,

    /// <summary>The same, with what comes back from when the plan has filled what it waits for.</summary>
    ReturnLater,
}

/// <summary>One way of leading water, and when all of its fields would be full by it.</summary>
/// <param name="Way">How.</param>
/// <param name="Sources">Codes of the sources without those that give back.</param>
/// <param name="Block">The fields as one job.</param>
public sealed record DitchCase(DitchWay Way, ImmutableArray<string> Sources, BlockFinish Block)
{
    /// <summary>Codes of what comes back.</summary>
    public ImmutableArray<string> Returns { get; init; } = [];

    /// <summary>From when it comes back.</summary>
    public DateTimeOffset? From { get; init; }
}

/// <summary>Sources that hang together by joints or a cap, held against each other: each alone, all together, with what comes back.</summary>
public static class DitchCases
{
    /// <summary>The cases of a group, from the least water to the most.</summary>
    /// <param name="state">The season as it stands.</param>
    /// <param name="group">Codes of the sources.</param>
    /// <param name="plan">The plan, which says when the fields are full that tailwater waits for.</param>
    [Source(nameof(Sources.WaterBalance), "as of a block, for each way of leading the water")]
    public static ImmutableArray<DitchCase> Of(SeasonState state, ImmutableArray<string> group, SeasonPlan? plan = null)
    {
        var sources = group.Select(state.Farm.Source).OfType<WaterSource>().ToImmutableArray();
        ImmutableArray<string> own = [.. sources.Where(s => !Returns(s)).Select(s => s.Code)], back = [.. sources.Where(Returns).Select(s => s.Code)];
        var cases = ImmutableArray.CreateBuilder<DitchCase>();
        foreach (var one in own) cases.Add(new DitchCase(DitchWay.Alone, [one], BlockFinish.Of(state, [one])));
        var together = BlockFinish.Of(state, own);
        if (own.Length > 1) cases.Add(new DitchCase(DitchWay.Together, own, together));
        if (own.IsEmpty || back.IsEmpty) return Fields(cases);
        var all = BlockFinish.Of(state, [.. own, .. back]);
        if (back.Select(b => TailwaterMoment.Of(state, plan, state.Farm.Source(b)!)).Max() is { } from && from > state.Now)
        {
            var steps = SourceSupply.Together([together.Flows, Later(all.Flows, from - state.Now)], flows => flows[0] > flows[1] ? flows[0] : flows[1]);
            cases.Add(new DitchCase(DitchWay.ReturnLater, own, all with { Flows = steps }) { Returns = back, From = from });
        }

        cases.Add(new DitchCase(DitchWay.WithReturn, own, all) { Returns = back });
        return Fields(cases);
    }

    private static bool Returns(WaterSource source) => source.Needs is not null || source.Kind == WaterSourceKind.Tailwater;

    private static ImmutableArray<DitchCase> Fields(ImmutableArray<DitchCase>.Builder cases) =>
        [.. cases.Where(c => c.Block.Job.Dry + c.Block.Job.Wet > Area.Zero)];

    // Nothing until it comes; then what runs at that time and after.
    private static ImmutableArray<FlowStep> Later(ImmutableArray<FlowStep> flows, TimeSpan from) =>
    [
        new FlowStep(TimeSpan.Zero, FlowRate.Zero),
        new FlowStep(from, flows.Last(f => f.From <= from).Flow),
        .. flows.Where(f => f.From > from),
    ];
}

/// <summary>When tailwater begins to come back.</summary>
public static class TailwaterMoment
{
    /// <summary>Now where enough acres are full, else when the plan has filled them; none where it never does, or there is no plan.</summary>
    [Source(nameof(Sources.Arithmetic), "Σ acres of its fields that are full by then")]
    public static DateTimeOffset? Of(SeasonState state, SeasonPlan? plan, WaterSource source)
    {
        if (source.Needs is not { } need) return state.Now;
        var full = Area.Zero;
        foreach (var (code, at) in need.Fields.Select(f => (Code: f, At: Filled(state, plan, f))).Where(f => f.At is not null).OrderBy(f => f.At).ThenBy(f => f.Code, StringComparer.Ordinal))
        {
            full += state.Farm.Field(code).Net;
            if (full >= need.Full) return at;
        }

        return need.Full <= Area.Zero ? state.Now : null;
    }

    private static DateTimeOffset? Filled(SeasonState state, SeasonPlan? plan, string field) =>
        state.Season(field).Stage >= FieldStage.Full ? state.Now : plan?.Task(field, PlanTaskKind.Fill)?.End;
}
