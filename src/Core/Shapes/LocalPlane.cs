namespace Watersown.Shapes;

/// <summary>
/// A level plane laid over a farm once, so that passes and distances can be worked in meters: transverse Mercator through
/// the farm's middle, true to scale there. Angles are kept. Lengths come out too long by (meters east or west of the
/// middle)² / (2 × 6.37e6²): 1.2 parts in a million at 10 km, 31 at 50 km; areas by twice that. The plane's north leans from
/// true north by the longitude step times the sine of latitude: 0.07° at 10 km and 39 degrees north. Positions turn round
/// to within a micrometer. Areas that people act on are measured by <see cref="GeodesicRing"/>, not here.
/// </summary>
public sealed class LocalPlane
{
    /// <summary>A place more than this many degrees of longitude from the middle is not on the same farm.</summary>
    [PlainNumber("degrees of longitude")]
    public const double Reach = 30;

    private readonly double latitude;
    private readonly double longitude;
    private readonly double middleNorth;

    private LocalPlane(double latitude, double longitude)
    {
        (this.latitude, this.longitude) = (latitude, longitude);
        middleNorth = Project(latitude, 0).North;
    }

    /// <summary>Latitude of the middle, degrees.</summary>
    [PlainNumber("degrees of latitude")]
    public double Latitude => latitude;

    /// <summary>Longitude of the middle, degrees.</summary>
    [PlainNumber("degrees of longitude")]
    public double Longitude => longitude;

    /// <summary>The plane with its middle at a place.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The middle lies within half a degree of a pole.</exception>
    [Source(nameof(Sources.Karney2011), "section 4")]
    public static LocalPlane At([PlainNumber("degrees of latitude")] double latitude, [PlainNumber("degrees of longitude")] double longitude)
    {
        if (!(Math.Abs(latitude) <= 89.5)) throw new ArgumentOutOfRangeException(nameof(latitude), latitude, "A farm's plane lies between 89.5 degrees south and north.");
        return new LocalPlane(latitude, Finite.Require(longitude));
    }

    /// <summary>A place on the ellipsoid onto the plane.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The place lies beyond <see cref="Reach"/>.</exception>
    [Source(nameof(Sources.Karney2011), "eqs. 7-11, 35")]
    public PlanePoint ToPlane([PlainNumber("degrees of latitude")] double placeLatitude, [PlainNumber("degrees of longitude")] double placeLongitude)
    {
        var (east, north, _) = Project(placeLatitude, StepTo(placeLongitude));
        return new PlanePoint(east, north - middleNorth);
    }

    /// <summary>A place of the plane back onto the ellipsoid, in degrees.</summary>
    [Source(nameof(Sources.Karney2011), "eqs. 15-21, 36")]
    [return: PlainNumber("degrees of latitude and longitude")]
    public (double Latitude, double Longitude) ToEarth(PlanePoint point)
    {
        var (placeLatitude, step) = TransverseMercator.Inverse(point.East, point.North + middleNorth);
        return (placeLatitude, Math.IEEERemainder(longitude + step, 360));
    }

    /// <summary>Meters on the plane for one meter on the ground at a place: 1 in the middle, more to both sides.</summary>
    [Source(nameof(Sources.Karney2011), "eqs. 24-25")]
    [return: PlainNumber("length on the plane over length on the ground")]
    public double ScaleAt([PlainNumber("degrees of latitude")] double placeLatitude, [PlainNumber("degrees of longitude")] double placeLongitude) =>
        Project(placeLatitude, StepTo(placeLongitude)).Scale;

    private double StepTo(double placeLongitude)
    {
        var step = Geodesic.LongitudeStep(longitude, placeLongitude);
        if (!(Math.Abs(step) <= Reach)) throw new ArgumentOutOfRangeException(nameof(placeLongitude), placeLongitude, "The place is too far from the middle of the plane.");
        return step;
    }

    private static (double East, double North, double Scale) Project(double placeLatitude, double step)
    {
        if (!(Math.Abs(placeLatitude) < 90)) throw new ArgumentOutOfRangeException(nameof(placeLatitude), placeLatitude, "A place on a plane lies between the poles.");
        return TransverseMercator.Forward(placeLatitude, step);
    }
}
