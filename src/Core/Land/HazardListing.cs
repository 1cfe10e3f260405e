namespace Watersown.Land;

/// <summary>
/// What a public file of obstacles says of one of them. Such a file lists some of what stands, as of its own day; what it does not
/// list may stand all the same.
/// </summary>
/// <param name="Id">Its number in the file.</param>
/// <param name="FileOf">The day the file was current.</param>
public sealed record HazardListing(string Id, DateOnly FileOf)
{
    /// <summary>Somebody verified it, by the file.</summary>
    public bool Verified { get; init; }

    /// <summary>How far from its point it may stand; none where the file does not know.</summary>
    public Length? Within { get; init; }

    /// <summary>How far its height may be off; none where the file does not know.</summary>
    public Length? HeightWithin { get; init; }

    /// <summary>Its top above the sea, which may lie below it; none where the file leaves it blank.</summary>
    public Length? Top { get; init; }

    public HazardLight Light { get; init; }

    public HazardMarking Marking { get; init; }

    /// <summary>How many stand together at the point.</summary>
    public int Count { get; init; } = 1;

    /// <summary>The file says that it was taken down; until somebody looked it is kept.</summary>
    public bool TakenDown { get; init; }

    /// <summary>When the file last changed its line.</summary>
    public DateOnly? Changed { get; init; }
}

/// <summary>How an obstacle is lit, by a public file.</summary>
public enum HazardLight
{
    Unknown,
    None,
    Red,
    MediumWhiteAndRed,
    HighWhiteAndRed,
    MediumWhite,
    HighWhite,
    Flood,
    Catenary,
    RedTogether,
    LitSomehow,
}

/// <summary>How an obstacle is painted or marked, by a public file.</summary>
public enum HazardMarking
{
    Unknown,
    None,
    OrangeAndWhite,
    White,
    Marked,
    Flag,
    Spheres,
}
