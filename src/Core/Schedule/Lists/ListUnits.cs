namespace Watersown.Schedule.Lists;

/// <summary>Units people write in a list, in cells or in headings.</summary>
internal static class ListUnits
{
    private static readonly string[] acres = ["", "ac", "acs", "acre", "acres", "a"];

    private static readonly string[] hectares = ["ha", "has", "hectare", "hectares", "hectarea", "hectareas", "hectáreas", "hectárea"];

    private static readonly string[] poundsPerAcre = ["", "lb", "lbs", "#", "lbac", "lbsac", "lbacre", "lbsacre", "lbperacre", "lbsperacre", "poundsperacre", "lbacdry", "lbdry", "lbporacre", "librasporacre", "libras", "ac#", "acdry", "lba"];

    private static readonly string[] kilogramsPerHectare = ["kgha", "kgperhectare", "kgporhectarea", "kgporha", "kghectarea"];

    private static readonly string[] pounds = ["", "lb", "lbs", "#", "lbdry", "drylb", "pounds", "libras"];

    private static readonly string[] checks = ["", "ck", "cks", "check", "checks", "melga", "melgas", "basins", "bays"];

    public static Area? Acres(ListNumber number, string headingUnit) => Pick(number, headingUnit) switch
    {
        var unit when acres.Contains(unit, StringComparer.Ordinal) => Area.FromAcres(number.Value),
        var unit when hectares.Contains(unit, StringComparer.Ordinal) => Area.FromHectares(number.Value),
        _ => null,
    };

    public static SeedRate? Rate(ListNumber number, string headingUnit) => Pick(number, headingUnit) switch
    {
        var unit when poundsPerAcre.Contains(unit, StringComparer.Ordinal) => SeedRate.FromPoundsPerAcre(number.Value),
        var unit when kilogramsPerHectare.Contains(unit, StringComparer.Ordinal) => SeedRate.FromKilogramsPerHectare(number.Value),
        _ => null,
    };

    public static DrySeed? Dry(ListNumber number) => pounds.Contains(number.Unit, StringComparer.Ordinal) ? DrySeed.FromPounds(number.Value) : null;

    public static bool IsChecks(ListNumber number) => checks.Contains(number.Unit, StringComparer.Ordinal);

    /// <summary>The unit that a heading names for its whole column: metric, or none.</summary>
    public static string OfHeading(string heading)
    {
        var words = ListHeadings.Words(heading);
        if (words.Contains("kg", StringComparer.Ordinal) || words.Contains("kgha", StringComparer.Ordinal)) return "kgha";
        return words.Any(w => hectares.Contains(w, StringComparer.Ordinal)) ? "ha" : string.Empty;
    }

    private static string Pick(ListNumber number, string headingUnit) => number.Unit.Length > 0 ? number.Unit : headingUnit;
}
