using Watersown.Schedule;
using Watersown.Schedule.Replan;
using Watersown.Schedule.Sheets;
using Watersown.Water;
using Watersown.Wording;

namespace Watersown.Season;

/// <summary>Texts for one person whose part a choice changes. Nothing is sent by itself.</summary>
/// <param name="Message">Name of the message, the same through all its states.</param>
/// <param name="Name">Whom it is for; the role in words where nobody is named.</param>
/// <param name="Role">What they do.</param>
/// <param name="Texts">Each whole in itself, within what a telephone sends as one.</param>
/// <param name="Steps">The steps that the texts tell of.</param>
public sealed record ReplanDraft(string Message, string Name, CrewRole Role, ImmutableArray<CrewMessage> Texts, ImmutableArray<ToldStep> Steps)
{
    /// <summary>The farm's own word for what they do.</summary>
    public required string RoleWord { get; init; }

    public string? Phone { get; init; }

    /// <summary>Steps of which they were told something else.</summary>
    public ImmutableArray<ToldMoved> Moved { get; init; } = [];

    /// <summary>They were told just this.</summary>
    public bool Known { get; init; }
}

/// <summary>Whom a choice for the coming mornings changes, and what to tell them.</summary>
public static class ReplanDrafts
{
    private static readonly ImmutableArray<CrewRole> Roles = [CrewRole.Warehouse, CrewRole.Dispatcher, CrewRole.Pilot, CrewRole.Loader, CrewRole.Irrigator];

    /// <summary>One for each person whose steps are not as they were last told; the last who were told just this stay in the list as known.</summary>
    /// <param name="book">The season, with what people were told.</param>
    /// <param name="plan">The plan in force.</param>
    /// <param name="replan">The morning's case.</param>
    /// <param name="choice">The plan chosen, or about to be.</param>
    public static ImmutableArray<ReplanDraft> Of(SeasonBook book, SeasonPlan plan, MorningReplan replan, ReplanPlan choice)
    {
        var laid = ReplanLaying.Alone(plan, replan, choice);
        var told = PlanLedger.ToldSteps(book);
        return [.. Roles.SelectMany(role => People(laid.State, role).Select(p => Draft(laid, replan, role, p, told))).OfType<ReplanDraft>()];
    }

    /// <summary>What people were told otherwise than a choice has it; no words are made for it.</summary>
    [Source(nameof(Sources.FarmRecord), "what was told, beside the steps of the choice")]
    public static ImmutableArray<ToldMoved> Moves(SeasonBook book, SeasonPlan plan, MorningReplan replan, ReplanPlan choice)
    {
        var told = PlanLedger.ToldSteps(book);
        if (told.IsEmpty) return [];
        var laid = ReplanLaying.Alone(plan, replan, choice);
        return [.. Roles.SelectMany(role => People(laid.State, role).SelectMany(p => Part(laid, replan, role, p, told).Moved))];
    }

    private static ImmutableArray<Person> People(SeasonState state, CrewRole role)
    {
        var people = CrewRoles.Of(state, role);
        if (!people.IsEmpty || role == CrewRole.Loader) return people;
        var name = Messages.NameOf(role, state.Farm.Language);
        return [new Person(name, name) { Speaks = state.Farm.Language }];
    }

    /// <summary>The steps of a choice that are somebody's, what they were told of them, and what of that has moved.</summary>
    private static (ImmutableArray<ToldStep> Steps, ImmutableArray<ToldOf> Mine, ImmutableArray<ToldMoved> Moved) Part(SeasonPlan laid, MorningReplan replan, CrewRole role, Person person, ImmutableArray<ToldOf> told)
    {
        ImmutableArray<ToldStep> steps = [.. laid.Tasks.Where(t => !t.Fixed && PlanChanges.Concerns(t.Kind, role)).Select(t => new ToldStep(t.Field, t.Kind, t.Start))];
        var fields = replan.Case.Fields.Select(f => f.Code).ToHashSet(StringComparer.OrdinalIgnoreCase);
        ImmutableArray<ToldOf> mine = [.. told.Where(t => string.Equals(t.Person, person.Name, StringComparison.OrdinalIgnoreCase) && fields.Contains(t.Step.Field) && PlanChanges.Concerns(t.Step.Task, role))];
        ImmutableArray<ToldMoved> moved = [.. mine.Where(t => t.Step.Start > laid.State.Now).Select(t => new ToldMoved(t, Now(steps, t.Step))).Where(m => m.Later is not { } later || later.Duration() > PlanChanges.Same)];
        return (steps, mine, moved);
    }

    private static ReplanDraft? Draft(SeasonPlan laid, MorningReplan replan, CrewRole role, Person person, ImmutableArray<ToldOf> told)
    {
        var (steps, mine, moved) = Part(laid, replan, role, person, told);
        if (steps.IsEmpty && moved.IsEmpty) return null;
        var known = moved.IsEmpty && steps.All(s => mine.Any(t => Is(t.Step, s)));
        ImmutableArray<CrewMessage> texts = [.. Texts(laid, replan, role, new Telling(laid.State, person.Speaks)).Select(t => new CrewMessage(role, person.Name, person.Speaks, t) { Phone = person.Phone })];
        if (texts.IsEmpty) return null;
        var day = FarmTime.Day(laid.State, laid.State.Now).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        return new ReplanDraft("mornings/" + day + "/" + person.Name, person.Name, role, texts, steps) { RoleWord = person.Role, Phone = person.Phone, Moved = moved, Known = known };
    }

    private static DateTimeOffset? Now(ImmutableArray<ToldStep> steps, ToldStep told) => steps.Where(s => Is(s, told)).Select(s => (DateTimeOffset?)s.Start).FirstOrDefault();

    private static bool Is(ToldStep one, ToldStep other) => one.Task == other.Task && string.Equals(one.Field, other.Field, StringComparison.OrdinalIgnoreCase);

    private static ImmutableArray<string> Texts(SeasonPlan laid, MorningReplan replan, CrewRole role, Telling tell)
    {
        var today = replan.Case.Today;
        return role switch
        {
            CrewRole.Warehouse => [.. Drains(laid, tell), .. WarehouseTexts.Of(laid, today, tell)],
            CrewRole.Dispatcher => [.. Off(today, tell), .. FlightTexts.ToDispatcher(laid, today, tell)],
            CrewRole.Pilot => [.. Off(today, tell), .. FlightTexts.ToPilot(laid, today, tell)],
            CrewRole.Loader => [.. Off(today, tell), .. Loads(laid, tell)],
            CrewRole.Irrigator => [.. Shallow(laid, tell)],
            CrewRole.Other or CrewRole.Grower or CrewRole.District or CrewRole.Landlord => [],
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static ImmutableArray<string> Off(DateOnly day, Telling tell) => [ShortText.One(Template.Fill(tell.Words.Replan.TextOff, ("day", tell.TextDay(day))))];

    /// <summary>Seed that is under water, with the hour it is drained for its morning.</summary>
    private static ImmutableArray<string> Drains(SeasonPlan laid, Telling tell)
    {
        var under = laid.Tasks.Where(t => t is { Kind: PlanTaskKind.Drain, Fixed: false } && laid.State.Batches.Any(b => b.Code == t.Batch && b.InSoak <= laid.State.Now)).GroupBy(t => (t.Batch, t.Start));
        var items = under.Select(g => Template.Fill(tell.Words.Replan.TextDrain, ("batch", g.Key.Batch!), ("when", tell.TextMoment(g.Key.Start)), ("fields", string.Join('/', g.Select(t => t.Field)))));
        return ShortText.Spread(tell.Words.Replan.TextDrainHead, items, ", ", ".");
    }

    private static ImmutableArray<string> Loads(SeasonPlan laid, Telling tell) => ShortText.Spread(tell.Words.Replan.TextSowHead, Sowings(laid, tell), ", ", ".");

    private static ImmutableArray<string> Shallow(SeasonPlan laid, Telling tell) =>
        ShortText.Spread(Template.Fill(tell.Words.Replan.TextShallowHead, ("depth", tell.Depth(WaterTargets.Sowing))), Sowings(laid, tell), ", ", tell.Words.Replan.TextShallowTail);

    private static IEnumerable<string> Sowings(SeasonPlan laid, Telling tell) =>
        laid.Tasks.Where(t => t.Kind == PlanTaskKind.Sow).Select(t => t.Field + " " + tell.TextMoment(t.Start));
}
