using Watersown.Land;

namespace Watersown.Documents.Farms;

/// <summary>What a farm document needs from outside.</summary>
/// <param name="Clock">The moment of reading, used where the document does not say when it was true.</param>
public sealed record FarmContext(DateTimeOffset Clock)
{
    /// <summary>
    /// Gives the boundaries of the named file; without it a document that names one is read without boundaries and says so.
    /// </summary>
    public Func<string, Outcome<ImmutableArray<NamedBoundary>>>? Boundaries { get; init; }

    /// <summary>Plan from this moment rather than the document's own.</summary>
    public DateTimeOffset? Now { get; init; }
}

/// <summary>One boundary of a file, with what it may be known by.</summary>
/// <param name="Code">Short code of the field; empty where the file has none.</param>
/// <param name="Name">Name of the field; empty where the file has none.</param>
/// <param name="Edge">The edge.</param>
public sealed record NamedBoundary(string Code, string Name, Boundary Edge);
