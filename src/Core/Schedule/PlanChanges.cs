using Watersown.Schedule.Sheets;

namespace Watersown.Schedule;

/// <summary>One step that two plans have differently.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Task">Which step.</param>
public sealed record StepChange(string Field, PlanTaskKind Task)
{
    /// <summary>The step as it was; none where it is new.</summary>
    public PlanTask? Before { get; init; }

    /// <summary>The step as it is; none where it is dropped.</summary>
    public PlanTask? After { get; init; }

    /// <summary>How much later; earlier below zero; none where it is new or dropped.</summary>
    public TimeSpan? Later => After?.Start - Before?.Start;

    /// <summary>Another batch, or another weight of it.</summary>
    public bool OtherSeed => Before is { } before && After is { } after && (!string.Equals(before.Batch, after.Batch, StringComparison.Ordinal) || before.Dry != after.Dry);

    /// <summary>Other water, tractor or aeroplane.</summary>
    public bool OtherMeans => Before is { } before && After is { } after && (!string.Equals(before.Resource, after.Resource, StringComparison.Ordinal) || before.Flow != after.Flow);
}

/// <summary>What a person's part in a plan becomes in another.</summary>
/// <param name="Person">Who.</param>
/// <param name="Role">What they do.</param>
/// <param name="Changes">Their steps that differ, in the order of their start.</param>
public sealed record PersonChange(Person Person, CrewRole Role, ImmutableArray<StepChange> Changes);

/// <summary>Compares two plans step by step, and says whom each difference concerns.</summary>
public static class PlanChanges
{
    /// <summary>A step within this of where it was has not moved.</summary>
    [Source(nameof(Sources.FarmDefault), "a quarter of an hour is the same hour to a crew")]
    public static TimeSpan Same { get; } = TimeSpan.FromMinutes(15);

    /// <summary>Every step that one plan has otherwise than the other, in the order of its earlier start.</summary>
    /// <param name="before">The plan that was.</param>
    /// <param name="after">The plan that is.</param>
    /// <param name="from">Steps that are over by then in both are left out: what has passed cannot be changed.</param>
    public static ImmutableArray<StepChange> Between(SeasonPlan before, SeasonPlan after, DateTimeOffset from)
    {
        var was = Steps(before);
        var now = Steps(after);
        return
        [
            .. was.Keys.Union(now.Keys).SelectMany(key => Pairs(key, was.GetValueOrDefault(key) ?? [], now.GetValueOrDefault(key) ?? []))
                .Where(c => c.Before?.End > from || c.After?.End > from).Where(Differs)
                .OrderBy(First).ThenBy(c => c.Field, StringComparer.Ordinal).ThenBy(c => c.Task),
        ];
    }

    /// <summary>Which of the farm's people each difference concerns; nobody is named whose part stays as it was.</summary>
    public static ImmutableArray<PersonChange> ByPerson(SeasonState state, ImmutableArray<StepChange> changes) =>
    [
        .. state.People.Select(p => (Person: p, Role: CrewRoles.Of(p)))
            .Select(p => new PersonChange(p.Person, p.Role, [.. changes.Where(c => Concerns(c.Task, p.Role))]))
            .Where(p => !p.Changes.IsEmpty),
    ];

    /// <summary>Whether a step is part of what somebody with that role does or waits for.</summary>
    public static bool Concerns(PlanTaskKind task, CrewRole role) => role switch
    {
        CrewRole.Grower => true,
        CrewRole.Warehouse => task is PlanTaskKind.CallSeed or PlanTaskKind.Soak or PlanTaskKind.Drain or PlanTaskKind.Haul,
        CrewRole.Dispatcher or CrewRole.Pilot or CrewRole.Loader => task == PlanTaskKind.Sow,
        // Fields are held shallow for sowing, so the irrigator waits for the flight too.
        CrewRole.Irrigator => task is PlanTaskKind.Fill or PlanTaskKind.Sow,
        CrewRole.District => task == PlanTaskKind.OrderWater,
        CrewRole.Landlord or CrewRole.Other => false,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static Dictionary<(string Field, PlanTaskKind Task, GroundWork? Work), List<PlanTask>> Steps(SeasonPlan plan) =>
        plan.Tasks.GroupBy(t => (t.Field, t.Kind, t.Implement)).ToDictionary(g => g.Key, g => g.OrderBy(t => t.Start).ToList());

    /// <summary>A field may be sown in parts: parts are paired in their order, what is over is new or dropped.</summary>
    private static IEnumerable<StepChange> Pairs((string Field, PlanTaskKind Task, GroundWork? Work) key, List<PlanTask> was, List<PlanTask> now)
    {
        for (var i = 0; i < Math.Max(was.Count, now.Count); i++)
            yield return new StepChange(key.Field, key.Task) { Before = was.ElementAtOrDefault(i), After = now.ElementAtOrDefault(i) };
    }

    private static bool Differs(StepChange change) => change.Later is not { } later || later.Duration() > Same || change.OtherSeed || change.OtherMeans;

    private static DateTimeOffset First(StepChange change) => change is { Before: { } before, After: { } after } ? (before.Start < after.Start ? before.Start : after.Start) : (change.Before ?? change.After)!.Start;
}
