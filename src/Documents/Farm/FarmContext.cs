using Watersown.Land;

namespace Watersown.Documents.Farms;

/// <summary>What a farm document needs from outside.</summary>
/// <param name="Clock">The moment of reading, used where the document does not say when it was true.</param>
public sealed record FarmContext(DateTimeOffset Clock)
{
    /// <summary>
    /// Gives the boundaries of the named file by the code of the field that each belongs to; without it a document that names
    /// one is read without boundaries and says so.
    /// </summary>
    public Func<Farm, string, Outcome<ImmutableDictionary<string, Boundary>>>? Boundaries { get; init; }

    /// <summary>Plan from this moment rather than the document's own.</summary>
    public DateTimeOffset? Now { get; init; }
}
