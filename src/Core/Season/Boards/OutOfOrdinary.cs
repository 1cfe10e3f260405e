using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Season.Boards;

/// <summary>A step of the plan whose time has come and of which no mark says that it was done.</summary>
/// <param name="Step">The step.</param>
/// <param name="Due">When it was to be done.</param>
public sealed record OverdueStep(PlanTask Step, DateTimeOffset Due);

/// <summary>Seed that wind over the limits has blown on since it was sown.</summary>
/// <param name="Field">The field.</param>
/// <param name="SownAt">When it was sown.</param>
/// <param name="At">When the strongest wind since then blew.</param>
/// <param name="Sustained">The steady wind of that moment.</param>
/// <param name="Gust">Its gusts.</param>
public sealed record BlownOn(Field Field, DateTimeOffset SownAt, DateTimeOffset At, Speed Sustained, Speed Gust);

/// <summary>A field that waits for seed while its head check has been wet for too long.</summary>
/// <param name="Field">The field.</param>
/// <param name="FirstWater">When its head check got water.</param>
/// <param name="Age">How long ago that was.</param>
public sealed record OldWater(Field Field, DateTimeOffset FirstWater, TimeSpan Age);

/// <summary>What is not as it should be this morning. Nothing here is an order; each is something to look at.</summary>
public sealed record OutOfOrdinary
{
    /// <summary>A step is late when no mark has come this long after it.</summary>
    [Source(nameof(Sources.FarmDefault), "two hours; people mark late")]
    public static TimeSpan Grace { get; } = TimeSpan.FromHours(2);

    /// <summary>Sown seed has roots that hold after this long; until then wind can move it.</summary>
    [Source(nameof(Sources.FarmDefault), "three days")]
    public static TimeSpan Loose { get; } = TimeSpan.FromDays(3);

    /// <summary>What is broken and not mended, the newest first.</summary>
    public ImmutableArray<OpenFault> Faults { get; init; } = [];

    /// <summary>What others were told and the plan has elsewhere now.</summary>
    public ImmutableArray<ToldMoved> Moved { get; init; } = [];

    /// <summary>Steps that should have been done by now, the longest overdue first.</summary>
    public ImmutableArray<OverdueStep> Overdue { get; init; } = [];

    /// <summary>Fields to scout first, the strongest wind first.</summary>
    public ImmutableArray<BlownOn> Blown { get; init; } = [];

    /// <summary>Fields with old water and no seed yet, the oldest first.</summary>
    public ImmutableArray<OldWater> Old { get; init; } = [];

    /// <summary>Marks that do not agree.</summary>
    public ImmutableArray<Doubt> Doubts { get; init; } = [];

    /// <summary>Nothing at all.</summary>
    public bool IsEmpty => Faults.IsEmpty && Moved.IsEmpty && Overdue.IsEmpty && Blown.IsEmpty && Old.IsEmpty && Doubts.IsEmpty;

    /// <summary>What is out of the ordinary at the moment of the book.</summary>
    /// <param name="book">The season as it stands.</param>
    /// <param name="plan">The plan in force, if there is one.</param>
    public static OutOfOrdinary Of(SeasonBook book, SeasonPlan? plan) => new()
    {
        Faults = book.Faults,
        Moved = plan is null ? [] : PlanLedger.Moves(book, plan),
        Overdue = plan is null ? [] : OverdueOf(book, plan),
        Blown = BlownOf(book.State),
        Old = OldOf(book.State),
        Doubts = book.Doubts,
    };

    private static ImmutableArray<OverdueStep> OverdueOf(SeasonBook book, SeasonPlan plan) =>
    [
        .. plan.Tasks.Where(t => !t.Fixed).Select(t => (Step: t, Due: DueOf(t))).Where(t => t.Due is { } due && book.Now - due > Grace && !Done(book, t.Step))
            .Select(t => new OverdueStep(t.Step, t.Due!.Value)).OrderBy(t => t.Due).ThenBy(t => t.Step.Field, StringComparer.Ordinal),
    ];

    // What begins is late from its start, what finishes from its end; a call or an order is a decision, and shown there.
    private static DateTimeOffset? DueOf(PlanTask task) => task.Kind switch
    {
        PlanTaskKind.Fill or PlanTaskKind.Soak or PlanTaskKind.Drain => task.Start,
        PlanTaskKind.Ground or PlanTaskKind.Sow => task.End,
        _ => null,
    };

    private static bool Done(SeasonBook book, PlanTask task)
    {
        var season = book.State.Season(task.Field);
        return task.Kind switch
        {
            PlanTaskKind.Fill => season.Stage >= FieldStage.Flooding,
            PlanTaskKind.Ground => season.Stage >= Reached(task.Implement),
            PlanTaskKind.Sow => season.Stage == FieldStage.Sown,
            PlanTaskKind.Soak => season.Stage == FieldStage.Sown || Holds(book, task, BatchPlace.InSoak),
            PlanTaskKind.Drain => season.Stage == FieldStage.Sown || Holds(book, task, BatchPlace.Drained),
            _ => true,
        };
    }

    // The plan's own name of a new batch is not what people call it, so any seed of that field counts.
    private static bool Holds(SeasonBook book, PlanTask task, BatchPlace least) => book.Batches.Any(b => b.Place >= least
        && (b.Code == task.Batch || (b.Batch?.MeantFor.Contains(task.Field, StringComparer.Ordinal) ?? false)));

    private static FieldStage Reached(GroundWork? work) => work switch
    {
        GroundWork.Chisel => FieldStage.Chiselled,
        GroundWork.Disc => FieldStage.Disced,
        GroundWork.Plane => FieldStage.Planed,
        GroundWork.Aqua => FieldStage.AquaOn,
        _ => FieldStage.Rolled,
    };

    private static ImmutableArray<BlownOn> BlownOf(SeasonState state)
    {
        var plane = state.Aeroplanes.FirstOrDefault() ?? new Flight.Aeroplane(string.Empty);
        var blown = ImmutableArray.CreateBuilder<BlownOn>();
        foreach (var season in state.Fields.Where(f => f.SownAt is { } sown && state.Now - sown < Loose && sown <= state.Now))
        {
            var sown = season.SownAt!.Value;
            var worst = state.Wind.Where(w => w.Issued is null && w.At >= sown && w.At <= state.Now && FlyingWindows.TooWindy(w, plane)).MaxBy(w => w.Gust);
            if (worst is not null) blown.Add(new BlownOn(state.Farm.Field(season.Code), sown, worst.At, worst.Sustained, worst.Gust));
        }

        return [.. blown.OrderByDescending(b => b.Gust).ThenBy(b => b.SownAt).ThenBy(b => b.Field.Code, StringComparer.Ordinal)];
    }

    private static ImmutableArray<OldWater> OldOf(SeasonState state) =>
    [
        .. state.Fields.Where(f => f is { FirstWater: not null, Stage: FieldStage.Flooding or FieldStage.Full })
            .Select(f => new OldWater(state.Farm.Field(f.Code), f.FirstWater!.Value, state.Now - f.FirstWater.Value))
            .Where(o => o.Age > state.Prices.HeadAgeFree).OrderByDescending(o => o.Age).ThenBy(o => o.Field.Code, StringComparer.Ordinal),
    ];
}
