using System.Reflection;
using NetArchTest.Rules;

namespace Watersown.HouseRules;

/// <summary>A package is touched in one room only, so that it can be replaced there.</summary>
internal static class PackageRooms
{
    /// <summary>Namespace of the package, and the one namespace of ours that may use it.</summary>
    public static ImmutableArray<(string Package, string Room)> Rooms { get; } =
    [
        ("NetTopologySuite", "Watersown.Shapes"),
        ("Google.OrTools", "Watersown.Planner"),
        ("PdfSharp", "Watersown.Records.Files"),
        ("Ical.Net", "Watersown.Records.Files"),
        ("ProjNet", "Watersown.Records.Files"),
        ("System.CommandLine", "Watersown.Cli"),
        ("Fido2NetLib", "Watersown.Web"),
        ("Microsoft.Data.Sqlite", "Watersown.Records.Database"),
        ("Npgsql", "Watersown.Records.Database"),
        ("Dapper", "Watersown.Records.Database"),
    ];

    public static IEnumerable<string> Breaches(IEnumerable<Assembly> assemblies, ImmutableArray<(string Package, string Room)> rooms) =>
        assemblies.SelectMany(assembly => rooms.SelectMany(room => Types.InAssembly(assembly).That().HaveDependencyOnAny(room.Package).GetTypes()
            .Select(type => type.FullName)
            // A shapefile is a file format that speaks in the geometry package's types.
            .Where(name => !Inside(name, room.Room) && !(room.Package == "NetTopologySuite" && Inside(name, "Watersown.Records.Files")))
            .Order(StringComparer.Ordinal)
            .Select(name => name + " uses " + room.Package + ", which belongs to " + room.Room)));

    private static bool Inside(string type, string room) => type.StartsWith(room + ".", StringComparison.Ordinal);
}
