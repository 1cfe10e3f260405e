namespace Watersown.Shapes;

/// <summary>A place on a level plane laid over the farm, in meters.</summary>
/// <param name="East">Meters east of the plane's middle.</param>
/// <param name="North">Meters north of the plane's middle.</param>
public readonly record struct PlanePoint(
    [property: PlainNumber("meters")] double East,
    [property: PlainNumber("meters")] double North);

/// <summary>A piece of land on the plane: its outer ring and the holes in it. Rings are not closed.</summary>
public sealed record PlanePart(ImmutableArray<PlanePoint> Outer, ImmutableArray<ImmutableArray<PlanePoint>> Holes);
