using Watersown.Land;
using Watersown.Shapes;

namespace Watersown.Flight;

/// <summary>What stands behind an outline.</summary>
public enum MapOutline
{
    /// <summary>A boundary the farm has drawn or imported.</summary>
    Boundary,

    /// <summary>A rectangle of the right acres along a pass of the length and direction told.</summary>
    FromAcres,

    /// <summary>The same, its direction not known: drawn along north.</summary>
    FromAcresDirectionUnknown,
}

/// <summary>A field and what is round it, to be drawn to scale: meters east and north of its middle.</summary>
/// <param name="Parts">Its land.</param>
/// <param name="Outline">What stands behind the outline.</param>
public sealed record FieldMap(ImmutableArray<PlanePart> Parts, MapOutline Outline)
{
    /// <summary>Direction of the run that the farm wishes.</summary>
    public Bearing? Run { get; init; }

    /// <summary>Extent along the run, and across it.</summary>
    public required Length Along { get; init; }

    public required Length Across { get; init; }

    /// <summary>Passes across the field, one swath each.</summary>
    public required int Passes { get; init; }

    /// <summary>Checks with an edge of their own.</summary>
    public ImmutableArray<MapCheck> Checks { get; init; } = [];

    public ImmutableArray<MapBox> Boxes { get; init; } = [];

    public ImmutableArray<MapHazard> Hazards { get; init; } = [];

    public ImmutableArray<MapNeighbor> Neighbors { get; init; } = [];

    /// <summary>Where the strip lies.</summary>
    public PlanePoint? Strip { get; init; }
}

/// <summary>A check with its edge.</summary>
public sealed record MapCheck(int Number, ImmutableArray<PlanePart> Parts);

/// <summary>A box where one stands.</summary>
public sealed record MapBox(int Number, PlanePoint At, bool Leaks);

/// <summary>A hazard whose place is known: a point, or the corners of a line.</summary>
public sealed record MapHazard(string Mark, HazardKind Kind, ImmutableArray<PlanePoint> Points)
{
    /// <summary>How far from its point it may stand, by the file that lists it.</summary>
    public Length? Within { get; init; }
}

/// <summary>A neighbouring field.</summary>
public sealed record MapNeighbor(string Code, GroundCover Cover, ImmutableArray<PlanePart> Parts, MapOutline Outline);
