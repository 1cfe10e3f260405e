using Watersown.Water;
using Watersown.Water.Filling;

namespace Watersown.Schedule.Finish;

/// <summary>When everything is full that a source fills, field by field and check by check, after it has held what is wet.</summary>
/// <param name="Sources">Codes of the source and of those joined to it.</param>
public sealed record SourceFinish(ImmutableArray<string> Sources)
{
    /// <summary>What they give at first; none known.</summary>
    public FlowRate? Gives { get; init; }

    /// <summary>What all their ground that is wet now takes up.</summary>
    public required FlowRate Holds { get; init; }

    /// <summary>What it takes up once everything asked for is full.</summary>
    public required FlowRate HoldsFull { get; init; }

    /// <summary>The fields that fill, in the order in which they get water; empty where nobody knows what is given.</summary>
    public ImmutableArray<FieldFinish> Fields { get; init; } = [];

    /// <summary>What is given and taken up, from one moment to the next; the last lasts on.</summary>
    public ImmutableArray<FlowSpan> Spans { get; init; } = [];

    /// <summary>When the last of them is full; none where nothing fills, or one never does.</summary>
    public DateTimeOffset? Full => Fields.IsEmpty || Never ? null : Fields.Max(f => f.Full);

    /// <summary>Something is never full at this flow.</summary>
    public bool Never => Fields.Any(f => f.Never);

    /// <summary>How much more must come than does, where something is never full: more than this, and it ends some day.</summary>
    public FlowRate? Short { get; init; }

    /// <summary>Covered land of the filling fields at which the flood stops, where something is never full.</summary>
    public Area? Stops { get; init; }

    public required Working Working { get; init; }

    public FieldFinish? Field(string code) => Fields.FirstOrDefault(f => f.Field.Code == code);

    /// <summary>What runs from the source, kept to its turns and curtailments; or what is asked.</summary>
    /// <param name="state">The season as it stands.</param>
    /// <param name="source">Source code.</param>
    /// <param name="ask">At what flow, with which fields opened besides; as it runs where not told.</param>
    /// <param name="plan">The plan, which may lead water to a field from another source than its first.</param>
    [Source(nameof(Watersown.Sources.WaterBalance), "check by check: t = (V / m) ln((S − m A0) / (S − m A1)), with S what is left of the flow once all other wet land is held")]
    public static SourceFinish Of(SeasonState state, string source, FillAsk? ask = null, SeasonPlan? plan = null)
    {
        var asked = ask ?? FillAsk.Running;
        ImmutableArray<string> sources = [source, .. asked.With.Where(s => s != source)];
        var own = state.Farm.Fields.Where(f => FieldSource.First(plan, f) is { } first && sources.Contains(first, StringComparer.Ordinal)).Select(f => f.Code).ToImmutableArray();
        ImmutableArray<FieldStart> starts =
        [
            .. own.Where(f => state.Season(f).Stage == FieldStage.Flooding).Select(f => new FieldStart(f)),
            .. asked.Open.Where(o => state.Season(o.Field).Stage < FieldStage.Flooding),
        ];
        var grounds = starts.Select(s => FinishGround.Of(state, s)).ToImmutableArray();
        var others = Sum(own.Where(f => !starts.Any(s => s.Field == f)).Select(f => FieldWater.Of(state, f).HoldingNow));
        var flow = asked.Flow.IsEmpty ? SourceSupply.Running(state, sources) ?? [] : asked.Flow;
        var finish = new SourceFinish(sources)
        {
            Gives = flow.IsEmpty ? null : flow.MinBy(s => s.From)!.Flow,
            Holds = others + Sum(grounds.Select(g => g.Ground.Holding)),
            HoldsFull = others + Sum(grounds.Select(g => g.Ground.HoldingFull)),
            Working = Working.Empty,
        };
        return flow.IsEmpty ? finish : Told(state, finish, new FinishCase(grounds, others, flow, asked.Way));
    }

    private static SourceFinish Told(SeasonState state, SourceFinish finish, FinishCase job)
    {
        var spans = new FillRun([.. job.Grounds.Select(g => g.Ground)], job.Others, job.Flow, job.Way).Run();
        var never = job.Grounds.Any(g => !g.Ground.IsFull);
        var last = job.Flow.MaxBy(s => s.From)!.Flow;
        return finish with
        {
            Spans = spans,
            Fields = [.. job.Grounds.Select(g => FinishWorking.Field(state, g, job))],
            Short = never && finish.HoldsFull >= last ? finish.HoldsFull - last : null,
            Stops = never && last > job.Others && finish.HoldsFull >= last && FinishWorking.MeanLoss(job.Grounds) is { } loss && loss > DepthRate.Zero ? Ponding.StallArea(last - job.Others, loss) : null,
            Working = FinishWorking.Source(state, finish, job),
        };
    }

    private static FlowRate Sum(IEnumerable<FlowRate> flows) => flows.Aggregate(FlowRate.Zero, (sum, f) => sum + f);
}
