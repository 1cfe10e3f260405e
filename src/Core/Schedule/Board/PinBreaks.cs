namespace Watersown.Schedule.Board;

/// <summary>
/// What a step of the plan breaks when a person puts it to another time, from the plan as it is and what is known now. The
/// plan is worked out anew after a pin; this only says beforehand what will have to give way.
/// </summary>
public static partial class PinBreaks
{
    /// <summary>Flow that is worth a word.</summary>
    private static readonly FlowRate least = FlowRate.FromCubicFeetPerSecond(0.05);

    /// <summary>What breaks where a step begins at another moment, in the order of the season; nothing where nothing known stands against it.</summary>
    /// <param name="plan">The plan as it is.</param>
    /// <param name="state">The farm as it stands at the moment of reading.</param>
    /// <param name="task">A fill or a sowing of the plan.</param>
    /// <param name="start">The moment.</param>
    /// <param name="told">Who was told of the step.</param>
    [Source(nameof(Sources.Arithmetic), "the moment against light, slot, wind, water, seed, ground and notice")]
    public static ImmutableArray<PinBreak> Of(SeasonPlan plan, SeasonState state, PlanTask task, DateTimeOffset start, ToldTo? told)
    {
        var breaks = ImmutableArray.CreateBuilder<PinBreak>();
        if (start < state.Now) breaks.Add(new PinBreak(PinBreakKind.Past) { By = state.Now - start });
        breaks.AddRange(task.Kind == PlanTaskKind.Fill ? Fill(plan, state, task, start) : Sow(plan, state, task, start));
        if (told is { } to && to.Start != start) breaks.Add(new PinBreak(PinBreakKind.Told) { At = to.Start, Others = [to.Who] });
        return breaks.ToImmutable();
    }

    private static IEnumerable<PinBreak> Sow(SeasonPlan plan, SeasonState state, PlanTask task, DateTimeOffset start)
    {
        if (Full(plan, state, task.Field) is { } full && full > start) yield return Missing(PinBreakKind.Water, full, start, "full", "plan");
        foreach (var seed in Seed(state, task, start)) yield return seed;
        foreach (var air in Air(plan, state, task, start)) yield return air;
        if (HeadAge(state, Wet(plan, state, task.Field), start) is { } head) yield return head;
    }

    private static IEnumerable<PinBreak> Fill(SeasonPlan plan, SeasonState state, PlanTask task, DateTimeOffset start)
    {
        var ground = plan.Tasks.Where(t => t.Field == task.Field && t.Kind == PlanTaskKind.Ground).Select(t => (DateTimeOffset?)t.End).Max();
        if (Later(ground, state.Season(task.Field).FitFrom) is { } fit && fit > start) yield return Missing(PinBreakKind.Ground, fit, start, "ground done", "plan");
        foreach (var water in Water(plan, state, task, start)) yield return water;
        if (plan.Task(task.Field, PlanTaskKind.Sow) is not { } sow) yield break;
        var full = start + (task.End - task.Start);
        if (full > sow.Start) yield return Missing(PinBreakKind.FullLate, full, sow.Start, "full", "pin");
        if (HeadAge(state, start, sow.Start) is { } head) yield return head;
    }

    /// <summary>Sources that are shorter than before by the fill at its new time, and those whose change can no longer be asked for.</summary>
    private static IEnumerable<PinBreak> Water(SeasonPlan plan, SeasonState state, PlanTask task, DateTimeOffset start)
    {
        var end = start + (task.End - task.Start);
        if (end <= plan.MadeAt) yield break;
        var span = new BoardSpan(BoardZoom.Season, start > plan.MadeAt ? start : plan.MadeAt, end);
        var moved = plan with { Tasks = plan.Tasks.RemoveAll(t => t.Field == task.Field && t.Kind == task.Kind && t.Start == task.Start).Add(task with { Start = start, End = end }) };
        foreach (var (before, after) in FlowLanes.Of(plan, span).Zip(FlowLanes.Of(moved, span)))
        {
            if (Worst(before, after) is not { } worst) continue;
            var (was, now) = (before.At(worst)!.Short, after.At(worst)!.Short);
            yield return new PinBreak(PinBreakKind.Flow)
            {
                At = worst,
                Flow = now - was,
                Others = [after.Source.Code],
                Working = Working.Empty
                    .Given("B", "short then without the move", was.CubicFeetPerSecond, "cfs", "plan", plan.MadeAt)
                    .Given("A", "short then with it", now.CubicFeetPerSecond, "cfs", "plan with the step moved")
                    .Step("F", "more to be found", (now - was).CubicFeetPerSecond, "cfs", "A − B", Sources.Arithmetic),
            };
            var ask = start - after.Source.Notice;
            if (WaterOrders.IsOrdered(after.Source) && ask < state.Now)
                yield return new PinBreak(PinBreakKind.Notice) { By = state.Now - ask, At = ask, Others = [after.Source.Code], Working = Late(start, after.Source.Notice, state.Now) };
        }
    }

    /// <summary>The moment at which a source becomes shorter by the most; none where it does not by anything worth a word.</summary>
    private static DateTimeOffset? Worst(FlowLane before, FlowLane after)
    {
        var moments = before.Steps.Concat(after.Steps).Select(s => s.From).Where(t => before.At(t) is not null && after.At(t) is not null).Distinct().Order()
            .Select(t => (At: t, More: after.At(t)!.Short - before.At(t)!.Short)).Where(m => m.More > least).ToImmutableArray();
        return moments.IsEmpty ? null : moments.MaxBy(m => m.More).At;
    }

    private static Working Late(DateTimeOffset start, TimeSpan notice, DateTimeOffset now) => Working.Empty
        .Given("S", "pinned for", Datum.Moment(start), string.Empty, "pin").Given("N", "notice", notice.TotalHours, "h", "source")
        .Step("L", "late by", (now - (start - notice)).TotalHours, "h", "now − (S − N)", Sources.Arithmetic);

    private static PinBreak Missing(PinBreakKind kind, DateTimeOffset there, DateTimeOffset wanted, string what, string from) => new(kind)
    {
        At = there,
        By = there - wanted,
        Working = Working.Empty.Given("T", what, Datum.Moment(there), string.Empty, from).Given("S", "wanted", Datum.Moment(wanted), string.Empty, "pin")
            .Step("L", "too early by", (there - wanted).TotalHours, "h", "T − S", Sources.Arithmetic),
    };

    private static PinBreak? HeadAge(SeasonState state, DateTimeOffset? wet, DateTimeOffset sown) => wet is { } first && sown - first > state.Prices.HeadAgeFree
        ? new PinBreak(PinBreakKind.HeadAge)
        {
            By = sown - first,
            Working = Working.Empty.Given("W", "first water", Datum.Moment(first), string.Empty, "plan").Given("S", "sown", Datum.Moment(sown), string.Empty, "plan")
                .Step("A", "wet", (sown - first).TotalDays, "days", "S − W", Sources.Arithmetic),
        }
        : null;

    private static DateTimeOffset? Full(SeasonPlan plan, SeasonState state, string field) => state.Season(field).FullSince ?? plan.Task(field, PlanTaskKind.Fill)?.End;

    private static DateTimeOffset? Wet(SeasonPlan plan, SeasonState state, string field) => plan.Task(field, PlanTaskKind.Fill) is { Fixed: false } fill ? fill.Start : state.Season(field).FirstWater;

    private static DateTimeOffset? Later(DateTimeOffset? a, DateTimeOffset? b) => a is null || b > a ? b : a;
}
