namespace Watersown.Land;

/// <summary>Two ditches led together: what comes in either reaches the fields of both.</summary>
public sealed record DitchJoint
{
    private DitchJoint(string one, string other) => (One, Other) = (one, other);

    /// <summary>The source that comes first by its code.</summary>
    public string One { get; }

    public string Other { get; }

    /// <summary>The joint of two sources, whichever is named first.</summary>
    public static DitchJoint Of(string source, string other) =>
        string.CompareOrdinal(source, other) <= 0 ? new DitchJoint(source, other) : new DitchJoint(other, source);

    public bool IsOf(string source) => One == source || Other == source;
}

/// <summary>Which ditches are led together. A field's own ditch is that of its first source; another that reaches it is joined to that.</summary>
public static class Ditches
{
    /// <summary>Pairs of ditches of which one reaches fields of the other, in the farm's order.</summary>
    public static ImmutableArray<DitchJoint> Joints(Farm farm) =>
        [.. farm.Fields.SelectMany(f => f.Sources.Skip(1).Select(s => DitchJoint.Of(f.Sources[0], s))).Distinct()];

    /// <summary>The fields once ditches were joined or parted; joints that nobody spoke of stay as they are.</summary>
    /// <param name="farm">The farm as it was.</param>
    /// <param name="told">Of each pair that was spoken of, whether it is joined.</param>
    [Source(nameof(Sources.Definition), "a field's own ditch is that of its first source; joined ones follow it")]
    public static ImmutableArray<Field> Laid(Farm farm, IReadOnlyDictionary<DitchJoint, bool> told) =>
        told.Count == 0 ? farm.Fields : [.. farm.Fields.Select(f => f.Sources.IsEmpty ? f : f with { Sources = Reached(f.Sources, told) })];

    private static ImmutableArray<string> Reached(ImmutableArray<string> sources, IReadOnlyDictionary<DitchJoint, bool> told)
    {
        var own = sources[0];
        var kept = sources.Where(s => s == own || told.GetValueOrDefault(DitchJoint.Of(own, s), true));
        var led = told.Where(t => t.Value && t.Key.IsOf(own)).Select(t => t.Key.One == own ? t.Key.Other : t.Key.One).Order(StringComparer.Ordinal);
        return [.. kept.Concat(led).Distinct(StringComparer.Ordinal)];
    }
}
