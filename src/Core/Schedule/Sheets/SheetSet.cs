using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Which sheets are wanted; all of them where nothing is said.</summary>
public sealed record SheetChoice
{
    /// <summary>The day; none for the plan's own, with every flight still to come.</summary>
    public DateOnly? Day { get; init; }

    /// <summary>Only the flights of one field, by code.</summary>
    public string? Field { get; init; }

    /// <summary>Only what one person needs, by name.</summary>
    public string? Person { get; init; }

    /// <summary>In this language, whatever people speak.</summary>
    public Language? Language { get; init; }
}

/// <summary>The sheets and texts of one printing.</summary>
/// <param name="Day">The day they are for.</param>
/// <param name="Pages">Their keys differ from one another.</param>
/// <param name="Texts">In the order of the crew.</param>
public sealed record SheetSet(DateOnly Day, ImmutableArray<SheetPage> Pages, ImmutableArray<CrewMessage> Texts)
{
    /// <summary>Chooses from a plan; every fault of the choice at once.</summary>
    public static Outcome<SheetSet> Of(SeasonPlan plan, SheetChoice choice)
    {
        var day = choice.Day ?? FarmTime.Day(plan.State, plan.State.Now);
        var problems = Faults(plan.State, choice);
        if (!problems.IsEmpty) return Outcome<SheetSet>.Refuse(problems);
        var person = choice.Person is { } name ? Named(plan.State, name) : null;
        ImmutableArray<SheetPage> pages = [.. Chosen(plan, choice, day, person)];
        ImmutableArray<CrewMessage> texts = choice.Field is null ? [.. Messages.Of(plan, day).Where(t => person is null || t.Name == person.Name)] : [];
        if (!pages.IsEmpty || !texts.IsEmpty) return Outcome<SheetSet>.Of(new SheetSet(day, Distinct(pages), texts));
        return Outcome<SheetSet>.Refuse(person is not null
            ? SheetsProblems.NothingForPerson.At("--person", ("value", person.Name), ("role", person.Role))
            : NoFlight(plan, choice, day));
    }

    /// <summary>What is wrong with a choice before there is any plan: every fault at once.</summary>
    public static ImmutableArray<Problem> Faults(SeasonState state, SheetChoice choice) => [.. FaultsOf(state, choice)];

    private static IEnumerable<Problem> FaultsOf(SeasonState state, SheetChoice choice)
    {
        var first = FarmTime.Day(state, state.Now);
        var day = choice.Day ?? first;
        if (choice.Field is { } code && state.Farm.Fields.All(f => f.Code != code))
            yield return SheetsProblems.UnknownField.At("--field", ("value", code), ("known", string.Join(", ", state.Farm.Fields.Select(f => f.Code))));
        if (choice.Person is { } name && Named(state, name) is null)
            yield return SheetsProblems.UnknownPerson.At("--person", ("value", name), ("known", string.Join(", ", state.People.Select(p => p.Name))));
        if (day < first || day > state.Horizon)
            yield return SheetsProblems.DayOutsidePlan.At("--day", ("value", PageParts.DaySlug(day)), ("first", PageParts.DaySlug(first)), ("last", PageParts.DaySlug(state.Horizon)));
    }

    private static Problem NoFlight(SeasonPlan plan, SheetChoice choice, DateOnly day)
    {
        var days = FlightSheets.Of(plan, f => choice.Field is null || f.Field == choice.Field).Select(f => PageParts.DaySlug(FarmTime.Day(plan.State, f.From))).Distinct(StringComparer.Ordinal).ToList();
        var asked = choice.Field is { } code ? code + (choice.Day is null ? string.Empty : " " + PageParts.DaySlug(day)) : PageParts.DaySlug(day);
        return SheetsProblems.NoFlight.At("--field", ("value", asked), ("known", days.Count == 0 ? "–" : string.Join(", ", days)));
    }

    private static Person? Named(SeasonState state, string name) =>
        state.People.FirstOrDefault(p => string.Equals(p.Name, name, StringComparison.OrdinalIgnoreCase));

    private static IEnumerable<SheetPage> Chosen(SeasonPlan plan, SheetChoice choice, DateOnly day, Person? person)
    {
        CrewRole? only = person is null ? null : CrewRoles.Of(person);
        bool Wanted(params ReadOnlySpan<CrewRole> roles) => only is not { } role || role == CrewRole.Grower || roles.Contains(role);
        ImmutableArray<Language> For(params ReadOnlySpan<CrewRole> roles) => Languages(plan, choice, person, roles);

        if (choice.Field is null && Wanted())
        {
            foreach (var page in For(CrewRole.Grower).SelectMany(language => DayPage.Pages(plan, DaySheets.Of(plan, day), language))) yield return page;
        }

        if (Wanted(CrewRole.Pilot, CrewRole.Loader, CrewRole.Dispatcher))
        {
            var flights = FlightSheets.Of(plan, f => (choice.Field is null || f.Field == choice.Field) && (choice.Day is null || FarmTime.Day(plan.State, f.Start) == day));
            foreach (var flight in flights)
            {
                foreach (var language in For(CrewRole.Pilot, CrewRole.Loader)) yield return FlightPage.Of(plan, flight, language);
            }

            foreach (var plane in plan.State.Aeroplanes.Where(_ => choice.Field is null))
            {
                if (plane.Tested is not { } test) continue;
                foreach (var language in For(CrewRole.Pilot)) yield return PatternPage.Of(plan, plane, test, language);
            }
        }

        if (choice.Field is not null) yield break;
        if (Wanted(CrewRole.Warehouse))
        {
            foreach (var language in For(CrewRole.Warehouse)) yield return SeedPage.Of(plan, SeedSheets.Of(plan, day), language);
        }

        if (!Wanted(CrewRole.Irrigator)) yield break;
        foreach (var (name, language) in Irrigators(plan, choice, person)) yield return WaterPage.Of(plan, WaterSheets.Of(plan, day, name), language);
    }

    // A water sheet is one person's; where nobody is named, one in each language.
    private static IEnumerable<(string? Name, Language Language)> Irrigators(SeasonPlan plan, SheetChoice choice, Person? person)
    {
        if (person is not null && CrewRoles.Of(person) == CrewRole.Irrigator) return [(person.Name, choice.Language ?? person.Speaks)];
        var people = CrewRoles.Of(plan.State, CrewRole.Irrigator);
        if (!people.IsEmpty) return people.Select(p => ((string?)p.Name, choice.Language ?? p.Speaks));
        return choice.Language is { } asked ? [(null, asked)] : [(null, Wording.Language.English), (null, Wording.Language.Spanish)];
    }

    private static ImmutableArray<Language> Languages(SeasonPlan plan, SheetChoice choice, Person? person, ReadOnlySpan<CrewRole> roles)
    {
        if (choice.Language is { } asked) return [asked];
        if (person is not null) return [person.Speaks];
        var spoken = new List<Language>();
        foreach (var role in roles) spoken.AddRange(CrewRoles.Of(plan.State, role).Select(p => p.Speaks));
        return spoken.Count == 0 ? [plan.State.Farm.Language] : [.. spoken.Distinct().Order()];
    }

    // The language belongs to the key; two keys alike get a number.
    private static ImmutableArray<SheetPage> Distinct(ImmutableArray<SheetPage> pages)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        return [.. pages.Select(page =>
        {
            var key = page.Key + "-" + Words.In(page.Language).Common.Tag;
            var unique = key;
            for (var n = 2; !seen.Add(unique); n++) unique = key + "-" + Telling.Count(n);
            return page with { Key = unique };
        })];
    }
}
