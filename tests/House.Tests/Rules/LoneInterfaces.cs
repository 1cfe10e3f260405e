using System.Reflection;

namespace Watersown.HouseRules;

/// <summary>An interface that one type alone implements is a second name for that type.</summary>
internal static class LoneInterfaces
{
    public static IEnumerable<string> In(ImmutableArray<Assembly> assemblies)
    {
        var types = assemblies.SelectMany(a => a.GetTypes()).ToList();
        foreach (var face in types.Where(t => t.IsInterface).OrderBy(t => t.FullName, StringComparer.Ordinal))
        {
            var behind = types.Where(t => t is { IsInterface: false, IsAbstract: false } && t.GetInterfaces().Any(i => i == face || (i.IsGenericType && i.GetGenericTypeDefinition() == face))).ToList();
            if (behind.Count == 1) yield return face.FullName + " is implemented by " + behind[0].FullName + " alone";
        }
    }
}
