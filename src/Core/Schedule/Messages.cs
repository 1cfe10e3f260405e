using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Schedule;

/// <summary>A text message ready to send, or to be said by voice: one, whole in itself, within what a telephone sends as one.</summary>
/// <param name="Role">What the person does.</param>
/// <param name="Name">Whom it is for; the role in words where nobody is named.</param>
/// <param name="Language">The language it is in.</param>
/// <param name="Text">What it says.</param>
public sealed record CrewMessage(CrewRole Role, string Name, Language Language, string Text)
{
    public string? Phone { get; init; }

    /// <summary>Septets of the GSM alphabet it takes; never above <see cref="ShortText.Most"/>.</summary>
    public int Septets => ShortText.Septets(Text);
}

/// <summary>The texts that a plan asks for on one day.</summary>
public static class Messages
{
    /// <summary>
    /// What each person must be told on a day: calls due until noon of the next day, flights of that day and the two after,
    /// changes of water to send, the irrigators' route, and to landlords what is sown.
    /// </summary>
    public static ImmutableArray<CrewMessage> Of(SeasonPlan plan, DateOnly day) =>
    [
        .. For(plan, CrewRole.Warehouse, tell => WarehouseTexts.Of(plan, day, tell)),
        .. For(plan, CrewRole.Dispatcher, tell => FlightTexts.ToDispatcher(plan, day, tell)),
        .. For(plan, CrewRole.Pilot, tell => FlightTexts.ToPilot(plan, day, tell)),
        .. For(plan, CrewRole.District, tell => WaterTexts.ToDistrict(plan, day, tell)),
        .. For(plan, CrewRole.Irrigator, tell => WaterTexts.ToIrrigator(plan, day, tell)),
        .. For(plan, CrewRole.Landlord, tell => FlightTexts.ToLandlord(plan, tell)),
    ];

    /// <summary>The name of a role where nobody is named for it.</summary>
    public static string NameOf(CrewRole role, Language language)
    {
        var words = Words.In(language).Text;
        return role switch
        {
            CrewRole.Warehouse => words.WarehouseName,
            CrewRole.Dispatcher => words.DispatcherName,
            CrewRole.District => words.DistrictName,
            CrewRole.Irrigator => words.IrrigatorName,
            CrewRole.Pilot => words.PilotName,
            CrewRole.Landlord => words.LandlordName,
            _ => string.Empty,
        };
    }

    private static IEnumerable<CrewMessage> For(SeasonPlan plan, CrewRole role, Func<Telling, IEnumerable<string>> texts)
    {
        var language = plan.State.Farm.Language;
        var people = CrewRoles.Of(plan.State, role);
        // Nobody guesses at a landlord; the others are there even where the farm has not named them.
        if (people.IsEmpty) return role == CrewRole.Landlord ? [] : Say(role, NameOf(role, language), null, language);
        return people.SelectMany(p => Say(role, p.Name, p.Phone, p.Speaks));

        IEnumerable<CrewMessage> Say(CrewRole to, string name, string? phone, Language speaks) =>
            texts(new Telling(plan.State, speaks)).Select(t => new CrewMessage(to, name, speaks, t) { Phone = phone });
    }
}
