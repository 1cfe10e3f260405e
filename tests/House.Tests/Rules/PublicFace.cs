using System.Reflection;
using System.Runtime.CompilerServices;

namespace Watersown.HouseRules;

/// <summary>What Core shows: numbers with a unit, values that do not change, formulas with a source.</summary>
internal static class PublicFace
{
    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    /// <summary>Types that carry bare numbers by their nature.</summary>
    public static ImmutableDictionary<string, string> MayBeBare { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["Watersown.Datum"] = "carries any value across the edge; its unit is said by the key beside it",
    }.ToImmutableDictionary(StringComparer.Ordinal);

    /// <summary>Bare numbers in public signatures without a word why.</summary>
    public static IEnumerable<string> BareNumbers(Assembly assembly, string root) =>
        from type in assembly.GetExportedTypes()
        where type.Namespace is { } space && (space == root || space.StartsWith(root + ".", StringComparison.Ordinal)) && space != root + ".Quantities"
        where !MayBeBare.ContainsKey(Outermost(type).FullName!)
        from said in BareIn(type)
        select Name(type) + "." + said + " is a bare number without [PlainNumber]";

    /// <summary>Properties that can be set and fields that can change.</summary>
    public static IEnumerable<string> Changeable(Assembly assembly, string root) =>
        from type in assembly.GetExportedTypes()
        where type.Namespace is { } space && (space == root || space.StartsWith(root + ".", StringComparison.Ordinal))
        from said in type.GetProperties(Declared).Where(p => p.SetMethod is { IsPublic: true } set && !IsInit(set)).Select(p => p.Name)
            .Concat(type.GetFields(Declared).Where(f => !f.IsInitOnly && !f.IsLiteral && !type.IsEnum).Select(f => f.Name))
        select Name(type) + "." + said + " can be changed after it is made";

    private static IEnumerable<string> BareIn(Type type)
    {
        var properties = type.GetProperties(Declared);
        foreach (var property in properties.Where(p => IsBare(p.PropertyType) && !Explained(p)))
            yield return property.Name;
        foreach (var field in type.GetFields(Declared).Where(f => IsBare(f.FieldType) && !type.IsEnum && !Explained(f)))
            yield return field.Name;
        foreach (var method in type.GetMethods(Declared).Cast<MethodBase>().Concat(type.GetConstructors(Declared)).Where(m => !IsMadeByCompiler(m) && !m.Name.StartsWith("get_", StringComparison.Ordinal) && !m.Name.StartsWith("set_", StringComparison.Ordinal)))
        {
            if (method is MethodInfo { ReturnType: var returned } info && IsBare(returned) && !Explained(info) && !Explained(info.ReturnParameter)) yield return method.Name + " returns";
            foreach (var parameter in method.GetParameters().Where(p => IsBare(p.ParameterType) && !Explained(p)))
            {
                // The value of a positional record is explained at its property.
                if (method is ConstructorInfo && properties.Any(p => p.Name == parameter.Name && Explained(p))) continue;
                yield return method.Name + "(" + parameter.Name + ")";
            }
        }
    }

    private static bool Explained(ICustomAttributeProvider what) => what.IsDefined(typeof(PlainNumberAttribute), inherit: false);

    private static bool IsMadeByCompiler(MethodBase method) =>
        method.IsDefined(typeof(CompilerGeneratedAttribute), inherit: false) || method.Name is "Deconstruct" or "Equals" or "GetHashCode" or "ToString" or "CompareTo";

    private static bool IsBare(Type type)
    {
        if (type == typeof(double) || type == typeof(float)) return true;
        if (type.HasElementType) return IsBare(type.GetElementType()!);
        return type.IsGenericType && type.GetGenericArguments().Any(IsBare);
    }

    private static bool IsInit(MethodInfo set) => set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));

    private static Type Outermost(Type type) => type.DeclaringType is { } outer ? Outermost(outer) : type;

    private static string Name(Type type) => type.FullName ?? type.Name;
}
