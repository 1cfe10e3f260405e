using Watersown.Land;
using Watersown.Water;
using Watersown.Water.Filling;
using Watersown.Water.Flood;

namespace Watersown.Schedule.Finish;

/// <summary>From where a block is reckoned.</summary>
public enum BlockStart
{
    /// <summary>What is wet now is wet.</summary>
    AsItStands,

    /// <summary>All of it dry.</summary>
    Empty,
}

/// <summary>
/// All fields of a set of sources as one job, everything taken as ready for water: no order of fields can be much sooner. With the
/// plain sum beside it, which forgets that wet land drinks.
/// </summary>
/// <param name="Sources">Codes of the sources.</param>
/// <param name="Job">Their land with the mean fill and loss of its acres.</param>
/// <param name="Flows">What comes from each moment on, all sources together.</param>
public sealed record BlockFinish(ImmutableArray<string> Sources, FloodJob Job, ImmutableArray<FlowStep> Flows)
{
    /// <summary>What comes at first.</summary>
    public FlowRate Flow => Flows[0].Flow;

    /// <summary>What comes in the end; of turns, their mean.</summary>
    public FlowRate Lasts => Flows[^1].Flow;

    /// <summary>Flow that holds all of it once it is full.</summary>
    public FlowRate Holds => Ponding.HoldingFlow(Job.Dry + Job.Wet, Job.Loss);

    /// <summary>How long until all of it is full; none where it never is.</summary>
    public TimeSpan? Time => Flows.Length == 1 ? Ponding.FillTime(Job, Flow) : InSteps(Job);

    /// <summary>The plain sum; none where nothing comes.</summary>
    public TimeSpan? Naive => Flows.Length > 1 ? InSteps(Job with { Loss = DepthRate.Zero }) : Flow > FlowRate.Zero ? Ponding.NaiveTime(Job, Flow) : null;

    /// <summary>How much more must come than does, where it is never full.</summary>
    public FlowRate? Short => Time is null ? Holds - Lasts : null;

    /// <summary>Covered land at which it stops, where it is never full.</summary>
    public Area? Stops => Time is null && Job.Loss > DepthRate.Zero ? Ponding.StallArea(Lasts, Job.Loss) : null;

    /// <summary>The fields of some sources: those that the plan fills from them, or whose first they are.</summary>
    /// <param name="state">The season as it stands.</param>
    /// <param name="sources">Source codes.</param>
    /// <param name="flow">What comes; the most that they give together where not told, a joint cap heeded.</param>
    /// <param name="start">What is wet at the start.</param>
    /// <param name="plan">The plan, which may lead water to a field from another source than its first.</param>
    [Source(nameof(Watersown.Sources.WaterBalance), "t = (V / m) ln((S − m A0) / (S − m A1)), V and m the means of its acres")]
    public static BlockFinish Of(SeasonState state, ImmutableArray<string> sources, FlowRate? flow = null, BlockStart start = BlockStart.AsItStands, SeasonPlan? plan = null)
    {
        var waters = state.Farm.Fields.Where(f => FieldSource.First(plan, f) is { } first && sources.Contains(first, StringComparer.Ordinal)).Select(f => FieldWater.Of(state, f.Code)).ToImmutableArray();
        var all = waters.Aggregate(Area.Zero, (sum, w) => sum + w.All);
        var wet = start == BlockStart.Empty ? Area.Zero : waters.Aggregate(Area.Zero, (sum, w) => sum + w.Job.Wet);
        double Mean(Func<FieldWater, double> value) => all <= Area.Zero ? 0 : waters.Sum(w => value(w) * w.All.SquareMeters) / all.SquareMeters;
        var job = new FloodJob(all - wet, wet, WaterDepth.FromMeters(Mean(w => w.Job.Fill.Meters)), DepthRate.FromMetersPerSecond(Mean(w => w.Job.Loss.MetersPerSecond)));
        return new BlockFinish(sources, job, flow is { } one ? [new FlowStep(TimeSpan.Zero, one)] : Most(state, sources));
    }

    /// <summary>The whole farm on all its own sources; what comes back as tailwater is not counted, because it is the same water.</summary>
    [Source(nameof(Watersown.Sources.WaterBalance), "as of a block, all sources but tailwater")]
    public static BlockFinish OfFarm(SeasonState state, BlockStart start = BlockStart.AsItStands) =>
        Of(state, [.. state.Farm.Sources.Where(s => s.Needs is null && s.Kind != WaterSourceKind.Tailwater).Select(s => s.Code)], null, start);

    /// <summary>The most that some sources give together from now on, joint caps, turns and curtailments heeded; sources that are down give nothing.</summary>
    [Source(nameof(Watersown.Sources.Arithmetic), "Σ of the most of each, no more of each joint cap than it allows")]
    public static ImmutableArray<FlowStep> Most(SeasonState state, ImmutableArray<string> sources)
    {
        var counted = state.Farm.Sources.Where(s => sources.Contains(s.Code, StringComparer.Ordinal)).ToImmutableArray();
        return SourceSupply.Together([.. counted.Select(s => SourceSupply.Most(state, s))], flows => Together(state.Farm, counted, flows));
    }

    private static FlowRate Together(Farm farm, ImmutableArray<WaterSource> sources, ImmutableArray<FlowRate> flows)
    {
        var left = Enumerable.Range(0, sources.Length).ToList();
        var most = FlowRate.Zero;
        foreach (var shared in farm.SharedCaps)
        {
            var under = left.Where(i => shared.Sources.Contains(sources[i].Code, StringComparer.Ordinal)).ToList();
            var sum = Sum(under.Select(i => flows[i]));
            most += sum < shared.Cap ? sum : shared.Cap;
            left.RemoveAll(under.Contains);
        }

        return most + Sum(left.Select(i => flows[i]));
    }

    private TimeSpan? InSteps(FloodJob job)
    {
        var ground = new FillGround(job, [job.Dry + job.Wet]);
        _ = new FillRun([ground], FlowRate.Zero, Flows, FillingWay.OneAfterAnother).Run();
        return ground.FullAt;
    }

    /// <summary>The lines behind it.</summary>
    /// <param name="state">The season as it stands.</param>
    public Working Working(SeasonState state) => FinishWorking.Later(state, Flows, Watersown.Working.Empty
            .Given("Q", "given", Flow.CubicFeetPerSecond, "cfs", string.Join(" + ", Sources)))
        .Given("A0", "land wet at the start", Job.Wet.Acres, "ac", "checks wet")
        .Given("A1", "all its land", (Job.Dry + Job.Wet).Acres, "ac", "fields")
        .Given("V", "water to wet and cover it, mean of its acres", Job.Fill.Feet, "ft", "soils")
        .Given("m", "loss from wet land, mean of its acres", Job.Loss.FeetPerDay, "ft/day", "evaporation + seepage of soils")
        .Step("S", "given in a day", Flow.AcreFeetPerDay, "ac-ft/day", "1.983471 Q", Watersown.Sources.Definition)
        .Step("H", "to hold all of it", Holds.CubicFeetPerSecond, "cfs", "m A1 / 1.983471", Watersown.Sources.WaterBalance)
        .Step("t0", "the plain sum", Datum.Of(Naive?.TotalDays), "days", Flows.Length > 1 ? "V (A1 − A0) / S, added up from each change of S to the next" : "V (A1 − A0) / S", Watersown.Sources.Arithmetic)
        .Step("t", "until all of it is full", Datum.Of(Time?.TotalDays), "days", Formula, Watersown.Sources.WaterBalance);

    private string Formula => (Time, Flows.Length) switch
    {
        (null, 1) => "never: S is not above m A1",
        (null, _) => "never: what lasts of S is not above m A1",
        (_, 1) => "(V / m) ln((S − m A0) / (S − m A1))",
        _ => "the same from each change of S to the next, added up",
    };

    private static FlowRate Sum(IEnumerable<FlowRate> flows) => flows.Aggregate(FlowRate.Zero, (sum, f) => sum + f);
}
