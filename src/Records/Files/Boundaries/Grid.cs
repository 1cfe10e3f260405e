using System.Globalization;
using ProjNet.CoordinateSystems;
using ProjNet.CoordinateSystems.Transformations;
using Watersown.Land;

namespace Watersown.Records.Files.Boundaries;

/// <summary>
/// The coordinate system that a file is drawn in: from its x and y to a place on WGS 84. Only projections that were checked
/// against PROJ are taken (to 1 mm: transverse Mercator, Lambert conformal conic, Albers, web Mercator, Lambert azimuthal, oblique
/// stereographic); any other is refused rather than guessed.
/// </summary>
internal sealed class Grid
{
    // Forward again must come back to the same spot: what does not lies outside the grid's reach.
    private const double ReturnMeters = 0.05;

    private readonly Func<double, double, GeoPoint?> toEarth;

    private Grid(string name, Func<double, double, GeoPoint?> toEarth) => (Name, this.toEarth) = (name, toEarth);

    /// <summary>Longitude and latitude in degrees as they are, on WGS 84 or a datum within 2 m of it.</summary>
    public static Grid Degrees { get; } = new("WGS 84", (x, y) => new GeoPoint(y, x));

    public string Name { get; }

    /// <summary>The grid that a text of a .prj file declares.</summary>
    public static Outcome<Grid> FromText(string text, string where)
    {
        if (WktNode.Parse(text) is not { } root)
            return Outcome<Grid>.Refuse(MapFileProblems.UnreadableGrid.At(where));
        if (root.Keyword is "VERTCS" or "VERT_CS")
            return Outcome<Grid>.Refuse(MapFileProblems.VerticalOnly.At(where, ("value", root.Name)));
        if ((root.Find("PROJCS") ?? root.Find("GEOGCS")) is not { } system)
            return Outcome<Grid>.Refuse(MapFileProblems.UnknownGrid.At(where, ("value", Said(root.Name)), ("why", "it is written in a form not read here")));
        return From(system, where);
    }

    /// <summary>The place of a point of the grid; none where it lies outside what the grid can show.</summary>
    public GeoPoint? ToEarth(double x, double y) =>
        double.IsFinite(x) && double.IsFinite(y) ? toEarth(x, y) : new GeoPoint(y, x);

    private static Outcome<Grid> From(WktNode system, string where)
    {
        var geographic = system.Find("GEOGCS");
        if (geographic is null || GridDatum.From(geographic) is not { } datum)
            return Refuse(system, where, "its datum is missing or malformed");
        if (datum.Fault is { } fault) return Refuse(system, where, fault);
        if (system.Keyword == "GEOGCS")
        {
            var shift = datum.Shifts ? Transformation(datum.System, GeographicCoordinateSystem.WGS84) : null;
            return Outcome<Grid>.Of(shift is null ? new Grid(system.Name, Degrees.toEarth) : new Grid(system.Name, (x, y) => Through(shift, x, y, 1e-6)));
        }

        if (GridProjection.From(system) is not { } projection)
            return Refuse(system, where, "its projection '" + Said(system.Child("PROJECTION")?.Name ?? "none") + "' is not known here");
        if (system.Child("UNIT") is not { Numbers: [> 1e-3 and < 1e4, ..] } unit)
            return Refuse(system, where, "it does not say what its unit is");
        return Outcome<Grid>.Of(Projected(system.Name, datum, projection, unit.Numbers[0]));
    }

    private static Grid Projected(string name, GridDatum datum, GridProjection projection, double metersPerUnit)
    {
        var unit = new LinearUnit(metersPerUnit, "unit", string.Empty, -1, string.Empty, string.Empty, string.Empty);
        var factory = new CoordinateSystemFactory();
        var system = factory.CreateProjectedCoordinateSystem(name.Length == 0 ? "grid" : name, datum.System,
            factory.CreateProjection(projection.Method, projection.Method, [.. projection.Parameters.Select(p => new ProjectionParameter(p.Name, p.Value))]),
            unit, new AxisInfo("x", AxisOrientationEnum.East), new AxisInfo("y", AxisOrientationEnum.North));
        var transformation = Transformation(system, datum.Shifts ? GeographicCoordinateSystem.WGS84 : datum.System);
        return new Grid(name, (x, y) => Through(transformation, x, y, ReturnMeters / metersPerUnit));
    }

    private static MathTransform Transformation(CoordinateSystem from, CoordinateSystem to) =>
        new CoordinateTransformationFactory().CreateFromCoordinateSystems(from, to).MathTransform;

    private static GeoPoint? Through(MathTransform transform, double x, double y, double tolerance)
    {
        try
        {
            var (longitude, latitude) = transform.Transform(x, y);
            if (!(Math.Abs(latitude) <= 90 && Math.Abs(longitude) <= 360)) return null;
            var (backX, backY) = transform.Inverse().Transform(longitude, latitude);
            return Math.Abs(backX - x) <= tolerance && Math.Abs(backY - y) <= tolerance ? new GeoPoint(latitude, longitude) : null;
        }
        catch (ArgumentException)
        {
            // How the package says that its search for a latitude found none.
            return null;
        }
    }

    private static Outcome<Grid> Refuse(WktNode system, string where, string why) =>
        Outcome<Grid>.Refuse(MapFileProblems.UnknownGrid.At(where, ("value", Said(system.Name)), ("why", why)));

    private static string Said(string name) => name.Length <= 60 ? name : string.Create(CultureInfo.InvariantCulture, $"{name.AsSpan(0, 60)}…");
}
