using Watersown.Wording;

namespace Watersown.Land;

/// <summary>A place in words that a map or a phone understands.</summary>
public static class PlaceWords
{
    /// <summary>To five decimals, about 3 ft: <c>39.01520 N, 122.02730 W</c>.</summary>
    public static string Of(GeoPoint point)
    {
        var north = Say.Number(Math.Abs(point.Latitude), 5) + (point.Latitude < 0 ? " S" : " N");
        var east = Say.Number(Math.Abs(point.Longitude), 5) + (point.Longitude < 0 ? " W" : " E");
        return north + ", " + east;
    }
}
