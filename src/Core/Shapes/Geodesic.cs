namespace Watersown.Shapes;

/// <summary>The shortest way between two places on the ellipsoid.</summary>
/// <param name="Distance">Its length.</param>
/// <param name="Start">Its direction at the first place.</param>
/// <param name="End">Its direction at the second place, going on.</param>
/// <param name="Under">Area between it and the equator; counted positive going east on the north side.</param>
public sealed record GeodesicWay(Length Distance, Bearing Start, Bearing End, Area Under);

/// <summary>
/// Distance, direction and area on the WGS 84 ellipsoid, for places any distance apart. Distances are right to about
/// 15 nanometers; measured against a second implementation in the reference rows.
/// </summary>
public static class Geodesic
{
    /// <summary>The shortest way from one place to another, all in degrees, north and east positive.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A latitude beyond a pole, or a value that is not finite.</exception>
    [Source(nameof(Sources.Karney2013), "sections 4 and 5")]
    public static GeodesicWay Between(
        [PlainNumber("degrees of latitude")] double latitude1,
        [PlainNumber("degrees of longitude")] double longitude1,
        [PlainNumber("degrees of latitude")] double latitude2,
        [PlainNumber("degrees of longitude")] double longitude2)
    {
        var (meters, alpha1, alpha2, under) = Solve(latitude1, longitude1, latitude2, longitude2);
        return new GeodesicWay(Length.FromMeters(meters), Bearing.FromDegrees(Degrees(alpha1)), Bearing.FromDegrees(Degrees(alpha2)), Area.FromSquareMeters(under));
    }

    /// <summary>Degrees from one longitude east to another, the shorter way round: above −180, at most 180.</summary>
    internal static double LongitudeStep(double from, double to)
    {
        // What the subtraction rounds off is put back once the full turns are out: next to the antimeridian it would be seen in a field.
        var difference = to - from;
        var toPart = difference + from;
        var dropped = to - toPart - (difference - toPart + from);
        var step = Math.IEEERemainder(difference, 360) + dropped;
        return step <= -180 ? step + 360 : step;
    }

    /// <summary>The same as <see cref="Between"/> in plain numbers: meters, directions, square meters.</summary>
    internal static (double Meters, Turn Alpha1, Turn Alpha2, double Under) Solve(double latitude1, double longitude1, double latitude2, double longitude2)
    {
        RequireLatitude(latitude1);
        RequireLatitude(latitude2);
        Finite.Require(longitude1);
        Finite.Require(longitude2);

        // The triangle is solved with the first place in the south, no nearer the equator than the second, going east.
        var step = LongitudeStep(longitude1, longitude2);
        double lonSign = step < 0 ? -1 : 1, swap = 1;
        var (phi1, phi2) = (latitude1, latitude2);
        if (Math.Abs(phi1) < Math.Abs(phi2)) (phi1, phi2, swap, lonSign) = (phi2, phi1, -1, -lonSign);
        double latSign = phi1 < 0 ? 1 : -1;
        var triangle = GeodesicTriangle.Solve(phi1 * latSign, phi2 * latSign, Math.Abs(step));

        var (a1, a2) = swap < 0 ? (triangle.Alpha2, triangle.Alpha1) : (triangle.Alpha1, triangle.Alpha2);
        Turn Restore(Turn alpha) => new(alpha.Sin * swap * lonSign, alpha.Cos * swap * latSign);
        return (triangle.Meters, Restore(a1), Restore(a2), triangle.Under * swap * lonSign * latSign);
    }

    private static double Degrees(Turn alpha) => alpha.Radians * 180 / Math.PI;

    private static void RequireLatitude(double latitude)
    {
        if (!(Math.Abs(latitude) <= 90)) throw new ArgumentOutOfRangeException(nameof(latitude), latitude, "A latitude lies between -90 and 90 degrees.");
    }
}
