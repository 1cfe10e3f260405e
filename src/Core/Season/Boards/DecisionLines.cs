using Watersown.Schedule;
using Watersown.Schedule.Sheets;

namespace Watersown.Season.Boards;

/// <summary>How a decision stands at the moment of reading.</summary>
public enum DecisionStanding
{
    /// <summary>There is time.</summary>
    Ahead,

    /// <summary>Its last safe moment is less than two hours away.</summary>
    Close,

    /// <summary>It was due as soon as the plan was made: it is made now, or later still.</summary>
    Due,

    /// <summary>Its last safe moment has gone by.</summary>
    Passed,
}

/// <summary>A decision of the plan with the time that is left.</summary>
/// <param name="Decision">The decision.</param>
/// <param name="Left">Time to its last safe moment; below zero once that has gone by.</param>
/// <param name="Standing">How it stands.</param>
public sealed record DecisionLine(Decision Decision, TimeSpan Left, DecisionStanding Standing);

/// <summary>What cannot be undone, by its last safe moment.</summary>
public sealed record DecisionLines
{
    /// <summary>Closer than this, a decision is said loudly.</summary>
    [Source(nameof(Sources.FarmDefault), "two hours")]
    public static TimeSpan Near { get; } = TimeSpan.FromHours(2);

    /// <summary>How far ahead the Morning page looks; the rest stands in the calendar.</summary>
    [Source(nameof(Sources.FarmDefault), "a day and a half")]
    public static TimeSpan Reach { get; } = TimeSpan.FromHours(36);

    /// <summary>The next one that can still be made in time.</summary>
    public DecisionLine? Next { get; init; }

    /// <summary>Others whose last safe moment is as close, soonest first.</summary>
    public ImmutableArray<DecisionLine> Close { get; init; } = [];

    /// <summary>Those after them within reach, soonest first.</summary>
    public ImmutableArray<DecisionLine> After { get; init; } = [];

    /// <summary>Those that were due when the plan was made and that nothing marked has settled.</summary>
    public ImmutableArray<DecisionLine> Due { get; init; } = [];

    /// <summary>Those whose last safe moment has gone by and which nothing that was marked has settled, the latest first.</summary>
    public ImmutableArray<DecisionLine> Passed { get; init; } = [];

    /// <summary>How many come after the reach.</summary>
    public int Later { get; init; }

    /// <summary>The decisions of the plan in force at the moment of the book.</summary>
    /// <param name="book">The season as it stands.</param>
    /// <param name="plan">The plan in force.</param>
    public static DecisionLines Of(SeasonBook book, SeasonPlan plan)
    {
        ImmutableArray<DecisionLine> open = [.. Open(book, plan).Where(d => !Said(book, plan, d)).Select(d => Line(d, plan.MadeAt, book.Now))];
        var ahead = open.Where(l => l.Standing is DecisionStanding.Ahead or DecisionStanding.Close).ToImmutableArray();
        var within = ahead.Where(l => l.Left <= Reach).ToImmutableArray();
        return new DecisionLines
        {
            Next = ahead.FirstOrDefault(),
            Close = [.. within.Skip(1).Where(l => l.Standing == DecisionStanding.Close)],
            After = [.. within.Skip(1).Where(l => l.Standing != DecisionStanding.Close)],
            Due = [.. open.Where(l => l.Standing == DecisionStanding.Due)],
            Passed = [.. open.Where(l => l.Standing == DecisionStanding.Passed).Reverse()],
            Later = ahead.Length - Math.Max(within.Length, Math.Min(1, ahead.Length)),
        };
    }

    /// <summary>Seed that still has to be called for is put under water by that call: one thing to decide, not two.</summary>
    private static bool Called(SeasonPlan plan, Decision decision) => decision.Kind == "put-in-soak"
        && plan.Decisions.Any(d => d.Kind == "call-soak" && d.By >= decision.By && d.Fields.SequenceEqual(decision.Fields, StringComparer.Ordinal));

    /// <summary>Decisions that nothing marked has settled, each once, by their last safe moments.</summary>
    /// <param name="book">The season as it stands.</param>
    /// <param name="plan">The plan in force.</param>
    public static IEnumerable<Decision> Open(SeasonBook book, SeasonPlan plan) => plan.Decisions.Where(d => !Settled(book, plan, d) && !Called(plan, d)).OrderBy(d => d.By);

    /// <summary>Whoever has to be told of it was told, in the words of this plan: there is nothing left to decide.</summary>
    private static bool Said(SeasonBook book, SeasonPlan plan, Decision decision) => decision.Kind switch
    {
        "call-soak" => plan.Tasks.FirstOrDefault(t => t.Kind == PlanTaskKind.Soak && decision.Fields.Contains(t.Field, StringComparer.Ordinal)) is { } soak
            && SaidWords.Told(book, CrewRole.Warehouse, decision.Fields, tell => tell.TextMoment(soak.Start)),
        "list-flight" => plan.Tasks.FirstOrDefault(t => t.Kind == PlanTaskKind.Sow && decision.Fields.Contains(t.Field, StringComparer.Ordinal)) is { } sow
            && SaidWords.Told(book, CrewRole.Dispatcher, decision.Fields, tell => tell.TextDay(tell.Day(sow.Start))),
        "order-water" or "cut-water" => WaterSheets.Changes(plan).FirstOrDefault(c => c.SendBy == decision.By && decision.What.Contains(" " + c.Source.Code + " ", StringComparison.Ordinal)) is { } change
            && SaidWords.Told(book, CrewRole.District, [change.Source.Code], tell => tell.TextMoment(change.At)),
        _ => false,
    };

    private static DecisionLine Line(Decision decision, DateTimeOffset made, DateTimeOffset now)
    {
        var left = decision.By - now;
        return new DecisionLine(decision, left, decision.By <= made ? DecisionStanding.Due : left < TimeSpan.Zero ? DecisionStanding.Passed : left <= Near ? DecisionStanding.Close : DecisionStanding.Ahead);
    }

    /// <summary>What was marked since the plan was made has settled it: seed that is off the water needs no more deciding.</summary>
    private static bool Settled(SeasonBook book, SeasonPlan plan, Decision decision)
    {
        var batches = plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow && t.Batch is not null && decision.Fields.Contains(t.Field, StringComparer.Ordinal)).Select(t => t.Batch!).Distinct(StringComparer.Ordinal).ToImmutableArray();
        return decision.Kind switch
        {
            "drain" => batches.Length > 0 && batches.All(b => book.Batch(b)?.Place is BatchPlace.Drained or BatchPlace.Sown or BatchPlace.Dumped),
            "put-in-soak" or "call-soak" => batches.Length > 0 && batches.All(b => book.Batch(b)?.Place is BatchPlace.InSoak or BatchPlace.Drained or BatchPlace.Sown or BatchPlace.Dumped),
            "dump-seed" => decision.Fields.Length > 0 && book.Batches.Where(b => b.Batch is { } seed && seed.MeantFor.Intersect(decision.Fields, StringComparer.Ordinal).Any()).All(b => b.Place is BatchPlace.Sown or BatchPlace.Dumped),
            "list-flight" => decision.Fields.All(f => book.State.Fields.Any(s => s.Code == f && s.Stage == FieldStage.Sown)),
            _ => false,
        };
    }
}
