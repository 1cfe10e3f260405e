using System.Xml.Linq;

namespace Watersown.HouseRules;

/// <summary>Projects refer only where the house plan lets them: every arrow points at Core, and hosts never at each other.</summary>
internal static class ProjectDirections
{
    private static readonly ImmutableDictionary<string, string[]> Allowed = new Dictionary<string, string[]>(StringComparer.Ordinal)
    {
        ["Core"] = [],
        ["Planner"] = ["Core"],
        ["Documents"] = ["Core"],
        ["Records"] = ["Core", "Documents", "Planner"],
        ["Pocket"] = ["Core", "Documents"],
        ["Cli"] = ["Records", "Documents", "Core"],
        ["Web"] = ["Records", "Documents", "Core", "Pocket"],
    }.ToImmutableDictionary(StringComparer.Ordinal);

    public static IEnumerable<string> Breaches(IEnumerable<TextFile> projects)
    {
        foreach (var project in projects)
        {
            var name = Path.GetFileNameWithoutExtension(project.Path);
            if (!Allowed.TryGetValue(name, out var allowed))
            {
                yield return project.Path + " is a project that the house plan does not know";
                continue;
            }

            var referred = XDocument.Parse(project.Text).Descendants("ProjectReference")
                .Select(r => Path.GetFileNameWithoutExtension(((string?)r.Attribute("Include") ?? string.Empty).Replace('\\', '/')));
            foreach (var other in referred.Where(r => !allowed.Contains(r, StringComparer.Ordinal)))
                yield return project.Path + " refers to " + other;
        }
    }
}
