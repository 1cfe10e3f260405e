using System.Reflection;

namespace Watersown;

/// <summary>
/// The bibliography as data. One file per topic (Sources.Water.cs, Sources.Flight.cs, ...); docs/sources.md is written
/// from it. A key is the name of its property.
/// </summary>
public static partial class Sources
{
    public static Source Definition { get; } = new(nameof(Definition), "definition of the units or the quantity", SourceStanding.Derived);

    public static Source Arithmetic { get; } = new(nameof(Arithmetic), "arithmetic from the inputs", SourceStanding.Derived);

    public static Source MassBalance { get; } = new(nameof(MassBalance), "mass balance: dry matter is conserved", SourceStanding.Derived);

    public static Source CommonPractice { get; } = new(nameof(CommonPractice), "common practice, no source", SourceStanding.CommonPractice);

    public static Source FarmDefault { get; } = new(nameof(FarmDefault), "planner default, change it to your farm's own", SourceStanding.Default);

    public static Source FarmRecord { get; } = new(nameof(FarmRecord), "the farm's own record", SourceStanding.Derived);

    /// <summary>
    /// Every source, in key order. Gathered when asked for: kept as a value it would be filled before the other parts of
    /// this class, whose order nobody promises.
    /// </summary>
    public static ImmutableArray<Source> All =>
        [.. typeof(Sources).GetProperties(BindingFlags.Public | BindingFlags.Static)
            .Where(p => p.PropertyType == typeof(Source))
            .Select(p => (Source)p.GetValue(null)!)
            .OrderBy(s => s.Key, StringComparer.Ordinal)];
}
