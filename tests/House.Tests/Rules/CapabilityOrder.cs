using System.Reflection;
using NetArchTest.Rules;

namespace Watersown.HouseRules;

/// <summary>
/// A capability uses only those to its left, and tools use none. Uses inside method bodies count, so the assemblies are
/// searched, not their public face alone.
/// </summary>
internal static class CapabilityOrder
{
    /// <summary>Every type that uses a capability it may not.</summary>
    /// <param name="assembly">Where to look.</param>
    /// <param name="root">The namespace that the capability folders lie in.</param>
    /// <param name="registry">The one type that names all capabilities, by full name.</param>
    public static IEnumerable<string> Breaches(Assembly assembly, string root, string registry)
    {
        for (var i = 0; i < SourceTree.Capabilities.Length; i++)
        {
            var right = SourceTree.Capabilities[(i + 1)..];
            if (right.IsEmpty) continue;
            foreach (var type in Using(assembly, root + "." + SourceTree.Capabilities[i], [.. right.Select(c => root + "." + c)]))
                yield return type + " uses a capability to the right of " + SourceTree.Capabilities[i];
        }

        foreach (var tool in SourceTree.Tools)
        {
            foreach (var type in Using(assembly, root + "." + tool, [.. SourceTree.Capabilities.Select(c => root + "." + c)]).Where(t => t != registry))
                yield return type + " is a tool and uses a capability";
        }
    }

    /// <summary>Types of a namespace that use any of others.</summary>
    public static IEnumerable<string> Using(Assembly assembly, string within, string[] others)
    {
        var types = Types.InAssembly(assembly).That().ResideInNamespace(within).And().HaveDependencyOnAny(others).GetTypes();
        return types.Select(t => t.FullName).Order(StringComparer.Ordinal);
    }
}
