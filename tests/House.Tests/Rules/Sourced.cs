using System.Reflection;
using System.Text.RegularExpressions;
using Watersown.Reckon;

namespace Watersown.HouseRules;

/// <summary>
/// Every calculator names its source. A calculator is a public method of a public static class in a capability folder
/// that gives a quantity, a span of time, a number, an outcome, a worked value, or a record made of such.
/// </summary>
internal static class Sourced
{
    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly;

    /// <summary>Methods that look like calculators and are not, each with the reason.</summary>
    public static ImmutableDictionary<string, string> NotCalculators { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["Watersown.Schedule.FlyingWindows.Standing"] = "finds the wind that somebody saw or forecast; works nothing out",
    }.ToImmutableDictionary(StringComparer.Ordinal);

    public static IEnumerable<MethodInfo> Calculators(Assembly assembly, string root) => assembly.GetExportedTypes()
        .Where(type => type is { IsAbstract: true, IsSealed: true, Namespace: { } space } && SourceTree.Capabilities.Any(c => space == root + "." + c || space.StartsWith(root + "." + c + ".", StringComparison.Ordinal)))
        .SelectMany(type => type.GetMethods(Declared))
        .Where(method => !method.IsSpecialName && Calculates(method.ReturnType))
        .OrderBy(FullName, StringComparer.Ordinal);

    public static IEnumerable<string> Unsourced(Assembly assembly, string root) => Calculators(assembly, root)
        .Where(m => !m.IsDefined(typeof(SourceAttribute)) && m.DeclaringType?.IsDefined(typeof(SourceAttribute)) != true && !NotCalculators.ContainsKey(FullName(m)))
        .Select(m => FullName(m) + " has no [Source]");

    /// <summary>Keys that the bibliography does not have.</summary>
    public static IEnumerable<string> UnknownKeys(Assembly assembly, ImmutableArray<string> known) =>
        from type in assembly.GetTypes()
        from member in type.GetMembers(Declared | BindingFlags.Instance | BindingFlags.NonPublic).Append(type)
        from source in member.GetCustomAttributes<SourceAttribute>()
        where !known.Contains(source.Key, StringComparer.Ordinal)
        select (member.DeclaringType ?? type).FullName + "." + member.Name + " names the source " + source.Key + ", which is not in the bibliography";

    /// <summary>Entries of the bibliography that no code names.</summary>
    public static IEnumerable<string> Unused(IEnumerable<string> keys, IEnumerable<TextFile> code)
    {
        var texts = code.Where(f => !f.Path.StartsWith("src/Core/Sources", StringComparison.Ordinal)).Select(f => f.Text).ToList();
        return keys.Where(k => !texts.Exists(t => Regex.IsMatch(t, @"\bSources\." + Regex.Escape(k) + @"\b", RegexOptions.None, TimeSpan.FromSeconds(5))))
            .Select(k => k + " is in the bibliography and no code names it");
    }

    /// <summary>Reasons that no longer have a method.</summary>
    public static IEnumerable<string> StaleExceptions(Assembly assembly, string root)
    {
        var there = Calculators(assembly, root).Where(m => !m.IsDefined(typeof(SourceAttribute))).Select(FullName).ToHashSet(StringComparer.Ordinal);
        return NotCalculators.Keys.Where(k => !there.Contains(k)).Order(StringComparer.Ordinal).Select(k => k + " is excepted and is not there without a source any more");
    }

    public static string FullName(MethodInfo method) => method.DeclaringType!.FullName + "." + method.Name;

    private static bool Calculates(Type type)
    {
        if (Nullable.GetUnderlyingType(type) is { } inner) return Calculates(inner);
        if (type.IsGenericType)
        {
            var generic = type.GetGenericTypeDefinition();
            return generic == typeof(Outcome<>) ? !type.GetGenericArguments().Contains(typeof(Reckoned)) : generic == typeof(Worked<>) || type.GetGenericArguments().Any(Calculates);
        }

        if (type == typeof(bool) || type == typeof(string) || type.IsEnum) return false;
        return type == typeof(TimeSpan) || type.IsPrimitive || type == typeof(decimal) || type.Namespace == typeof(Area).Namespace
            || type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly).Any(p => p.PropertyType.Namespace == typeof(Area).Namespace);
    }
}
