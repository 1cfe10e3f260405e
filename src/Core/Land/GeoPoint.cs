namespace Watersown.Land;

/// <summary>A place on the WGS 84 ellipsoid, in degrees; north and east are positive.</summary>
/// <param name="Latitude">−90 to 90.</param>
/// <param name="Longitude">−180 to 180.</param>
public readonly record struct GeoPoint(
    [property: PlainNumber("degrees of latitude")] double Latitude,
    [property: PlainNumber("degrees of longitude")] double Longitude);

/// <summary>One piece of land: its outer ring and the holes in it. Rings are not closed: the last point is not the first again.</summary>
public sealed record BoundaryPart(ImmutableArray<GeoPoint> Outer, ImmutableArray<ImmutableArray<GeoPoint>> Holes);

/// <summary>The edge of a field, one piece or several (a road may cut it).</summary>
public sealed record Boundary(ImmutableArray<BoundaryPart> Parts);
