namespace Watersown.Schedule.Replan;

/// <summary>A plan with what it costs under the prices at hand.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Cost">Money: seed lost, delay and water age together.</param>
public sealed record RankedPlan(ReplanPlan Plan, Money Cost)
{
    /// <summary>How the money was worked out.</summary>
    public Working Working { get; init; } = Working.Empty;
}

/// <summary>What a blown-out morning leaves, with every plan that can be the best at some price.</summary>
public sealed class MorningReplan
{
    /// <summary>At most so many plans stand side by side.</summary>
    [Source(nameof(Sources.FarmDefault), "more than four cannot be compared at five in the morning")]
    public const int MostShown = 4;

    private readonly ImmutableArray<ReplanPlan> lettered;

    private MorningReplan(ReplanCase from, ImmutableArray<ReplanPlan> plans, ImmutableArray<ReplanPlan> others)
    {
        (Case, Plans, Others) = (from, plans, others);
        lettered = [.. Ranked(ReplanPrices.Of(from.State.Prices)).Select(r => r.Plan).Concat(plans).Concat(others).Distinct()];
    }

    public ReplanCase Case { get; }

    /// <summary>No other plan is as good as one of these in seed lost, delay and water age at once; the cheapest is among them at any price.</summary>
    public ImmutableArray<ReplanPlan> Plans { get; }

    /// <summary>The next best that give a batch to another field; only looked for where one plan is best at any price.</summary>
    public ImmutableArray<ReplanPlan> Others { get; }

    /// <summary>Dry seed of the batches past their window: lost whichever plan is taken.</summary>
    public DrySeed PastDry => Case.Batches.Where(b => b.Use == BatchUse.Past).Aggregate(DrySeed.Zero, (sum, b) => sum + b.Batch.Dry);

    /// <summary>What that seed has cost.</summary>
    public Money PastCost => Case.Batches.Where(b => b.Use == BatchUse.Past).Aggregate(Money.Zero, (sum, b) => sum + b.IfDumped);

    /// <summary>How that sum came about, batch by batch.</summary>
    public Working PastWorking => Case.Batches.Where(b => b.Use == BatchUse.Past)
        .Aggregate(Working.Empty, (w, b) => w.Given("D " + b.Batch.Code, "dry seed in the batch", b.Batch.Dry.Pounds, "lb dry", "batch " + b.Batch.Code, b.Batch.Drained ?? b.Batch.InSoak))
        .Given("p", "seed, soak and haul", (double)Case.State.Prices.SoakedSeed.Amount, "$/lb dry", "farm prices")
        .Step("C", "lost if they are thrown away", (double)PastCost.Amount, "$", "sum of D × p", Sources.Arithmetic);

    /// <summary>Weighs a season.</summary>
    /// <param name="state">The season as it stands.</param>
    /// <param name="plan">The plan in force, where there is one: when fields that still flood will be full.</param>
    public static MorningReplan Of(SeasonState state, SeasonPlan? plan)
    {
        var from = ReplanCase.Of(state, plan);
        if (from.Fields.IsEmpty) return new MorningReplan(from, [], []);
        var weighing = new Weighing(from);
        var found = ReplanSearch.Run(weighing);
        var maps = found.Select(f => ReplanSearch.Map(weighing, f.Ways)).Distinct(StringComparer.Ordinal).ToArray();
        var others = maps.Length == 1 && weighing.Live.Length > 0 ? ReplanSearch.Run(weighing, maps) : [];
        return new MorningReplan(from, Write(weighing, found), Write(weighing, others));
    }

    /// <summary>The cheapest first, and of plans that give the same batches to the same fields only the cheapest; two to four where there are so many.</summary>
    public ImmutableArray<RankedPlan> Ranked(ReplanPrices prices)
    {
        var best = Distinct(Plans, prices).Take(MostShown).ToImmutableArray();
        return best.Length > 1 ? best : [.. best, .. Distinct(Others, prices).Take(1)];
    }

    /// <summary>The letter of a plan: A is the cheapest at the farm's own prices, and stays A whatever prices are tried.</summary>
    public string LetterOf(ReplanPlan plan)
    {
        var at = lettered.IndexOf(plan);
        ArgumentOutOfRangeException.ThrowIfNegative(at, nameof(plan));
        return at < 26 ? ((char)('A' + at)).ToString() : "A" + (char)('A' + (at % 26));
    }

    private IEnumerable<RankedPlan> Distinct(ImmutableArray<ReplanPlan> plans, ReplanPrices prices) => plans
        .Select(p => new RankedPlan(p, p.Cost(prices)) { Working = ReplanWorking.Cost(Case, p, prices) })
        .OrderBy(r => r.Cost).ThenBy(r => r.Plan.WaterAge).ThenBy(r => r.Plan.BatchMap, StringComparer.Ordinal)
        .DistinctBy(r => r.Plan.BatchMap, StringComparer.Ordinal);

    private static ImmutableArray<ReplanPlan> Write(Weighing weighing, ImmutableArray<(Weights Weights, ImmutableArray<SowingWay> Ways)> found) =>
        [.. found.Select(f => ReplanWriter.Write(weighing, f.Weights, f.Ways))];
}
