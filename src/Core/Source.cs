namespace Watersown;

/// <summary>How far a cited figure can be trusted.</summary>
public enum SourceStanding
{
    /// <summary>Read in the publication or in a document that reproduces it.</summary>
    Read,

    /// <summary>Follows by arithmetic or geometry from definitions.</summary>
    Derived,

    /// <summary>Believed right, not re-read.</summary>
    FromMemory,

    /// <summary>Common practice, no source.</summary>
    CommonPractice,

    /// <summary>Chosen here so that arithmetic can run; the farm can change it.</summary>
    Default,
}

/// <summary>A publication or a stated basis; every formula and constant names one.</summary>
/// <param name="Key">Short key as used in docs/sources.md, such as <c>FAO56</c>.</param>
/// <param name="Reference">Author, title, year.</param>
/// <param name="Standing">How far it can be trusted.</param>
public sealed record Source(string Key, string Reference, SourceStanding Standing)
{
    /// <summary>The source with the place inside it, such as <c>eq. 6</c>.</summary>
    public Citation At(string place) => new(this, place);
}

/// <summary>A place in a source.</summary>
public sealed record Citation(Source Source, string Place)
{
    public static implicit operator Citation(Source source) => new(source, string.Empty);

    /// <summary>For people: reference, place, and its standing where that is less than read.</summary>
    public override string ToString()
    {
        var text = Place.Length == 0 ? Source.Reference : Source.Reference + ", " + Place;
        return Source.Standing switch
        {
            SourceStanding.FromMemory => text + " (from memory)",
            SourceStanding.CommonPractice => text == Sources.CommonPractice.Reference ? text : text + " (common practice, no source)",
            SourceStanding.Default => text == Sources.FarmDefault.Reference ? text : text + " (planner default, change it to yours)",
            SourceStanding.Read or SourceStanding.Derived => text,
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }
}

/// <summary>Names the source of a public calculation or constant, by the key of an entry in <see cref="Sources"/>.</summary>
[AttributeUsage(AttributeTargets.Method | AttributeTargets.Field | AttributeTargets.Property | AttributeTargets.Class, AllowMultiple = true)]
public sealed class SourceAttribute(string key, string place = "") : Attribute
{
    public string Key { get; } = key;

    public string Place { get; } = place;
}

/// <summary>Says why a bare number stands in a public signature: a ratio, a count, or an index with no unit to lose.</summary>
[AttributeUsage(AttributeTargets.All)]
public sealed class PlainNumberAttribute(string why) : Attribute
{
    public string Why { get; } = why;
}
