using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Schedule;

/// <summary>One entry of the season's calendar.</summary>
/// <param name="Uid">Stays the same for the same step of the same field from plan to plan, so that a calendar read in again moves its entry.</param>
/// <param name="Start">When it starts.</param>
/// <param name="End">When it ends.</param>
/// <param name="Title">What stands in the calendar.</param>
/// <param name="Text">What stands behind it.</param>
public sealed record CalendarEntry(string Uid, DateTimeOffset Start, DateTimeOffset End, string Title, string Text)
{
    /// <summary>How long before <see cref="End"/> it rings; none stays silent.</summary>
    public TimeSpan? Rings { get; init; }

    public required string Category { get; init; }
}

/// <summary>A plan as a calendar: steps that bind water, seed and aeroplane, and every last safe moment.</summary>
public static class SeasonCalendar
{
    /// <summary>A decision stands in the calendar for this long, and ends at its last safe moment.</summary>
    [Source(nameof(Sources.FarmDefault), "a quarter of an hour")]
    public static TimeSpan DecisionSpan { get; } = TimeSpan.FromMinutes(15);

    /// <summary>A decision rings this long before its last safe moment.</summary>
    [Source(nameof(Sources.FarmDefault), "one hour")]
    public static TimeSpan RingsBefore { get; } = TimeSpan.FromHours(1);

    /// <summary>The entries of a plan, in order of time.</summary>
    public static ImmutableArray<CalendarEntry> Of(SeasonPlan plan, Language language)
    {
        var tell = new Telling(plan.State, language);
        var domain = PageParts.Slug(plan.State.Farm.Name) + "-" + plan.State.Farm.SeasonYear.ToString(System.Globalization.CultureInfo.InvariantCulture) + ".watersown";
        var entries = plan.Tasks.Where(t => t.Kind is PlanTaskKind.Fill or PlanTaskKind.Soak or PlanTaskKind.Drain or PlanTaskKind.Haul or PlanTaskKind.Sow).Select(t => Step(plan, t, tell))
            .Concat(plan.Decisions.Select(d => Decided(plan, d, tell)))
            .OrderBy(e => e.Start).ThenBy(e => e.Uid, StringComparer.Ordinal).ThenBy(e => e.Title, StringComparer.Ordinal).ToList();

        // The first, second … of one sort for one field in order of time.
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        return [.. entries.Select(e => e with { Uid = e.Uid + "-" + Telling.Count(seen[e.Uid] = seen.GetValueOrDefault(e.Uid) + 1) + "@" + domain })];
    }

    public static string NameOf(SeasonPlan plan, Language language) => Template.Fill(Words.In(language).Calendar.Name,
        ("farm", plan.State.Farm.Name), ("year", plan.State.Farm.SeasonYear.ToString(System.Globalization.CultureInfo.InvariantCulture)));

    private static CalendarEntry Step(SeasonPlan plan, PlanTask task, Telling tell)
    {
        var words = tell.Words.Calendar;
        var (sort, title) = task.Kind switch
        {
            PlanTaskKind.Fill => ("fill", words.Fill),
            PlanTaskKind.Soak => ("soak", words.Soak),
            PlanTaskKind.Drain => ("drain", words.Drain),
            PlanTaskKind.Haul => ("haul", words.Haul),
            PlanTaskKind.Sow => ("sow", words.Sow),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        var said = new List<string>();
        if (task is { Dry: { } dry, Soaked: { } soaked } && task.Kind != PlanTaskKind.Fill)
            said.Add(Template.Fill(words.Weight, ("dry", Telling.Count(tell.Whole(dry))), ("wet", Telling.Count(tell.Whole(soaked))), ("unit", tell.MassUnit)));
        if (task is { Kind: PlanTaskKind.Fill, Flow: { } flow }) said.Add(Template.Fill(words.Flow, ("flow", tell.Flow(flow))));
        said.Add(Made(plan, tell));
        return new CalendarEntry(sort + "-" + PageParts.Slug(task.Field), task.Start, task.End, Template.Fill(title, ("field", Telling.Name(plan.State.Farm.Field(task.Field)))), string.Join(' ', said)) { Category = sort };
    }

    private static CalendarEntry Decided(SeasonPlan plan, Decision decision, Telling tell)
    {
        var words = tell.Words.Calendar;
        var field = plan.State.Farm.Fields.FirstOrDefault(f => decision.Fields.Contains(f.Code, StringComparer.Ordinal))?.Code;
        ImmutableArray<string> said = [decision.CostOfWaiting.TrimEnd('.') + ".", Template.Fill(words.Tell, ("who", decision.Who)), Made(plan, tell)];
        return new CalendarEntry("decide-" + decision.Kind + (field is null ? string.Empty : "-" + PageParts.Slug(field)), decision.By - DecisionSpan, decision.By,
            Template.Fill(words.LastMoment, ("what", decision.What)), string.Join(' ', said))
        {
            Category = "decision",
            Rings = decision.Kind == "dump-seed" ? null : RingsBefore, // nothing is lost by letting lost seed wait
        };
    }

    private static string Made(SeasonPlan plan, Telling tell) =>
        Template.Fill(tell.Words.Calendar.Plan, ("plan", Telling.Count(plan.Number)), ("when", tell.Moment(plan.MadeAt)));
}
