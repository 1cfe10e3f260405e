using Watersown.Schedule;

namespace Watersown.Season.Plans;

/// <summary>A field as it was known to be when a plan was made, and as it is known now to have been then.</summary>
public sealed record FieldHindsight(string Field, FieldSeason KnownThen, FieldSeason KnownNow);

/// <summary>A step that somebody was told of out of one plan, and where another plan has it.</summary>
/// <param name="Told">What was said.</param>
/// <param name="Start">When the other plan has it; none where it has no such step.</param>
/// <param name="Moved">The other plan puts it elsewhere than was said.</param>
public sealed record ToldAgainst(ToldOf Told, DateTimeOffset? Start, bool Moved);

/// <summary>
/// What was known when a plan was made, what came after, and what told of the time before it but came too late.
/// </summary>
public sealed record PlanHindsight
{
    /// <summary>When the plan was made.</summary>
    public required DateTimeOffset MadeAt { get; init; }

    /// <summary>The season as it was known then.</summary>
    public required SeasonBook Then { get; init; }

    /// <summary>Marks put down since that tell of the time since, in order of being put down.</summary>
    public required ImmutableArray<Mark> After { get; init; }

    /// <summary>Marks put down since that tell of the time before: the plan did not know of them.</summary>
    public required ImmutableArray<Mark> TooLate { get; init; }

    /// <summary>Fields that stood otherwise than was known.</summary>
    public required ImmutableArray<FieldHindsight> Fields { get; init; }

    /// <summary>Looks back at a moment.</summary>
    /// <param name="ground">The farm document.</param>
    /// <param name="log">Every mark that there is now.</param>
    /// <param name="madeAt">When the plan was made.</param>
    public static PlanHindsight Of(SeasonState ground, Logbook log, DateTimeOffset madeAt)
    {
        var then = PlanLedger.KnownAt(ground, log, madeAt);
        var now = SeasonFold.Fold(ground, log, madeAt);
        // A plan that is given its number is no news to itself.
        ImmutableArray<Mark> since = [.. PlanLedger.Since(log, madeAt).Where(m => m.Fact is not PlanIssued)];
        return new PlanHindsight
        {
            MadeAt = madeAt,
            Then = then,
            After = [.. since.Where(m => m.Happened > madeAt)],
            TooLate = [.. since.Where(m => m.Happened <= madeAt)],
            Fields = [.. then.State.Fields.Select(f => new FieldHindsight(f.Code, f, now.State.Season(f.Code))).Where(f => Differs(f.KnownThen, f.KnownNow))],
        };
    }

    /// <summary>Who was told which step of a plan, and where another plan has it.</summary>
    /// <param name="book">The season as it is known now.</param>
    /// <param name="number">Number of the plan that was told of.</param>
    /// <param name="other">The plan to hold it against.</param>
    public static ImmutableArray<ToldAgainst> ToldOf(SeasonBook book, int number, SeasonPlan other) =>
    [
        .. PlanLedger.ToldSteps(book).Where(t => t.Plan == number).Select(t =>
        {
            var start = PlanLedger.Nearest(other, t.Step);
            return new ToldAgainst(t, start, start is not { } at ? t.Step.Start > other.MadeAt : (at - t.Step.Start).Duration() > PlanLedger.Same);
        }),
    ];

    private static bool Differs(FieldSeason then, FieldSeason now) =>
        then.Stage != now.Stage || then.ChecksWet != now.ChecksWet || then.Depth != now.Depth || then.SownAt != now.SownAt || then.FullSince != now.FullSince || then.FirstWater != now.FirstWater;
}
