using Watersown.Schedule;

namespace Watersown.Season;

/// <summary>A step that somebody was told of, as it was told; no later mark changes it.</summary>
/// <param name="Person">Who was told.</param>
/// <param name="Step">The step, with the start that was said.</param>
/// <param name="Message">The message it was in.</param>
/// <param name="State">How far that message has come.</param>
/// <param name="At">When it was told.</param>
public sealed record ToldOf(string Person, ToldStep Step, string Message, ToldState State, DateTimeOffset At)
{
    public string? Role { get; init; }

    /// <summary>Number of the plan it came from.</summary>
    public int? Plan { get; init; }
}

/// <summary>A told step that a new plan puts elsewhere.</summary>
/// <param name="Told">What was said.</param>
/// <param name="Start">When the plan has it; none where it is no step of the plan any more.</param>
public sealed record ToldMoved(ToldOf Told, DateTimeOffset? Start)
{
    /// <summary>How much later; earlier below zero.</summary>
    public TimeSpan? Later => Start - Told.Step.Start;
}

/// <summary>
/// What a plan was made from, and what others were told of it. A late mark changes the season, never what was said: a plan
/// that moves something said has to show it.
/// </summary>
public static class PlanLedger
{
    /// <summary>A step within this of what was said has not moved.</summary>
    [Source(nameof(Sources.FarmDefault), "a quarter of an hour is the same hour to a crew")]
    public static TimeSpan Same => PlanChanges.Same;

    /// <summary>The season as it was known when a plan was made: marks put down later are not in it.</summary>
    public static SeasonBook KnownAt(SeasonState ground, Logbook log, DateTimeOffset madeAt) => SeasonFold.Fold(ground, log.KnownAt(madeAt), madeAt);

    /// <summary>Marks put down since a plan was made, those that tell of the time before it among them.</summary>
    public static ImmutableArray<Mark> Since(Logbook log, DateTimeOffset madeAt) => [.. log.Marks.Where(m => m.Entered > madeAt).Order(MarkOrder.Entered)];

    /// <summary>Marks that tell of the time before a plan and came too late for it.</summary>
    public static ImmutableArray<Mark> TooLateFor(Logbook log, DateTimeOffset madeAt) => [.. Since(log, madeAt).Where(m => m.Happened <= madeAt)];

    /// <summary>
    /// The steps that people were last told of, one for each person, field and step. Somebody who was not reached was not
    /// told; an answer without steps of its own answers for the steps of its message.
    /// </summary>
    public static ImmutableArray<ToldOf> ToldSteps(SeasonBook book)
    {
        var last = new SortedDictionary<string, ToldOf>(StringComparer.Ordinal);
        var told = book.Messages.Where(m => m.Last.State != ToldState.NotReached).SelectMany(Steps).OrderBy(t => t.At).ThenBy(t => t.Message, StringComparer.Ordinal);
        foreach (var step in told) last[step.Person + "\n" + step.Step.Field.ToUpperInvariant() + "\n" + TaskWords.Of(step.Step.Task)] = step;
        return [.. last.Values.OrderBy(t => t.Step.Start).ThenBy(t => t.Step.Field, StringComparer.Ordinal).ThenBy(t => t.Person, StringComparer.Ordinal)];
    }

    /// <summary>Steps still ahead that a plan puts elsewhere than people were told.</summary>
    public static ImmutableArray<ToldMoved> Moves(SeasonBook book, SeasonPlan plan) =>
        [.. ToldSteps(book).Where(t => t.Step.Start > book.Now).Select(t => new ToldMoved(t, Nearest(plan, t.Step))).Where(m => m.Later is not { } later || later.Duration() > Same)];

    private static IEnumerable<ToldOf> Steps(MessageBook message)
    {
        // The last words that named steps are what was said; the newest word is how it stands.
        var said = message.Story.LastOrDefault(m => m.Fact is Told { State: not ToldState.NotReached, Steps.IsEmpty: false });
        if (said is not { Fact: Told told }) return [];
        return told.Steps.Select(s => new ToldOf(told.Person, s, message.Message, message.Last.State, said.Happened) { Role = told.Role, Plan = told.Plan });
    }

    /// <summary>The step of the plan nearest to what was said: a field may be sown in parts.</summary>
    internal static DateTimeOffset? Nearest(SeasonPlan plan, ToldStep step) => plan.Tasks
        .Where(t => t.Kind == step.Task && string.Equals(t.Field, step.Field, StringComparison.OrdinalIgnoreCase))
        .OrderBy(t => (t.Start - step.Start).Duration()).ThenBy(t => t.Start)
        .Select(t => (DateTimeOffset?)t.Start).FirstOrDefault();
}
