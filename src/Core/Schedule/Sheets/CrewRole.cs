namespace Watersown.Schedule.Sheets;

/// <summary>What somebody does, as far as sheets and texts care.</summary>
public enum CrewRole
{
    Other,
    Grower,
    Warehouse,
    Dispatcher,
    Pilot,
    Loader,
    Irrigator,
    District,
    Landlord,
}

/// <summary>Reads the farm's own words for what a person does.</summary>
public static class CrewRoles
{
    // First match wins, so the longer word stands before the one it holds.
    private static readonly ImmutableArray<(string Word, CrewRole Role)> Known =
    [
        ("irrigat", CrewRole.Irrigator), ("regador", CrewRole.Irrigator), ("warehouse", CrewRole.Warehouse), ("bodega", CrewRole.Warehouse), ("seed", CrewRole.Warehouse),
        ("dispatch", CrewRole.Dispatcher), ("despach", CrewRole.Dispatcher), ("flying service", CrewRole.Dispatcher), ("pilot", CrewRole.Pilot), ("loader", CrewRole.Loader), ("cargador", CrewRole.Loader),
        ("district", CrewRole.District), ("distrito", CrewRole.District), ("landlord", CrewRole.Landlord), ("landowner", CrewRole.Landlord), ("arrendador", CrewRole.Landlord),
        ("grower", CrewRole.Grower), ("manager", CrewRole.Grower), ("agricultor", CrewRole.Grower), ("encargad", CrewRole.Grower),
    ];

    public static CrewRole Of(Person person) =>
        Known.FirstOrDefault(k => person.Role.Contains(k.Word, StringComparison.OrdinalIgnoreCase)).Role;

    /// <summary>People of a role, in the farm's order.</summary>
    public static ImmutableArray<Person> Of(SeasonState state, CrewRole role) => [.. state.People.Where(p => Of(p) == role)];
}
