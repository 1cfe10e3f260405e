namespace Watersown;

/// <summary>Where the measuring of land comes from.</summary>
public static partial class Sources
{
    public static Source Karney2013 { get; } = new(nameof(Karney2013),
        "C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87:43-55, 2013", SourceStanding.Read);

    public static Source Karney2011 { get; } = new(nameof(Karney2011),
        "C. F. F. Karney, Transverse Mercator with an accuracy of a few nanometers, Journal of Geodesy 85:475-485, 2011", SourceStanding.Read);

    public static Source Wgs84 { get; } = new(nameof(Wgs84),
        "NGA.STND.0036, World Geodetic System 1984, its definition and relationships with local geodetic systems, 2014", SourceStanding.FromMemory);

    public static Source Rfc7946 { get; } = new(nameof(Rfc7946),
        "RFC 7946, The GeoJSON format, IETF, 2016", SourceStanding.FromMemory);
}
