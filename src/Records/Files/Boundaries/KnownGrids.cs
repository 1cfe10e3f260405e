using System.Globalization;
using Watersown.Wording;

namespace Watersown.Records.Files.Boundaries;

/// <summary>
/// Grids that a GeoJSON file of before 2016 may name by a code of the EPSG register: degrees, web Mercator, UTM, and California's own.
/// Parameters as in the register.
/// </summary>
internal static class KnownGrids
{
    private const string Nad83 = """GEOGCS["NAD83",DATUM["North_American_Datum_1983",SPHEROID["GRS 1980",6378137,298.257222101]],PRIMEM["Greenwich",0],UNIT["degree",0.0174532925199433]]""";
    private const string Wgs84 = """GEOGCS["WGS 84",DATUM["WGS_1984",SPHEROID["WGS 84",6378137,298.257223563]],PRIMEM["Greenwich",0],UNIT["degree",0.0174532925199433]]""";
    private const string Meter = """UNIT["metre",1]""";
    private const string SurveyFoot = """UNIT["US survey foot",0.304800609601219]""";

    // Zones 1 to 6: latitude of origin, central meridian, the two standard parallels.
    private static readonly (double Origin, double Middle, double First, double Second)[] californiaZones =
    [
        (39 + (20 / 60.0), -122, 41 + (40 / 60.0), 40),
        (37 + (40 / 60.0), -122, 39 + (50 / 60.0), 38 + (20 / 60.0)),
        (36.5, -120.5, 38 + (26 / 60.0), 37 + (4 / 60.0)),
        (35 + (20 / 60.0), -119, 37.25, 36),
        (33.5, -118, 35 + (28 / 60.0), 34 + (2 / 60.0)),
        (32 + (10 / 60.0), -116.25, 33 + (53 / 60.0), 32 + (47 / 60.0)),
    ];

    /// <summary>The grid of a name such as <c>EPSG:26910</c> or <c>urn:ogc:def:crs:OGC:1.3:CRS84</c>.</summary>
    public static Outcome<Grid> Find(string name, string where)
    {
        var last = name.Split(':', '/', '#')[^1].Trim();
        if (last.Equals("CRS84", StringComparison.OrdinalIgnoreCase) || last.Equals("CRS84h", StringComparison.OrdinalIgnoreCase)) return Outcome<Grid>.Of(Grid.Degrees);
        var said = Say.Short(name, 60);
        var text = name.Contains("EPSG", StringComparison.OrdinalIgnoreCase) && int.TryParse(last, NumberStyles.None, CultureInfo.InvariantCulture, out var code) ? TextOf(code) : null;
        return text is null
            ? Outcome<Grid>.Refuse(MapFileProblems.UnknownGrid.At(where, ("value", said), ("why", "it is not one of the codes known here")))
            : Grid.FromText(text, where);
    }

    private static string? TextOf(int code) => code switch
    {
        4326 or 4979 => Wgs84,
        4269 or 6318 or 4258 or 4283 => Nad83,
        3857 or 900913 => Projected("WGS 84 / Pseudo-Mercator", Wgs84, "Popular_Visualisation Pseudo-Mercator", Meter, ("central_meridian", 0), ("false_easting", 0), ("false_northing", 0)),
        >= 32601 and <= 32660 => Utm(Wgs84, code - 32600, south: false),
        >= 32701 and <= 32760 => Utm(Wgs84, code - 32700, south: true),
        >= 26901 and <= 26923 => Utm(Nad83, code - 26900, south: false),
        >= 6330 and <= 6348 => Utm(Nad83, code - 6329, south: false),
        3310 or 6414 => Conic("NAD83 / California Albers", "Albers_Conic_Equal_Area", Meter, (0, -120, 34, 40.5), 0, -4000000),
        5070 => Conic("NAD83 / Conus Albers", "Albers_Conic_Equal_Area", Meter, (23, -96, 29.5, 45.5), 0, 0),
        >= 2225 and <= 2230 => Conic("NAD83 / California zone (ftUS)", "Lambert_Conformal_Conic_2SP", SurveyFoot, californiaZones[code - 2225], 6561666.667, 1640416.667),
        >= 26941 and <= 26946 => Conic("NAD83 / California zone", "Lambert_Conformal_Conic_2SP", Meter, californiaZones[code - 26941], 2000000, 500000),
        _ => null,
    };

    private static string Utm(string geographic, int zone, bool south) =>
        Projected("UTM", geographic, "Transverse_Mercator", Meter,
            ("latitude_of_origin", 0), ("central_meridian", (6 * zone) - 183), ("scale_factor", 0.9996), ("false_easting", 500000), ("false_northing", south ? 10000000 : 0));

    private static string Conic(string name, string method, string unit, (double Origin, double Middle, double First, double Second) zone, double east, double north) =>
        Projected(name, Nad83, method, unit,
            ("latitude_of_origin", zone.Origin), ("central_meridian", zone.Middle), ("standard_parallel_1", zone.First), ("standard_parallel_2", zone.Second),
            ("false_easting", east), ("false_northing", north));

    private static string Projected(string name, string geographic, string method, string unit, params (string Name, double Value)[] parameters)
    {
        var numbers = string.Concat(parameters.Select(p => string.Create(CultureInfo.InvariantCulture, $"PARAMETER[\"{p.Name}\",{p.Value:R}],")));
        return $"PROJCS[\"{name}\",{geographic},PROJECTION[\"{method}\"],{numbers}{unit}]";
    }
}
